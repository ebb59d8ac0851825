// What the first visit of the page costs: compressed script before anything can be pressed, and on opening a job.
// Budget: 300 kB of compressed script at first load. Needs `npm run build`.
import { readdirSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

const BUDGET = 300_000;
const assets = "dist/web/assets/";
const index = readFileSync("dist/web/index.html", "utf8");
const sizeOf = (name: string): number => gzipSync(readFileSync(assets + name), { level: 9 }).length;

/** What a script needs at once: its static imports, and theirs. */
const needed = (name: string, found: Set<string> = new Set()): Set<string> => {
  if (found.has(name)) return found;
  found.add(name);
  const text = readFileSync(assets + name, "utf8");
  for (const [, own] of text.matchAll(/(?:from|import)\s*"\.\/([\w.-]+\.js)"/g)) if (own) needed(own, found);
  return found;
};

const first = [...index.matchAll(/(?:src|href)="[^"]*assets\/([\w.-]+\.js)"/g)].flatMap(([, name]) => name ?? []);
const atOnce = new Set(first.flatMap((name) => [...needed(name)]));
const total = (names: Iterable<string>): number => [...names].reduce((sum, name) => sum + sizeOf(name), 0);
const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

console.log(`first load, compressed script: ${kB(total(atOnce))} of ${kB(BUDGET)}`);
for (const name of atOnce) console.log(`  ${name} ${kB(sizeOf(name))}`);
const job = readdirSync(assets).find((name) => /^job-page.*\.js$/.test(name));
if (job)
  console.log(
    `opening a job adds: ${kB(total(needed(job)) - total([...needed(job)].filter((name) => atOnce.has(name))))}`,
  );
const worker = readdirSync(assets).filter((name) => /^worker.*\.js$/.test(name));
console.log(`the worker, beside the page: ${kB(total(worker))}`);
if (total(atOnce) > BUDGET) process.exitCode = 1;
