import { readFileSync } from "node:fs";
import { putLift } from "@floorworthy/job/editing";
import { expect, test } from "@playwright/test";
import { reportFamilies } from "../manuals/corpus/index.ts";

test("a manual becomes a lift sheet by keyboard alone, and a job shows the manual's lines under its page", async ({
  page,
  request,
}) => {
  const family = reportFamilies.find(({ name }) => name === "lettered drawing with a turned key") ?? reportFamilies[0]!;
  const { bytes, lift: told } = await family.build(3, "inch-pound");
  const begun = Date.now();
  const made = await request.post("/api/lifts", {
    data: { text: "floorworthy: 1\nlift:\n  name: New lift\n  kind: two-post\n" },
  });
  const { id } = await made.json();
  await page.goto(`/#/lifts/${id}`);
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: "manual.pdf", mimeType: "application/pdf", buffer: Buffer.from(bytes) });
  await expect(page.locator(".manual-row").first()).toBeVisible({ timeout: 60_000 });
  await expect(page.locator(".page-sight img")).toBeVisible({ timeout: 60_000 });
  const head = page.locator("[data-field]").first();
  for (let i = 0; i < 40 && !(await head.evaluate((each) => each === document.activeElement)); i++)
    await page.keyboard.press("Tab");
  const found = await page.locator(".manual-row:has(.manual-found)").count();
  for (let i = 0; i < found; i++) await page.keyboard.press("Enter");
  const sheet = async (): Promise<string> => (await (await request.get(`/api/lifts/${id}`)).json()).text;
  await expect.poll(sheet, { timeout: 60_000 }).toMatch(/thickness:[\s\S]*picture: [0-9a-f]{64}/);
  await expect
    .poll(async () => ((await sheet()).match(/picture:/g) ?? []).length, { timeout: 90_000 })
    .toBeGreaterThan(20);
  expect(Date.now() - begun).toBeLessThan(120_000);
  const text = await sheet();
  for (const asked of ["thickness", "strength", "days", "edge"]) expect(text).toContain(`${asked}:`);
  expect(told).toBeDefined();

  const job = putLift(readFileSync("examples/records-in-hand.yaml", "utf8"), text)!;
  const { id: jobId } = await (await request.post("/api/jobs", { data: { text: job } })).json();
  await page.goto(`/#/jobs/${jobId}/answer`);
  const line = page.locator(".line", { hasText: "Thickness of the slab" }).locator(".manual-line");
  await expect(line.locator("q")).toBeVisible({ timeout: 60_000 });
  await expect(line.locator("img")).toBeVisible();
  await expect(line).toContainText("manual.pdf");
});

test("what is no PDF is refused in words", async ({ page, request }) => {
  const made = await request.post("/api/lifts", {
    data: { text: "floorworthy: 1\nlift:\n  name: N\n  kind: two-post\n" },
  });
  await page.goto(`/#/lifts/${(await made.json()).id}`);
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: "photo.pdf", mimeType: "application/pdf", buffer: Buffer.from("no manual at all") });
  await expect(page.getByRole("alert")).toContainText("This is no PDF file");
});
