import { expect, type Locator, type Page } from "@playwright/test";
import type { Wishes } from "./wishes.ts";

/** Opens everything that folds inside, or so many; a margin holds thousands of numbers. */
export const unfold = async (inside: Locator, most = 200): Promise<void> => {
  await expect(inside.locator("summary").first()).toBeVisible();
  const closed = inside.locator("details:not([open]) > summary:visible");
  for (let i = 0; i < most && (await closed.count()) > 0; i++) await closed.first().click();
};

/** Fills the fields as a person does with a mouse: unfolds, adds entries to lists, clicks a field, writes. */
export const writeByMouse = async (page: Page, inside: Locator, { written, lists }: Wishes): Promise<void> => {
  await unfold(inside);
  for (const [path, count] of lists) {
    const list = inside.locator(`[id="${path}-list"]`);
    for (let there = 0; there < count; there++) {
      await list.locator("> button.add").click();
      await expect(list.locator("> details.entry, > ol > li, > .entry")).toHaveCount(there + 1);
    }
    await unfold(inside);
  }
  for (const [path, value] of written) {
    const at = page.locator(`[id="${path}"]`);
    if ((await at.evaluate(({ tagName }) => tagName)) === "SELECT") await at.selectOption(value);
    else {
      await at.click();
      await at.fill(value);
    }
  }
};
