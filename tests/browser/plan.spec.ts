import { readFileSync } from "node:fs";
import AxeBuilder from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import type { CallName } from "../../apps/web/src/work/calls.ts";

const example = (name: string) => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8");

/** A job of its own for each test, opened and worked out. */
const open = async (page: Page, name: string, change: (text: string) => string = (text) => text) => {
  const reply = await page.request.post("/api/jobs", { data: { text: change(example(name)), note: "for a test" } });
  expect(reply.ok()).toBe(true);
  const { id } = (await reply.json()) as { id: string };
  await page.goto(`/#/jobs/${id}`);
  await settled(page);
  return id;
};
const settled = (page: Page) =>
  expect(page.locator(".job")).toHaveAttribute("data-state", "settled", { timeout: 60_000 });
const kept = (page: Page) => expect(page.locator("[data-keeping]")).toHaveAttribute("data-keeping", "kept");
const textOf = async (page: Page, id: string): Promise<string> =>
  ((await (await page.request.get(`/api/jobs/${id}`)).json()) as { text: string }).text;
const lift = (page: Page) => page.locator('[data-path="columns"]');

/** The worker's answers to this question are kept back until they are let through; how far it is, is told as ever. */
const holdAnswers = (page: Page, call: CallName) =>
  page.addInitScript((held) => {
    const shelf = window as unknown as { holding: boolean };
    shelf.holding = true;
    window.Worker = class extends Worker {
      readonly #numbers = new Set<number>();
      override postMessage(question: { number: number; call: string }) {
        if (question.call === held) this.#numbers.add(question.number);
        super.postMessage(question);
      }
      override set onmessage(take: (event: MessageEvent) => void) {
        super.onmessage = (event) => {
          const { kind, number } = event.data;
          if (!(shelf.holding && kind === "value" && this.#numbers.has(number))) take(event);
        };
      }
    };
  }, call);
const letThrough = (page: Page) =>
  page.evaluate(() => {
    (window as unknown as { holding: boolean }).holding = false;
  });

/** Middle of something on the screen. */
const middleOf = async (page: Page, selector: string) => {
  const box = (await page.locator(selector).first().boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

test("the lift is dragged by mouse off the saw cut: the word changes, nothing jumps, one step undoes it", async ({
  page,
}) => {
  const id = await open(page, "saw-cut-in-the-way");
  await expect(page.locator(".outcome-word")).toHaveText("Shift");
  const board = page.locator(".plan-board");
  const before = await board.boundingBox();
  const view = await board.getAttribute("viewBox");
  const from = await middleOf(page, '[data-path="columns"] .base');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let i = 1; i <= 8; i++) {
    await page.mouse.move(from.x, from.y + i * 4);
    expect(await board.boundingBox()).toEqual(before);
  }
  await page.mouse.up();
  await settled(page);
  await expect(page.locator(".outcome-word")).not.toHaveText("Shift");
  expect(await board.getAttribute("viewBox")).toBe(view);
  expect(await board.boundingBox()).toEqual(before);
  await kept(page);
  const moved = await textOf(page, id);
  expect(moved).not.toBe(example("saw-cut-in-the-way"));
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await settled(page);
  await expect(page.locator(".outcome-word")).toHaveText("Shift");
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeDisabled();
});

test("by keys only: choose the lift, move it by inches and by a foot, turn it, undo from a tick box", async ({
  page,
}) => {
  await open(page, "saw-cut-in-the-way");
  await lift(page).focus();
  const chosen = page.getByRole("region", { name: "Chosen: the lift" });
  const y = () => chosen.getByLabel("from the back wall").first().inputValue();
  const at = Number.parseFloat(await y());
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Shift+ArrowDown");
  expect(Number.parseFloat(await y())).toBeCloseTo(at + 13, 0);
  await page.keyboard.press("t");
  await expect(chosen.getByLabel("from the left wall").first()).toHaveValue(/^144 in$/);
  await settled(page);
  await page.getByLabel("stress", { exact: true }).focus();
  await page.keyboard.press("Control+z");
  expect(Number.parseFloat(await y())).toBeCloseTo(at + 13, 0);
  await page.keyboard.press("Control+z");
  expect(Number.parseFloat(await y())).toBeCloseTo(at, 0);
  await page.keyboard.press("Control+y");
  expect(Number.parseFloat(await y())).toBeCloseTo(at + 13, 0);
});

test("a saw cut is drawn, named, bent by its corner, and taken away", async ({ page }) => {
  const id = await open(page, "saw-cut-in-the-way");
  await page.locator(".plan-tools select").selectOption("saw cut or joint");
  const board = (await page.locator(".plan-board").boundingBox())!;
  const [x, y] = [board.x + board.width * 0.35, board.y + board.height * 0.75];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y, { steps: 4 });
  await page.mouse.move(x + 120, y, { steps: 4 });
  await page.mouse.up();
  const drawn = page.getByRole("button", { name: /^joint \d/ });
  await expect(drawn).toHaveCount(1);
  await drawn.focus();
  const region = page.getByRole("region", { name: /^Chosen: joint/ });
  const end = region.getByRole("group", { name: /^to/i }).getByLabel("from the back wall");
  const was = Number.parseFloat(await end.inputValue());
  const corner = await page.locator('.corner[data-corner="1"]').boundingBox();
  await page.mouse.move(corner!.x + corner!.width / 2, corner!.y + corner!.height / 2);
  await page.mouse.down();
  await page.mouse.move(corner!.x + corner!.width / 2, corner!.y + 30, { steps: 4 });
  await page.mouse.up();
  expect(Number.parseFloat(await end.inputValue())).toBeGreaterThan(was + 5);
  await kept(page);
  expect(await textOf(page, id)).toContain("joint 3");
  await region.getByRole("button", { name: "Take away" }).click();
  await kept(page);
  expect(await textOf(page, id)).not.toContain("joint 3");
});

test("measuring, by mouse and by keyboard", async ({ page }) => {
  await open(page, "saw-cut-in-the-way");
  await page.getByRole("button", { name: "Measure" }).click();
  const board = (await page.locator(".plan-board").boundingBox())!;
  await page.mouse.move(board.x + 200, board.y + 250);
  await page.mouse.down();
  await page.mouse.move(board.x + 300, board.y + 250, { steps: 5 });
  await page.mouse.up();
  await expect(page.locator(".measured text")).toContainText("across");
  const said = await page.locator(".measured text").textContent();
  await page.mouse.move(board.x + 400, board.y + 350, { steps: 3 });
  expect(await page.locator(".measured text").textContent()).toBe(said);
  await page.getByRole("button", { name: "left wall" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: "right wall" }).focus();
  await page.keyboard.press("Enter");
  await expect(page.locator(".measured text")).toContainText("24'-0\" across");
});

test("nearer, farther, all, the lift; by wheel, button and key", async ({ page }) => {
  await open(page, "saw-cut-in-the-way");
  const board = page.locator(".plan-board");
  const wide = async () => Number((await board.getAttribute("viewBox"))!.split(" ")[2]);
  const whole = await wide();
  await page.getByRole("button", { name: "nearer" }).click();
  expect(await wide()).toBeCloseTo(whole / 1.3, 0);
  await board.hover();
  await page.mouse.wheel(0, -100);
  await expect.poll(wide).toBeLessThan(whole / 1.4);
  await lift(page).focus();
  await page.keyboard.press("-");
  await page.keyboard.press("0");
  expect(await wide()).toBeCloseTo(whole, 0);
  await page.getByRole("button", { name: "The lift", exact: true }).click();
  expect(await wide()).toBeLessThan(whole);
});

test("dimensions from two walls stand on the plan and follow the lift", async ({ page }) => {
  await open(page, "saw-cut-in-the-way");
  const chain = page.locator(".wall-chains");
  await expect(chain).toContainText("6'-8\"");
  await expect(chain).toContainText("13'-4 1/2\"");
  await lift(page).focus();
  await page.keyboard.press("ArrowRight");
  await expect(chain).toContainText("6'-9\"");
});

test("what can be laid over the plan: bodies cut by the saw cut, stress with its figures, places with the margin", async ({
  page,
}) => {
  await holdAnswers(page, "placeMap");
  await open(page, "saw-cut-in-the-way");
  await page.getByLabel("breakout bodies").check();
  await expect(page.locator(".bodies-together")).toHaveCount(2);
  await expect(page.locator(".layer-words")).toContainText("cut off by edges, joints and cracks");
  await page.getByLabel("breakout bodies").uncheck();
  await page.getByLabel("stress", { exact: true }).check();
  await expect(page.locator(".slab-lines")).toBeVisible({ timeout: 60_000 });
  await expect(page.locator(".layer-words")).toContainText(/At most [\d,]+ psi at the (top|bottom)/);
  await page.getByLabel("ground pressure").check();
  await expect(page.getByLabel("stress", { exact: true })).not.toBeChecked();
  await expect(page.locator(".layer-words")).toContainText("psf may be asked", { timeout: 60_000 });
  await page.getByLabel("ground pressure").uncheck();
  await page.getByLabel("where it may stand").check();
  await expect(page.locator(".feasible-area")).toBeVisible({ timeout: 60_000 });
  await page.getByRole("button", { name: "Work out the margin at these places" }).click();
  await page.getByRole("button", { name: "Stop" }).click();
  await expect(page.locator(".layer-words")).toContainText("stopped");
  await letThrough(page);
  await page.getByRole("button", { name: "Go on" }).click();
  await expect(page.locator(".layer-words")).toContainText(/Least \d+ %/, { timeout: 120_000 });
  await expect(page.locator(".feasible text").first()).toBeVisible();
});

test("both units show the same plan, and the file keeps what was written", async ({ page }) => {
  const id = await open(page, "saw-cut-in-the-way");
  const before = await textOf(page, id);
  await expect(page.locator(".plan-more .drawn svg")).toBeVisible();
  await page.getByRole("radio", { name: "SI", exact: true }).check();
  await settled(page);
  await expect(page.locator(".wall-chains")).toContainText("2,032");
  await page.getByRole("radio", { name: "inch-pound" }).check();
  await settled(page);
  await expect(page.locator(".wall-chains")).toContainText("6'-8\"");
  expect(await textOf(page, id)).toBe(before);
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 360, height: 760 }, hasTouch: true });
  test("the plan is a small picture that scrolls with the page, until it is taken in hand", async ({ page }) => {
    await open(page, "saw-cut-in-the-way");
    const board = page.locator(".plan-board");
    expect((await board.boundingBox())!.height).toBeLessThan(260);
    await expect(page.getByRole("toolbar", { name: "Draw and look" })).toHaveCount(0);
    await page.getByRole("button", { name: "Take the plan in hand" }).tap();
    expect((await board.boundingBox())!.height).toBeGreaterThan(400);
    await expect(page.getByRole("toolbar", { name: "Draw and look" })).toBeVisible();
    await page.getByRole("button", { name: "Fold the plan" }).tap();
    await expect(page.getByRole("toolbar", { name: "Draw and look" })).toHaveCount(0);
  });
});

const parts = ["lift", "floor", "position", "answer", "pad", "pour", "anchors", "upkeep", "papers"];

for (const width of [1280, 360])
  for (const colorScheme of ["light", "dark"] as const)
    test(`every part open: no field named twice, no axe violation, nothing runs out; ${width} px, ${colorScheme}`, async ({
      page,
    }) => {
      await page.setViewportSize({ width, height: 800 });
      await page.emulateMedia({ colorScheme });
      await open(page, "nine-cold-days");
      if (width === 360) await page.getByRole("button", { name: "Take the plan in hand" }).click();
      await lift(page).focus();
      for (const part of parts) {
        const title = page.locator(`#title-${part} button`);
        if ((await title.getAttribute("aria-expanded")) === "false") await title.click();
      }
      await page.locator("#part-lift .section > summary").nth(2).click();
      await page.locator("#part-floor .section > summary").nth(2).click();
      await page.locator("#part-pour .picture").waitFor({ timeout: 60_000 });
      await expect(page.locator(".work-state")).toHaveCount(0, { timeout: 90_000 });
      await page.locator(".check-head").first().click();
      await page.locator(".plan-words > summary").click();
      const twice = await page.evaluate(() => {
        const ids = [...document.querySelectorAll("[id]")].map(({ id }) => id);
        return ids.filter((id, i) => ids.indexOf(id) !== i);
      });
      expect(twice).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`),
      ).toEqual([]);
    });

test("a new job asks three things, and they go when they are done", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "New job" }).click();
  const steps = page.getByRole("region", { name: "Three things make an answer" });
  await expect(steps).toBeVisible();
  await expect(steps).toBeInViewport();
  await steps.getByLabel(/^thickness/i).fill("5 in");
  await expect(steps).toContainText("How thick the floor is is there");
  await steps.getByRole("button", { name: "Stand it in the middle" }).click();
  await expect(steps).toContainText("Where the lift stands is there");
  await page
    .getByLabel(/^strength/)
    .first()
    .fill("3000 psi");
  await expect(steps).toHaveCount(0);
});
