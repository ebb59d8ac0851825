// Everything `npm test` means: the checks, the tests without a browser, the build, the real browser.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const steps = [
  ["checks", process.execPath, ["scripts/check.mjs"]],
  ["build", process.execPath, ["scripts/built.mjs"]],
  ["tests", "node_modules/.bin/vitest", ["run"]],
];
if (existsSync("tests/browser"))
  steps.push(["browser", "node_modules/.bin/playwright", ["test", "--config", "tests/browser/playwright.config.ts"]]);

const failed = [];
for (const [name, command, args] of steps) {
  console.log(`\n== ${name}`);
  if (spawnSync(command, args, { stdio: "inherit" }).status !== 0) failed.push(name);
}
console.log(failed.length === 0 ? "\nAll green." : `\nFailed: ${failed.join(", ")}`);
process.exit(failed.length === 0 ? 0 : 1);
