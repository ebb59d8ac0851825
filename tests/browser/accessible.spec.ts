import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "@playwright/test";

const settled = (page: import("@playwright/test").Page) =>
  expect(page.locator(".outcome")).toHaveAttribute("data-state", "settled");

for (const width of [1280, 360]) {
  for (const colorScheme of ["light", "dark"] as const) {
    test(`no axe violation, everything unfolded, ${width} px, ${colorScheme}`, async ({ page }) => {
      await page.setViewportSize({ width, height: 800 });
      await page.emulateMedia({ colorScheme });
      await page.goto("/#2-thin-slab");
      await settled(page);
      const closed = await new AxeBuilder({ page }).analyze();
      expect(closed.violations).toEqual([]);
      await page.getByText("The plan in words").click();
      const closedGroups = page.locator(".numbers details:not([open]) > summary");
      while ((await closedGroups.count()) > 0) await closedGroups.first().click();
      await page.locator(".line .more > summary").first().click();
      await page.locator(".check-head").first().click();
      for (const term of await page.locator(".check .term-head").all()) await term.click();
      await page.locator(".cases > summary").click();
      const open = await new AxeBuilder({ page }).analyze();
      expect(open.violations).toEqual([]);
    });
  }
  test(`nothing runs out of the page at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 800 });
    await page.goto("/#1-kept-tickets");
    await settled(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
}

test("the main job by keyboard only: choose a job, change a number, unfold a check", async ({ page }) => {
  await page.goto("/#1-kept-tickets");
  await settled(page);
  const focused = (selector: string) => page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector);
  const tabTo = async (selector: string) => {
    for (let i = 0; i < 80 && !(await focused(selector)); i++) await page.keyboard.press("Tab");
    expect(await focused(selector)).toBe(true);
  };
  await tabTo('.jobs a[href="#2-thin-slab"]');
  await page.keyboard.press("Enter");
  await expect(page.locator(".outcome-word")).toHaveText("Pour");
  await settled(page);
  await tabTo(`[id="fact-floor.readings[0].thickness"]`);
  await page.keyboard.press("Control+A");
  await page.keyboard.type("5 in");
  await expect(page.getByText("5 in = 127 mm")).toBeVisible();
  await settled(page);
  await tabTo(".check-head");
  await page.keyboard.press("Enter");
  await expect(page.locator(".check details").first()).toHaveAttribute("open");
});
