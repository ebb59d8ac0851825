import { expect, type Page, test } from "@playwright/test";

const open = async (page: Page, id: string) => {
  await page.goto(`/#${id}`);
  await settled(page);
};
const settled = (page: Page) => expect(page.locator(".outcome")).toHaveAttribute("data-state", "settled");
const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const sentence = (page: Page) => page.locator(".outcome-sentence").textContent();

test("lists the jobs and opens the first", async ({ page }) => {
  await page.goto("/");
  const jobs = page.getByRole("navigation", { name: "Jobs" });
  await expect(jobs.getByRole("link")).toHaveCount(3);
  await expect(jobs.getByRole("link").first()).toHaveAttribute("aria-current", "page");
  await settled(page);
});

test("shows both answers side by side, never as one", async ({ page }) => {
  await open(page, "1-kept-tickets");
  const makersPage = page.getByRole("region", { name: "The maker's page" });
  const margin = page.getByRole("region", { name: "The margin" });
  await expect(makersPage).toContainText("at least 4.25 in");
  await expect(margin.locator(".check").first()).toBeVisible();
  const [left, right] = [await makersPage.boundingBox(), await margin.boundingBox()];
  expect(Math.abs(left!.y - right!.y)).toBeLessThan(2);
  expect(left!.x + left!.width).toBeLessThanOrEqual(right!.x);
});

test("draws the bay and each base with its anchors, and says the same in words", async ({ page }) => {
  await open(page, "1-kept-tickets");
  await expect(page.locator(".drawn svg")).toContainText("saw cut J1");
  await expect(page.locator(".drawn svg > desc")).toContainText("left column");
  await page.getByLabel("right base", { exact: true }).check();
  await expect(page.locator(".base-plan .anchor")).toHaveCount(5);
  await page.getByText("The plan in words").click();
  await expect(page.locator(".plan-words")).toContainText("left column stands 2'-8\" from the left wall");
});

test("a thinner reading changes the outcome at once", async ({ page }) => {
  await open(page, "1-kept-tickets");
  const before = await sentence(page);
  const reading = field(page, "thickness reading 4, right");
  await reading.fill("3 1/2 in");
  await expect(page.getByText("3 1/2 in = 88.9 mm")).toBeVisible();
  await settled(page);
  await expect(page.locator(".outcome-sentence")).not.toHaveText(before ?? "");
  await expect(page.getByRole("region", { name: "The maker's page" })).toContainText("does not meet the page");
});

test("a text that is no length is told at its field, and the last answer stays", async ({ page }) => {
  await open(page, "1-kept-tickets");
  const before = await sentence(page);
  const reading = field(page, "thickness reading 1, left");
  await reading.fill("six");
  await expect(reading).toHaveAttribute("aria-invalid", "true");
  await expect(reading).toHaveAccessibleDescription(/"six" is not a length/);
  await expect(page.locator(".outcome")).toHaveAttribute("data-state", "behind");
  expect(await sentence(page)).toBe(before);
  await reading.fill("6.1 in");
  await settled(page);
  await expect(reading).toHaveAttribute("aria-invalid", "false");
});

test("a bare number is refused, an unknown is not", async ({ page }) => {
  await open(page, "1-kept-tickets");
  const strength = field(page, "strength ordered");
  await strength.fill("4000");
  await expect(strength).toHaveAccessibleDescription(/has no unit/);
  await strength.fill("unknown");
  await settled(page);
  await expect(strength).toHaveAccessibleDescription("not known");
});

test("a check unfolds to demand, formula and clause", async ({ page }) => {
  await open(page, "1-kept-tickets");
  for (const more of await page.locator(".check-group > .more > summary").all()) await more.click();
  const check = page.locator(".check", { hasText: /breakout/i }).first();
  await check.locator(".check-head").click();
  await expect(check.locator(".clause").first()).toContainText("ACI 318-19");
  await check.locator(".term-head").last().click();
  await expect(check.locator(".formula").first()).toContainText("=");
});

test("a stop computes no margin", async ({ page }) => {
  await open(page, "3-tendons");
  await expect(page.locator(".outcome-word")).toHaveText("Refuse");
  const margin = page.getByRole("region", { name: "The margin" });
  await expect(margin).toContainText("not computed");
  await expect(margin.locator(".check")).toHaveCount(0);
});

test("the job file can be written by hand; every mistake has its line", async ({ page }) => {
  await open(page, "1-kept-tickets");
  await field(page, "thickness reading 1, left").fill("6 in");
  await page.getByLabel("job file", { exact: true }).check();
  const text = page.getByLabel(/The whole job as a file/);
  await expect(text).toHaveValue(/thickness: 6 in, method/);
  const written = await text.inputValue();
  await text.fill(written.replace("rated: 10000 lb", "rated: heavy").replace("spacing: 126 in", "spacing: 126"));
  await expect(page.locator(".mistakes li")).toHaveCount(2);
  await expect(page.locator(".mistakes")).toContainText("lift.rated");
  await expect(page.locator(".mistakes")).toContainText(/line \d+/);
  await text.fill(written);
  await settled(page);
  await expect(page.locator(".mistakes li")).toHaveCount(0);
});

test("units switch for what is shown and leave the file alone", async ({ page }) => {
  await open(page, "1-kept-tickets");
  await page.getByLabel("SI", { exact: true }).check();
  await settled(page);
  await expect(page.getByRole("region", { name: "The maker's page" })).toContainText("mm");
  await expect(page.locator(".drawn svg")).toContainText("3200");
  await expect(field(page, "thickness reading 1, left")).toHaveValue("6.1 in");
});

test("nothing is shown that is not a number, and nothing comes from elsewhere", async ({ page, baseURL }) => {
  const elsewhere: string[] = [];
  const errors: string[] = [];
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("response", (response) => !response.url().startsWith(baseURL!) && elsewhere.push(response.url()));
  for (const id of ["1-kept-tickets", "2-thin-slab", "3-tendons"]) {
    await open(page, id);
    expect(await page.locator("main").textContent()).not.toMatch(/NaN|undefined|\[object/);
  }
  expect(elsewhere).toEqual([]);
  expect(errors).toEqual([]);
});
