import { readdirSync, readFileSync } from "node:fs";
import { readJob, readLift } from "@floorworthy/job";
import { issueTable, jobFileSchema, jobJsonSchema, keyTables, liftJsonSchema } from "@floorworthy/job/schema";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { brokenFiles } from "./broken-files.ts";

const root = new URL("../../../", import.meta.url);
const file = (name: string) => readFileSync(new URL(name, root), "utf8");
const filesIn = (folder: string) =>
  readdirSync(new URL(folder, root))
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => folder + name);
const jobs = filesIn("examples/");
const lifts = filesIn("examples/lifts/");
const again = "run node scripts/job-form.mjs";

describe("what is published follows from the declarations", () => {
  test("job.schema.json", () =>
    expect(JSON.parse(file("packages/job/job.schema.json")), again).toEqual(jobJsonSchema()));
  test("lift.schema.json", () =>
    expect(JSON.parse(file("packages/job/lift.schema.json")), again).toEqual(liftJsonSchema()));
  test("docs/job-file.md lists every key", () =>
    expect(file("docs/job-file.md").includes(keyTables()), again).toBe(true));
  test("docs/job-file.md lists every issue", () =>
    expect(file("docs/job-file.md").includes(issueTable()), again).toBe(true));
});

test("the short job of docs/job-file.md is read without a word", () => {
  const [, example] = /```yaml\n(floorworthy[\s\S]*?)```/.exec(file("docs/job-file.md"))!;
  expect(readJob(example!)).toMatchObject({ ok: true, warnings: [] });
});

describe("examples", () => {
  test.each(jobs)("%s is read without a word", (name) =>
    expect(readJob(file(name))).toMatchObject({ ok: true, warnings: [] }),
  );
  test.each(lifts)("%s is read without a word", (name) =>
    expect(readLift(file(name))).toMatchObject({ ok: true, warnings: [] }),
  );
  test("there are enough of them", () => expect(jobs.length).toBeGreaterThanOrEqual(7));
});

describe("the JSON Schema, checked by Ajv 8.20", () => {
  const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
  const [job, lift] = [ajv.compile(jobJsonSchema()), ajv.compile(liftJsonSchema())];
  test.each(jobs)("takes %s", (name) => expect([job(parse(file(name))), job.errors]).toEqual([true, null]));
  test.each(lifts)("takes %s", (name) => expect([lift(parse(file(name))), lift.errors]).toEqual([true, null]));

  /** Mistakes of form. The sense of a text ("4 to 5 in") and of a version is readJob's alone. */
  const ofForm = /^(unknown-key|missing-key|missing-version|bare-number|not-a|wrong-word|empty-item|too-few|needs)/;
  const ofSense = ["more than eleven inches after feet", "a range in one text", "a number about right"];
  const bad = brokenFiles.filter(({ title, issues }) => ofForm.test(issues[0]!) && !ofSense.includes(title));
  test.each(bad.map(({ title, text }) => [title, text] as const))("refuses %s", (_, text) => {
    const data: unknown = parse(text);
    expect([job(data), jobFileSchema.safeParse(data).success]).toEqual([false, false]);
  });
  test("there are enough of them", () => expect(bad.length).toBeGreaterThan(30));
});
