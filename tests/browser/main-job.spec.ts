import { expect, test } from "@playwright/test";
import { tabTo, writeByKeys } from "./hand/by-keys.ts";
import { writeByMouse } from "./hand/by-mouse.ts";
import { bay, floor, lift, lowLift, strength, tendons } from "./hand/garage.ts";
import { field, jobText, kept, newJob, onPlan, openPart, outcomeIs, part, textOf } from "./hand/page.ts";

const idOf = (url: string): string => /#\/(?:jobs|lifts)\/([^/]+)/.exec(url)?.[1] ?? "";

test("a lift from its floor page, a floor with two unknowns, settled, moved, and the installer's sheet: by mouse", async ({
  page,
}) => {
  await page.goto("/#/lifts");
  await page.getByRole("button", { name: "New lift" }).click();
  await writeByMouse(page, page.locator("main"), lift);
  await kept(page);

  await page.getByRole("link", { name: "Jobs" }).click();
  await page.getByRole("button", { name: "New job" }).click();
  await openPart(page, "lift");
  await page.locator("#take-lift").selectOption({ label: "Tarn 9 Twin" });
  await expect(field(page, "lift.rated")).toHaveValue("9000 lb");
  await openPart(page, "floor");
  await writeByMouse(page, part(page, "floor"), floor);
  await openPart(page, "position");
  await writeByMouse(page, part(page, "position"), bay);
  await outcomeIs(page, "Hold");
  await expect(page.locator(".outcome")).toContainText("post-tensioned");

  await writeByMouse(page, part(page, "floor"), tendons);
  await outcomeIs(page, "Hold");
  await expect(page.locator(".outcome")).toContainText("strength");
  await writeByMouse(page, part(page, "floor"), strength);
  await outcomeIs(page, "Accept");
  await kept(page);

  // dragged over the saw cut, and back with one step
  const left = field(page, "columns.left-x");
  await page.getByRole("button", { name: "The lift", exact: true }).click();
  const [from, to] = [await onPlan(page, 33, 240), await onPlan(page, 61, 240)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 8 });
  await page.mouse.up();
  await expect(left).not.toHaveValue("33 in");
  await expect(page.locator(".outcome[data-state=settled] .outcome-word")).not.toHaveText("Accept");
  const undo = page.getByRole("button", { name: "Undo" });
  await undo.click();
  await expect(left).toHaveValue("33 in");
  await outcomeIs(page, "Accept");
  await kept(page);

  await openPart(page, "papers");
  await part(page, "papers")
    .getByRole("button", { name: /installer/i })
    .first()
    .click();
  const sheet = part(page, "papers").locator("img.page-picture").first();
  await expect(sheet).toBeVisible();
  await expect(sheet).toHaveAttribute("alt", /column/);
  const link = part(page, "papers").getByRole("link", { name: "PDF" });
  const pdf = await page.request.get((await link.getAttribute("href"))!, { timeout: 60_000 });
  expect((await pdf.body()).subarray(0, 5).toString()).toBe("%PDF-");
  const text = await textOf(page.request, idOf(page.url()));
  expect(text).toContain("postTension: none-shown");
  expect(text).toContain("Tarn 9 Twin");
});

test("the same with nothing but the keyboard", async ({ page }) => {
  const press = async (selector: string) => {
    await tabTo(page, selector);
    await page.keyboard.press("Enter");
  };
  const prepared = jobText("1-kept-tickets")
    .replace("postTension: none-shown", "postTension: unknown")
    .replace(/ {2}strength:\n(?: {4}.*\n)+/, "  strength: {}\n");
  const id = await newJob(page.request, prepared);

  // a lift from its floor page
  await page.goto("/#/lifts");
  await expect(page.getByRole("button", { name: "New lift" })).toBeVisible();
  await press("button.decide");
  await expect(field(page, "lift.name")).toBeVisible();
  await writeByKeys(page, "main", lowLift);
  await kept(page);

  // a job for it
  await press('nav a[href="#/"]');
  await expect(page.getByRole("button", { name: "New job" })).toBeVisible();
  await press("button.decide");
  await expect(part(page, "lift")).toBeVisible();
  if ((await part(page, "lift").getAttribute("data-state")) !== "open") await press("#part-lift h3 > button");
  await expect(page.locator("#take-lift option", { hasText: "Tarn 7 Low" }).first()).toBeAttached();
  await tabTo(page, "#take-lift");
  await page.keyboard.type("Tarn 7");
  await expect(field(page, "lift.rated")).toHaveValue("7000 lb");
  await press("#part-position h3 > button");
  await writeByKeys(page, "#part-position", bay);
  await outcomeIs(page, "Hold");
  await kept(page);

  // the two unknowns of another, settled
  await press('nav a[href="#/"]');
  await press(`a[href="#/jobs/${id}"]`);
  await outcomeIs(page, "Hold");
  await press("#part-floor h3 > button");
  await writeByKeys(page, "#part-floor", tendons);
  await outcomeIs(page, "Hold");
  await writeByKeys(page, "#part-floor", strength);
  await outcomeIs(page, "Accept");

  // moved, and back
  await press("#part-position h3 > button");
  const left = field(page, "columns.left-x");
  await expect(left).toHaveValue("32 in");
  await tabTo(page, "svg.plan-board [data-path=columns]");
  for (let i = 0; i < 2; i++) await page.keyboard.press("Shift+ArrowRight");
  await expect(left).not.toHaveValue("32 in");
  await expect(page.locator(".outcome[data-state=settled] .outcome-word")).not.toHaveText("Accept");
  await page.keyboard.press("Control+Z");
  await expect(left).toHaveValue("32 in");
  await outcomeIs(page, "Accept");

  // the installer's sheet
  await press("#part-papers h3 > button");
  await expect(part(page, "papers").locator(".sheets button").first()).toBeVisible();
  await tabTo(page, "#part-papers .sheets button");
  const onSheet = () => page.evaluate(() => /installer/i.test(document.activeElement?.textContent ?? ""));
  for (let i = 0; i < 40 && !(await onSheet()); i++) await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect(part(page, "papers").locator("img.page-picture").first()).toBeVisible();
});
