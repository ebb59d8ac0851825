import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type APIRequestContext, expect, type Locator, type Page } from "@playwright/test";

/** A job of tests/browser/jobs as text. */
export const jobText = (name: string): string =>
  readFileSync(fileURLToPath(new URL(`../jobs/${name}.yaml`, import.meta.url)), "utf8");

/** A job of its own for one test, prepared without the page. Returns its id. */
export const newJob = async (request: APIRequestContext, text: string): Promise<string> => {
  const reply = await request.post("/api/jobs", { data: { text } });
  expect(reply.status()).toBe(201);
  return (await reply.json()).id;
};

export const textOf = async (request: APIRequestContext, id: string): Promise<string> =>
  (await (await request.get(`/api/jobs/${id}`)).json()).text;

export const openJob = async (page: Page, id: string, part = ""): Promise<void> => {
  await page.goto(`/#/jobs/${id}${part && `/${part}`}`);
  await settled(page);
};

/** The answer belongs to what is written. */
export const settled = (page: Page): Promise<void> =>
  expect(page.locator(".outcome")).toHaveAttribute("data-state", "settled");

/** What is written has reached the server. */
export const kept = (page: Page): Promise<void> => expect(page.locator("[data-keeping=kept]")).toBeVisible();

export const outcomeIs = (page: Page, word: string): Promise<void> =>
  expect(page.locator(".outcome[data-state=settled] .outcome-word")).toHaveText(word);

/** The field of a fact, by its place in the job. */
export const field = (page: Page, path: string) => page.locator(`[id="${path}"]`);

export const part = (page: Page, id: string) => page.locator(`#part-${id}`);

/** Opens a part of the job by its heading. */
export const openPart = async (page: Page, id: string): Promise<void> => {
  const head = part(page, id).locator("h3 > button").first();
  if ((await head.getAttribute("aria-expanded")) === "false") await head.click();
};

/** Where a place of the plan is on the screen; inches from the left and the back wall. */
export const onPlan = async (page: Page, x: number, y: number) => {
  const board = page.locator("svg.plan-board");
  await board.scrollIntoViewIfNeeded();
  return board.evaluate(
    (node, [atX, atY]) => {
      const matrix = (node as unknown as SVGSVGElement).getScreenCTM();
      return new DOMPoint(atX * 25.4, atY * 25.4).matrixTransform(matrix ?? undefined);
    },
    [x, y] as const,
  );
};

/** Opens it and everything inside at once, where opening is not what is tested: what is drawn on opening may hold more to open. */
export const openEvery = async (inside: Locator): Promise<void> => {
  const open = () =>
    inside.evaluate((node) => {
      const within = [...node.querySelectorAll<HTMLDetailsElement>("details")];
      const closed = [...(node instanceof HTMLDetailsElement ? [node] : []), ...within].filter(({ open }) => !open);
      for (const details of closed) details.open = true;
      return closed.length;
    });
  await expect(inside.locator("summary").first()).toBeVisible();
  await expect.poll(open).toBe(0);
};
