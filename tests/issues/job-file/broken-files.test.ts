import { type Issue, issueCatalogue, printIssue, readJob, readLift } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { brokenFiles } from "./broken-files.ts";

const HEAD = "floorworthy: 1\ntitle: t\nlift: { name: L, kind: two-post }\n";
const print = ({ code, line, column, path, message, hint }: Issue) =>
  `${code} ${line}:${column} ${path}${path === "" ? "" : ": "}${message} ${hint}`;
const issuesOf = (text: string, load?: (name: string) => string | undefined) => {
  const reading = readJob(text, { ...(load && { load }) });
  return reading.ok ? [] : reading.issues;
};
const codesOf = (...given: Parameters<typeof issuesOf>) => issuesOf(...given).map(({ code }) => code);

describe("each broken file gets its messages and no others", () => {
  test.each(brokenFiles.map(({ title, text, issues }) => [title, text, issues] as const))("%s", (_, text, issues) => {
    expect(issuesOf(text).map(print)).toEqual(issues);
  });
});

/** Files too long to stand in a table. */
const made: readonly (readonly [string, string, string])[] = [
  ["too-large", `${HEAD}${"# remark\n".repeat(40_000)}`, "The file has 360058 characters; 200000 are read."],
  ["too-deep", `${HEAD}floor: ${"[".repeat(100_000)}`, "Lists or groups stand inside each other more than 40 deep."],
  [
    "too-deep",
    `${HEAD}floor:\n  ${"- ".repeat(50_000)}x`,
    "Lists or groups stand inside each other more than 40 deep.",
  ],
  ["too-deep", `${HEAD}floor: ${'{"a":'.repeat(30_000)}`, "Lists or groups stand inside each other more than 40 deep."],
  [
    "too-many-items",
    `${HEAD}vehicles:\n${"  - { name: van }\n".repeat(51)}`,
    "The list has 51 items; the form takes up to 50.",
  ],
  ["text-too-long", `${HEAD}customer: ${"x".repeat(201)}\n`, "The text has 201 characters; 200 are kept here."],
  ["not-a-quantity", `${HEAD}floor: { thickness: ${"9".repeat(300)} in }\n`, `"${"9".repeat(60)}…" is not a length.`],
];
test.each(made)("%s", (code, text, message) => {
  expect(issuesOf(text).map((issue) => [issue.code, issue.message])).toEqual([[code, message]]);
});

test("no more than 200 mistakes are listed, and the rest are counted", () => {
  const issues = issuesOf(HEAD + Array.from({ length: 300 }, (_, i) => `key${i}zzzz: 1`).join("\n"));
  expect(issues.length).toBe(201);
  expect(issues.at(-1)).toMatchObject({ code: "and-more", message: "There are 100 more mistakes." });
});

describe("a lift in a file of its own", () => {
  const job = "floorworthy: 1\ntitle: t\nlift: { file: lifts/one.yaml }\n";
  test("is read through load", () => {
    const asked: string[] = [];
    const reading = readJob(job, {
      load: (name) => {
        asked.push(name);
        return "floorworthy: 1\nlift: { name: One, kind: two-post }\n";
      },
    });
    expect([reading.ok && reading.job.lift.name, asked]).toEqual(["One", ["lifts/one.yaml"]]);
  });
  test("has its mistakes reported with its own name and lines", () => {
    const issues = issuesOf(job, () => "floorworthy: 1\nlift:\n  name: One\n  kind: two-post\n  rated: 7000\n");
    expect(issues).toMatchObject([{ file: "lifts/one.yaml", line: 5, path: "lift.rated", code: "bare-number" }]);
  });
  test("may not lead to another file", () => {
    expect(codesOf(job, () => "floorworthy: 1\nlift: { file: lifts/one.yaml }\n")).toEqual(["file-in-file"]);
  });
  test("may not be empty or something else", () => {
    expect(codesOf(job, () => "")).toEqual(["empty-file"]);
    expect(codesOf(job, () => "floorworthy: 1\n")).toEqual(["missing-key"]);
    expect(codesOf(job, () => "- x\n")).toEqual(["not-a-group"]);
  });
  test("is read alone by readLift", () => {
    expect(readLift("floorworthy: 1\nlift: { name: One, kind: scissor }\n")).toMatchObject({
      ok: true,
      lift: { name: "One" },
    });
    expect(readLift(HEAD)).toMatchObject({ ok: false, issues: [{ code: "unknown-key", path: "title" }] });
  });
});

describe("warnings do not stop the reading", () => {
  const warned = (text: string) => {
    const reading = readJob(text);
    return reading.ok ? reading.warnings.map(({ code, message }) => `${code}: ${message}`) : ["not read"];
  };
  test("an unusual value", () => {
    expect(warned(`${HEAD}floor: { thickness: 4 ft }\n`)).toEqual([
      'unusual: "4 ft" is unusual here; such values lie between 1.97 in and 35.43 in.',
    ]);
  });
  test("columns farther apart than the lift's", () => {
    const text = HEAD.replace("two-post }", "two-post, spacing: 128 in }");
    expect(warned(`${text}columns: { left: [60 in, 10 ft], right: [190 in, 10 ft] }\n`)).toEqual([
      "spacing-differs: The columns stand 130 in apart; the lift's sheet says 128 in.",
    ]);
    expect(warned(`${text}columns: { left: [60 in, 10 ft], right: [188 in, 10 ft] }\n`)).toEqual([]);
  });
  test("a draft of the form", () => {
    const draft = `floorworthy: 0
title: old
lift: { name: L, kind: two-post, capacity: 9000 lb }
slab: { thickness: 5 in }
columns: [[5 ft, 12 ft], [15 ft, 12 ft]]
`;
    const reading = readJob(draft);
    if (!reading.ok) throw new Error(reading.issues.map(print).join("\n"));
    expect(reading.job.lift.rated).toMatchObject({ written: "9000 lb" });
    expect(reading.job.floor.thickness).toMatchObject({ value: 127 });
    expect(reading.job.position?.right).toEqual({ x: 4572, y: expect.closeTo(3657.6, 9) });
    expect(reading.warnings.map(({ code, line }) => [code, line])).toEqual([["older-format", 1]]);
  });
  test("a draft's mistakes keep their lines", () => {
    expect(
      issuesOf("floorworthy: 0\ntitle: old\nlift:\n  name: L\n  kind: two-post\n  capacity: 9\n").map(print),
    ).toEqual([
      'bare-number 6:13 lift.rated: "9" has no unit; a weight or force was expected. Write a number and a unit, such as 9000 lb or 40 kN.',
    ]);
  });
});

test("every code of the catalogue is met in this file", () => {
  const here = new Set([
    ...brokenFiles.flatMap(({ issues }) => issues.map((issue) => issue.split(" ")[0])),
    ...made.map(([code]) => code),
    ...["and-more", "file-in-file", "unusual", "spacing-differs", "older-format"],
  ]);
  expect(Object.keys(issueCatalogue).filter((code) => !here.has(code))).toEqual([]);
});

test("issues carry the name of their file", () => {
  const reading = readJob("floorworthy: 1\n", { name: "garage.yaml" });
  expect(reading.ok ? [] : reading.issues.map((issue) => printIssue(issue, "?"))).toEqual([
    'garage.yaml:1:1  title: "title" is missing. Needed: what the job is called, in a few words.',
    'garage.yaml:1:1  lift: "lift" is missing. Needed: the lift, as its maker\'s sheet describes it.',
  ]);
});
