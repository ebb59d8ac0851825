import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import { expect, test } from "vitest";

const MOST = 300_000;

/** A script and all it imports at once, by name. */
const together = (folder: string, name: string, found = new Set<string>()): Set<string> => {
  if (found.has(name)) return found;
  found.add(name);
  const text = readFileSync(join(folder, name), "utf8");
  for (const [, inner] of text.matchAll(/(?:^|[;}\n])(?:import|export)[^"'();]*?["']\.\/([\w.-]+\.js)["']/g))
    together(folder, inner!, found);
  return found;
};

test("opening a job fetches less than 300 kB of compressed script, the worker apart", {
  timeout: 120_000,
}, async () => {
  const outDir = mkdtempSync(join(tmpdir(), "floorworthy-page-"));
  const root = fileURLToPath(new URL("../../apps/web", import.meta.url));
  await build({ root, logLevel: "silent", build: { outDir, emptyOutDir: true } });
  const assets = join(outDir, "assets");
  const named = (begin: string) => readdirSync(assets).filter((name) => name.startsWith(begin) && name.endsWith(".js"));
  const scripts = [...named("index-"), ...named("job-page-")].reduce(
    (found, name) => together(assets, name, found),
    new Set<string>(),
  );
  expect([...scripts].some((name) => name.startsWith("index-"))).toBe(true);
  expect([...scripts].some((name) => name.startsWith("job-page-"))).toBe(true);
  const sizes = [...scripts].map((name) => [name, gzipSync(readFileSync(join(assets, name))).length] as const);
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0);
  console.log(
    `first load ${(whole / 1000).toFixed(0)} kB: ${sizes.map(([name, size]) => `${name} ${(size / 1000).toFixed(0)}`).join(", ")}`,
  );
  expect(whole).toBeGreaterThan(50_000);
  expect(whole).toBeLessThan(MOST);
});
