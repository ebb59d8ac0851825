// Pictures of every screen in docs/screens, wide and narrow, made from the demo. Starts the built server itself (npm run build).
//   node scripts/screenshots.mjs [--url http://127.0.0.1:4370] [--out docs/screens]
import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { chromium } from "@playwright/test";
import { findChromium } from "./ready.mjs";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const { values } = parseArgs({
  options: { url: { type: "string" }, out: { type: "string", default: "docs/screens" } },
});

/** Starts the server on a store of its own and waits for the line with its address. */
const startServer = () =>
  new Promise((resolve, reject) => {
    const store = `${mkdtempSync(`${tmpdir()}/floorworthy-screens-`)}/jobs.sqlite`;
    const server = spawn(process.execPath, ["dist/server.mjs"], {
      env: { ...process.env, PORT: "4391", FLOORWORTHY_STORE: store, FLOORWORTHY_DEMO: "fill" },
    });
    server.stdout.on("data", (words) => {
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(String(words))?.[0];
      if (address) resolve({ server, address });
    });
    server.once("exit", () => reject(new Error("the server did not start")));
  });

const settled = (page) => page.locator(".outcome[data-state=settled]").waitFor({ timeout: 90_000 });
const rested = async (page) => {
  await page.waitForTimeout(700); // what takes longer than the page's patience shows by now
  await page.waitForFunction(() => !document.querySelector("progress, .preview[data-state=working]"), undefined, {
    timeout: 120_000,
  });
  await page.waitForTimeout(600);
};

const job = (id) => ({ to: `#/jobs/${id}`, ready: settled });
/** A part of a job alone, at the top of the screen. */
const partOf = (id, part, before = async () => undefined) => ({
  to: `#/jobs/${id}/${part}`,
  ready: async (page) => {
    await settled(page);
    await before(page.locator(`#part-${part}`));
    await rested(page);
    await page.locator(`#part-${part}`).evaluate((node) => node.scrollIntoView({ block: "start" }));
  },
});
const ready = (selector) => ({ ready: (page) => page.locator(selector).first().waitFor() });

/** Every job in sight; those below are judged when they come into it. */
const allJudged = () => {
  const inSight = [...document.querySelectorAll(".job-outcome")].filter(
    (line) => line.getBoundingClientRect().top < innerHeight,
  );
  return inSight.length > 0 && inSight.every((line) => line.hasAttribute("data-outcome"));
};

const screens = {
  jobs: {
    to: "#/",
    ready: (page) => page.waitForFunction(allJudged, undefined, { timeout: 90_000 }),
  },
  job: job("records-in-hand"),
  "job-stopped": job("stamp-at-the-door"),
  "part-1-lift": partOf("records-in-hand", "lift"),
  "part-2-floor": partOf("records-in-hand", "floor"),
  "part-3-position": partOf("saw-cut-in-the-way", "position"),
  "part-4-answer": partOf("records-in-hand", "answer"),
  "part-5-pad": partOf("four-inches-that-are-not", "pad", (part) =>
    part.getByRole("button", { name: "Find the cheapest pad that holds" }).click(),
  ),
  "part-6-pour": partOf("new-heated-shop", "pour"),
  "part-7-anchors": partOf("steel-in-the-way", "anchors"),
  "part-8-upkeep": partOf("four-years-of-rounds", "upkeep"),
  "part-9-papers": partOf("records-in-hand", "papers", (part) =>
    part
      .getByRole("button", { name: /installer/i })
      .first()
      .click(),
  ),
  "card-drill": { to: "#/jobs/records-in-hand/cards/drill", ...ready("main h2") },
  "card-torque": { to: "#/jobs/four-years-of-rounds/cards/torque", ...ready("main h2") },
  lifts: { to: "#/lifts", ...ready(".job-line") },
  lift: { to: "#/lifts/wainfell-10-arch", ...ready('[id="lift.rated"]') },
  people: { to: "#/people", ...ready("main h2") },
};

const sizes = { wide: { width: 1040, height: 700 }, narrow: { width: 360, height: 700 } };
const dark = new Set(["job"]);
/** What is mostly used at a desk is shown there only, so that all pictures together stay under 3 MB. */
const deskOnly = new Set(["part-1-lift", "part-2-floor", "part-3-position", "part-6-pour", "people"]);

const { server, address } = values.url ? { address: values.url } : await startServer();
rmSync(values.out, { recursive: true, force: true });
mkdirSync(values.out, { recursive: true });
const browser = await chromium.launch({ executablePath: findChromium(), args: ["--no-sandbox"] });
const missed = [];

const take = async (name, { to, ready }, size, colorScheme) => {
  const page = await browser.newPage({ viewport: sizes[size], colorScheme, deviceScaleFactor: 1 });
  page.setDefaultTimeout(60_000);
  page.on("pageerror", (error) => missed.push(`${name}: ${error.message}`));
  try {
    await page.goto(`${address}/${to}`);
    await ready(page);
    await page.waitForTimeout(300);
    await page.screenshot({ path: `${values.out}/${name}-${size}${colorScheme === "dark" ? "-dark" : ""}.png` });
  } catch (error) {
    missed.push(`${name}, ${size}: ${error.message.split("\n")[0]}`);
  }
  await page.close();
};

for (const [name, screen] of Object.entries(screens))
  for (const size of Object.keys(sizes)) {
    if (size === "narrow" && deskOnly.has(name)) continue;
    await take(name, screen, size, "light");
    if (dark.has(name)) await take(name, screen, size, "dark");
  }
if (server) {
  // the sign-in is there once somebody has an account; only in a store that is thrown away
  const data = { name: "Ada", role: "owner", password: "only for the picture" };
  const body = { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(data) };
  await fetch(`${address}/api/people`, body);
  for (const size of Object.keys(sizes)) await take("sign-in", { to: "#/", ...ready("form") }, size, "light");
}
await browser.close();
server?.kill("SIGTERM");
const sizeOf = (file) => statSync(`${values.out}/${file}`).size;
const files = readdirSync(values.out);
console.log(`${files.length} pictures, ${(files.reduce((sum, file) => sum + sizeOf(file), 0) / 1e6).toFixed(2)} MB`);
for (const line of missed) console.error(line);
process.exitCode = missed.length > 0 ? 1 : 0;
