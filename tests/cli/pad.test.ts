import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readJob } from "@floorworthy/job";
import { expect, test } from "vitest";

const root = new URL("../../", import.meta.url).pathname;
const folder = mkdtempSync(join(tmpdir(), "floorworthy-pad-"));
const run = (...args: string[]) =>
  spawnSync(process.execPath, [join(root, "bin/floorworthy.mjs"), ...args], { encoding: "utf8", timeout: 120_000 });
const example = join(root, "examples/four-inches-that-are-not.yaml");

test("pad: the answer first, the habit beside, the job written with the pad in it and its comments kept", () => {
  const to = join(folder, "with-pad.yaml");
  const { stdout, stderr, status } = run("pad", example, "--write", to);
  expect([stderr, status]).toEqual(["", 0]);
  const at = (words: string): number => stdout.indexOf(words);
  expect(at("POUR")).toBeGreaterThan(0);
  expect(at("THE RULE OF THUMB")).toBeGreaterThan(at("POUR"));
  expect(at("WHAT AN INCH BUYS")).toBeGreaterThan(at("THE CHEAPEST OF EVERY SHAPE"));
  expect(stdout).toMatch(/yd³ in the forms, .* yd³ to\s+order, about \$/);
  expect(stdout).toMatch(/invented, replace with your own quotes/);
  expect(stdout).not.toMatch(/NaN|undefined|approved|certified/i);
  const [before, after] = [readFileSync(example, "utf8"), readFileSync(to, "utf8")];
  for (const line of before.split("\n")) expect(after).toContain(line);
  const read = readJob(after);
  expect(read.ok && read.job.floor.zones.every(({ state }) => state === "proposed")).toBe(true);
  // a second writing takes the first proposal's place
  writeFileSync(join(folder, "again.yaml"), after);
  const again = run("pad", join(folder, "again.yaml"), "--write", join(folder, "twice.yaml"));
  expect(again.status).toBe(0);
  const twice = readJob(readFileSync(join(folder, "twice.yaml"), "utf8"));
  expect(twice.ok && read.ok && twice.job.floor.zones.length).toBe(read.ok && read.job.floor.zones.length);
}, 240_000);

test("under a stop there is no pad, and the reason is said", () => {
  const { stdout, stderr, status } = run("pad", join(root, "examples/stamp-at-the-door.yaml"));
  expect([stdout, status]).toEqual(["", 3]);
  expect(stderr).toMatch(/^No pad is designed\. .*post-tension/s);
});
