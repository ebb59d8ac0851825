import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig } from "@playwright/test";
import { findChromium } from "../../scripts/ready.mjs";

/** a server that runs already, by its address; else one is started with a store of its own */
const running = process.env.SERVER_OF_BROWSER_TESTS;
const port = process.env.PORT_OF_BROWSER_TESTS ?? "4379";
const root = fileURLToPath(new URL("../../", import.meta.url));
const chromium = findChromium();

export default defineConfig({
  testDir: ".",
  outputDir: `${root}test-results`,
  timeout: 240_000,
  expect: { timeout: 45_000 },
  workers: 1,
  reporter: "list",
  use: {
    baseURL: running ?? `http://127.0.0.1:${port}`,
    actionTimeout: 30_000,
    viewport: { width: 1280, height: 900 },
    launchOptions: { args: ["--no-sandbox"], ...(chromium && { executablePath: chromium }) },
  },
  ...(running === undefined && {
    webServer: {
      command: "node scripts/start.mjs",
      cwd: root,
      env: {
        PORT: port,
        FLOORWORTHY_STORE: join(mkdtempSync(join(tmpdir(), "floorworthy-browser-")), "jobs.sqlite"),
        FLOORWORTHY_JOBS: fileURLToPath(new URL("jobs", import.meta.url)),
      },
      url: `http://127.0.0.1:${port}/api/health`,
      timeout: 180_000,
      reuseExistingServer: false,
    },
  }),
});
