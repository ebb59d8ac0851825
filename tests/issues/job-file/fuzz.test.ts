/** Whatever is done to a file, reading it ends: in a job whose numbers are numbers, or in issues that say what to do. */
import { readFileSync } from "node:fs";
import { issueCatalogue, type JobReading, readJob, setFact } from "@floorworthy/job";
import { jobFileSchema } from "@floorworthy/job/schema";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";

const example = (name: string) => readFileSync(new URL(`../../../examples/${name}.yaml`, import.meta.url), "utf8");
const whole = example("nine-cold-days");
const short = `floorworthy: 1
title: short
lift:
  name: L
  kind: two-post
  rated: 9000 lb
  base: { outline: { width: 18 in, depth: 18 in } }
  anchors: { holes: [[-7 in, -6 in], { id: B, at: [3 in, 6 in] }] }
bay: { outline: { width: 20 ft, depth: 22 ft } }
floor:
  thickness: { low: 4 in, high: 5 in, why: seen }
  below: ground
  joints: [{ x: 10 ft }]
  cracks: [{ line: [[1 ft, 1 ft], [2 ft, 3 ft]] }]
columns: { left: [5 ft, 11 ft], right: [15 ft, 11 ft] }
`;

const noNumberIsNone = (value: unknown): boolean =>
  typeof value === "number"
    ? Number.isFinite(value)
    : typeof value !== "object" || value === null || Object.values(value).every(noNumberIsNone);

const spoken = /NaN|undefined|\[object/;

/** Thrown, not expected, for the sake of speed: there are half a million messages. */
const sound = (reading: JobReading): void => {
  if (reading.ok && !noNumberIsNone(reading.job)) throw new Error("a number that is none");
  if (reading.ok) return;
  if (reading.issues.length === 0) throw new Error("refused without a word");
  for (const issue of reading.issues) {
    const { code, line, column, message, hint } = issue;
    const told = code in issueCatalogue && line >= 1 && column >= 1 && message.length > 5 && hint.length > 5;
    if (!told || spoken.test(message + hint)) throw new Error(JSON.stringify(issue));
  }
};

const scraps = [
  "unknown",
  "4 in",
  "-1",
  "0",
  "null",
  "~",
  "{}",
  "[]",
  "{",
  "}",
  "[",
  "]",
  "- ",
  ": ",
  "? ",
  "#",
  "&a",
  "*a",
  "!!x",
  "|",
  ">",
  "\t",
  "\n",
  "  ",
  '"',
  "'",
  "---\n",
  "%",
  "@",
  "`",
  ",",
  "1e999 in",
  "9".repeat(70),
  "\u0000",
  "\ud800",
  "\ufeff",
  "é½″",
  "__proto__",
  "floor:",
  "value:",
  "2025-02-30",
];

const change = fc.oneof(
  fc.record({ kind: fc.constant("cut" as const), from: fc.nat(), length: fc.integer({ min: 1, max: 40 }) }),
  fc.record({ kind: fc.constant("put" as const), from: fc.nat(), scrap: fc.constantFrom(...scraps) }),
  fc.record({ kind: fc.constant("swap" as const), from: fc.nat(), to: fc.nat() }),
  fc.record({ kind: fc.constant("shift" as const), from: fc.nat(), by: fc.constantFrom(" ", "   ", "\t", "- ") }),
);

type Change = typeof change extends fc.Arbitrary<infer T> ? T : never;

const apply = (text: string, step: Change): string => {
  const at = step.from % Math.max(1, text.length);
  const lines = text.split("\n");
  switch (step.kind) {
    case "cut":
      return text.slice(0, at) + text.slice(at + step.length);
    case "put":
      return text.slice(0, at) + step.scrap + text.slice(at);
    case "swap": {
      const [i, j] = [step.from % lines.length, step.to % lines.length];
      return lines.map((line, k) => (k === i ? lines[j] : k === j ? lines[i] : line)).join("\n");
    }
    case "shift":
      return lines.map((line, k) => (k === step.from % lines.length ? step.by + line : line)).join("\n");
  }
};

test("6,000 texts with one to four changes", () => {
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) =>
      sound(readJob(changes.reduce(apply, short))),
    ),
    { numRuns: 6000 },
  );
});

test("200 whole jobs with changes", () => {
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) =>
      sound(readJob(changes.reduce(apply, whole))),
    ),
    { numRuns: 200 },
  );
});

const junk = fc.oneof(
  fc.constantFrom<unknown>(
    "unknown",
    "4 in",
    "3000 psi",
    "-2 ft",
    "0",
    0,
    4,
    -1,
    true,
    null,
    "",
    "x",
    "2025-01-01",
    "28 d",
    "none",
    [],
    {},
    ["1 ft", "2 ft"],
    { value: "4 in" },
    { low: "1 in", high: "2 in", why: "w" },
    { basis: "unknown" },
    { width: "4 ft", depth: "4 ft" },
  ),
  fc.jsonValue({ maxDepth: 2 }),
);

/** Some place of a tree gets another value, or a key is added or taken away. */
const graft = (tree: unknown, seeds: readonly number[], value: unknown): unknown => {
  if (typeof tree !== "object" || tree === null || seeds.length === 0) return value;
  const keys = Object.keys(tree);
  const key = keys[seeds[0]! % Math.max(1, keys.length)];
  if (key === undefined) return value;
  const copy = (Array.isArray(tree) ? [...tree] : { ...tree }) as Record<string, unknown>;
  if (seeds[0]! % 11 === 10) delete copy[key];
  else copy[key] = graft(copy[key], seeds.slice(1), value);
  return copy;
};

test("3,000 JSON files with strange values; what readJob takes, the published schema takes", () => {
  const tree: unknown = parse(short);
  fc.assert(
    fc.property(fc.array(fc.nat(), { minLength: 1, maxLength: 4 }), junk, (seeds, value) => {
      const data = graft(tree, seeds, value);
      const text = JSON.stringify(data);
      const reading = readJob(text);
      sound(reading);
      const newest = reading.ok && reading.warnings.every(({ code }) => code !== "older-format");
      if (newest) expect(jobFileSchema.safeParse(parse(text)).success).toBe(true);
    }),
    { numRuns: 3000 },
  );
});

test("1,000 settings of facts in broken texts", () => {
  fc.assert(
    fc.property(
      fc.array(change, { maxLength: 2 }),
      fc.constantFrom("lift.rated", "floor.thickness", "floor.readings[0].thickness", "columns.left[0]", "pour.slump"),
      fc.constantFrom(...scraps),
      (changes, path, value) => {
        sound(readJob(setFact(changes.reduce(apply, short), path, value)));
      },
    ),
    { numRuns: 1000 },
  );
});
