// Pictures of the page in docs/screens, wide and narrow, light and dark. Starts the server itself.
//   node scripts/screenshots.mjs [--url http://127.0.0.1:4370] [--out docs/screens] [--job ID]
import { spawn } from "node:child_process";
import { mkdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { chromium } from "@playwright/test";
import { findChromium } from "./ready.mjs";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const { values } = parseArgs({
  options: { url: { type: "string" }, out: { type: "string", default: "docs/screens" }, job: { type: "string" } },
});

/** Starts the server and waits for the line with its address. */
const startServer = () =>
  new Promise((resolve, reject) => {
    const server = spawn(process.execPath, ["scripts/start.mjs"], {
      env: {
        ...process.env,
        PORT: "4391",
        FLOORWORTHY_STORE: `${tmpdir()}/floorworthy-screens-${process.pid}/jobs.sqlite`,
      },
    });
    server.stdout.on("data", (words) => {
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(String(words))?.[0];
      if (address) resolve({ server, address });
    });
    server.once("exit", () => reject(new Error("the server did not start")));
  });

const { server, address } = values.url ? { address: values.url } : await startServer();
mkdirSync(values.out, { recursive: true });
const browser = await chromium.launch({ executablePath: findChromium(), args: ["--no-sandbox"] });
const sizes = [
  ["wide", { width: 1280, height: 900 }],
  ["narrow", { width: 390, height: 844 }],
];
for (const [size, viewport] of sizes) {
  for (const colorScheme of ["light", "dark"]) {
    const page = await browser.newPage({ viewport, colorScheme });
    page.on("console", (message) => message.type() === "error" && console.error(message.text()));
    await page.goto(`${address}/${values.job ? `#${values.job}` : ""}`);
    await page.locator(".outcome[data-state=settled]").waitFor({ timeout: 60_000 });
    await page.screenshot({ path: `${values.out}/${size}-${colorScheme}.png` });
    await page.screenshot({ path: `${values.out}/${size}-${colorScheme}-whole.png`, fullPage: true });
    await page.close();
  }
}
await browser.close();
server?.kill("SIGTERM");
