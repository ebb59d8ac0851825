import { expect, type Page } from "@playwright/test";
import type { Wishes } from "./wishes.ts";

/** What has the focus. */
const focused = (page: Page, inside: string) =>
  page.evaluate((selector) => {
    const at = document.activeElement;
    const list = at?.matches("button.add") ? at.closest("[id$='-list']") : null;
    return {
      id: at?.id ?? "",
      tag: at?.tagName ?? "",
      list: list?.id.replace(/-list$/, "") ?? "",
      entries: list?.querySelectorAll(":scope > details.entry").length ?? 0,
      closed: at?.tagName === "SUMMARY" && !at.parentElement?.hasAttribute("open"),
      within: at?.closest(selector) !== null,
    };
  }, inside);

/** Presses Tab until what has the focus is this. */
export const tabTo = async (page: Page, selector: string, most = 700): Promise<void> => {
  for (let i = 0; i < most; i++) {
    if (await page.evaluate((s) => document.activeElement?.matches(s) ?? false, selector)) return;
    await page.keyboard.press("Tab");
  }
  expect(selector, "was not reached with Tab").toBe("");
};

const choose = async (page: Page, value: string): Promise<void> => {
  const steps = await page.evaluate((wanted) => {
    const select = document.activeElement as HTMLSelectElement;
    return [...select.options].findIndex((option) => option.value === wanted) - select.selectedIndex;
  }, value);
  for (let i = 0; i < Math.abs(steps); i++) await page.keyboard.press(steps > 0 ? "ArrowDown" : "ArrowUp");
};

const write = async (page: Page, id: string, tag: string, value: string): Promise<void> => {
  if (tag === "SELECT") await choose(page, value);
  else {
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText(value);
  }
  await expect(page.locator(`[id="${id}"]`)).toHaveValue(value);
};

/** Fills the fields with nothing but keys: Tab through the page, Enter on what folds and on what adds to a list. */
export const writeByKeys = async (page: Page, inside: string, { written, lists }: Wishes): Promise<void> => {
  const open = new Map(written);
  const short = new Map(lists);
  for (let stops = 0; stops < 3000 && open.size + short.size > 0; stops++) {
    await page.keyboard.press("Tab");
    const at = await focused(page, inside);
    if (!at.within) continue;
    const value = open.get(at.id);
    const wanted = short.get(at.list);
    if (at.closed) await page.keyboard.press("Enter");
    else if (value !== undefined) {
      await write(page, at.id, at.tag, value);
      open.delete(at.id);
    } else if (wanted !== undefined) {
      for (let there = at.entries; there < wanted; there++) await page.keyboard.press("Enter");
      short.delete(at.list);
    }
  }
  expect([...open.keys(), ...short.keys()], "fields that were not reached with Tab").toEqual([]);
};
