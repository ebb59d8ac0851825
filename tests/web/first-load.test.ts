import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, test } from "vitest";

const MOST = 300_000;
/** the page as it is built for people */
const assets = fileURLToPath(new URL("../../dist/web/assets/", import.meta.url));

/** A script and all it imports at once, by name. */
const together = (name: string, found = new Set<string>()): Set<string> => {
  if (found.has(name)) return found;
  found.add(name);
  const text = readFileSync(assets + name, "utf8");
  for (const [, inner] of text.matchAll(/(?:^|[;}\n])(?:import|export)[^"'();]*?["']\.\/([\w.-]+\.js)["']/g))
    together(inner!, found);
  return found;
};
const named = (begin: string) => readdirSync(assets).filter((name) => name.startsWith(begin) && name.endsWith(".js"));

test("opening a job fetches less than 300 kB of compressed script, the worker apart", () => {
  const scripts = [...named("index-"), ...named("job-page-")].reduce(
    (found, name) => together(name, found),
    new Set<string>(),
  );
  expect([...scripts].some((name) => name.startsWith("index-"))).toBe(true);
  expect([...scripts].some((name) => name.startsWith("job-page-"))).toBe(true);
  const sizes = [...scripts].map((name) => [name, gzipSync(readFileSync(assets + name)).length] as const);
  const whole = sizes.reduce((sum, [, size]) => sum + size, 0);
  console.log(
    `first load ${(whole / 1000).toFixed(0)} kB: ${sizes.map(([name, size]) => `${name} ${(size / 1000).toFixed(0)}`).join(", ")}`,
  );
  expect(whole).toBeGreaterThan(50_000);
  expect(whole).toBeLessThan(MOST);
});

test("the page is built for people also when a test builds it: nothing of React's slower build for developers is in it", () => {
  expect(readdirSync(assets).filter((name) => name.includes("jsx-dev"))).toEqual([]);
  expect(readdirSync(assets).filter((name) => readFileSync(assets + name, "utf8").includes("jsxDEV("))).toEqual([]);
});
