/**
 * In the real browser: how long a job takes from the click in the list to its first answer (the maker's page) and to the whole one,
 * each demo job with an empty cache and again with a full one; and what one frame costs while the lift is dragged.
 * Ratios are to the list of jobs loaded anew in the same run. Budgets: first answer 1 s; half of a 60 Hz frame of script for a move.
 * Needs `npm run build` and Chromium. Run: npx tsx bench/opening.ts
 */
import { mkdtempSync, readFileSync } from "node:fs";
import { cpus, tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "@playwright/test";
import { findChromium } from "../scripts/ready.mjs";
import { serve } from "../tests/server/served.ts";

const BUDGET = 1000;
const ROUNDS = 3;
const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]!;
const share = (times: readonly number[], q: number): number =>
  times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * q))]!;

/** tsx marks the names of inner functions with this; in the page it is not there. */
const forTsx = "globalThis.__name = (f) => f";

/** Time from the click to the first sentence of the outcome and to the settled page, ms, seen from inside the page. */
const opened = (page: Page, id: string) =>
  page.evaluate(
    (job) =>
      new Promise<{ first: number; whole: number }>((done) => {
        const begun = performance.now();
        let first = 0;
        const look = () => {
          if (!first && document.querySelector(".outcome-sentence")?.textContent) first = performance.now() - begun;
          if (first && document.querySelector(".job")?.getAttribute("data-state") === "settled")
            done({ first, whole: performance.now() - begun });
          else requestAnimationFrame(look);
        };
        location.hash = `#/jobs/${job}`;
        look();
      }),
    id,
  );

const listed = async (page: Page, address: string): Promise<number> => {
  const begun = performance.now();
  await page.goto(`${address}/?${Math.random()}#/`);
  await page.locator('a[href*="#/jobs/"]').first().waitFor();
  return performance.now() - begun;
};

/** One opening in a browser of its own: nothing kept, then all scripts kept. */
const fresh = async (browser: Browser, address: string, id: string) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, serviceWorkers: "block" });
  const page = await context.newPage();
  await page.addInitScript(forTsx);
  await listed(page, address);
  const cold = await opened(page, id);
  const list = await listed(page, address);
  const warm = await opened(page, id);
  await context.close();
  return { list, cold, warm };
};

/** Frames while the lift is dragged in circles for two seconds: how far apart, and how much script between, ms. */
const dragged = async (browser: Browser, address: string, id: string) => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.addInitScript(forTsx);
  await page.goto(`${address}/#/jobs/${id}`);
  await page.locator('.job[data-state="settled"]').waitFor({ timeout: 60_000 });
  const box = (await page.locator('[data-path="columns"] .base').first().boundingBox())!;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.evaluate(() => {
    const shelf = window as unknown as { gaps: number[] };
    shelf.gaps = [];
    let last = performance.now();
    const frame = () => {
      const now = performance.now();
      shelf.gaps.push(now - last);
      last = now;
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
  const until = performance.now() + 2000;
  for (let i = 0; performance.now() < until; i++)
    await page.mouse.move(at.x + 12 * Math.sin(i / 9), at.y + 12 * Math.cos(i / 9));
  const gaps = await page.evaluate(() => (window as unknown as { gaps: number[] }).gaps);
  await page.mouse.up();
  await page.close();
  return gaps;
};

const executablePath = findChromium();
const served = await serve(join(mkdtempSync(join(tmpdir(), "floorworthy-opening-")), "jobs.sqlite"), {
  FLOORWORTHY_RATE: "1000000",
  FLOORWORTHY_DEMO: "fill",
});
const browser = await chromium.launch({ args: ["--no-sandbox"], ...(executablePath && { executablePath }) });
try {
  const [average] = readFileSync("/proc/loadavg", "utf8").split(" ");
  console.log(
    `${cpus().length} cores, load ${average} at the start; server, browser and this script on the same machine.`,
  );
  const jobs = (await (await fetch(`${served.address}/api/jobs`)).json()) as { id: string; title: string }[];
  let slowest = 0;
  console.log(
    "title                                     list   first answer: cold, warm    whole: cold, warm   warm/list",
  );
  for (const { id, title } of jobs) {
    const runs: Awaited<ReturnType<typeof fresh>>[] = [];
    for (let i = 0; i < ROUNDS; i++) runs.push(await fresh(browser, served.address, id));
    const of = (pick: (run: (typeof runs)[number]) => number) => middle(runs.map(pick));
    const [list, cold, warm] = [of((r) => r.list), of((r) => r.cold.first), of((r) => r.warm.first)];
    slowest = Math.max(slowest, cold);
    console.log(
      [
        title.slice(0, 38).padEnd(38),
        `${list.toFixed(0).padStart(5)} ms`,
        `${cold.toFixed(0).padStart(12)} ${warm.toFixed(0).padStart(6)} ms`,
        `${of((r) => r.cold.whole)
          .toFixed(0)
          .padStart(14)} ${of((r) => r.warm.whole)
          .toFixed(0)
          .padStart(6)} ms`,
        `${(warm / list).toFixed(1).padStart(9)}`,
      ].join("  "),
    );
  }
  console.log(`slowest first answer ${slowest.toFixed(0)} ms of ${BUDGET} ms`);
  const gaps = await dragged(browser, served.address, jobs[0]!.id);
  console.log(
    `dragging the lift: ${gaps.length} frames in 2 s; ${middle(gaps).toFixed(1)} ms apart, 95 % under ${share(gaps, 0.95).toFixed(1)} ms, longest ${Math.max(...gaps).toFixed(0)} ms`,
  );
  if (slowest > BUDGET) process.exitCode = 1;
} finally {
  await browser.close();
  served.process.kill("SIGTERM");
  await served.ended;
}
