import { readJob, readLift } from "@floorworthy/job";
import { addToList } from "@floorworthy/job/editing";
import type { AnyField } from "@floorworthy/job/fields";
import { jobFields, liftSheetFields } from "@floorworthy/job/form";
import { describe, expect, test } from "vitest";
import { firstEntry } from "../../apps/web/src/form/first-entry.ts";

/** Every list of a form that stands at a fixed place, by its path. */
const listsOf = (field: AnyField, path: string): readonly (readonly [string, AnyField])[] => {
  const { shape } = field;
  if (shape.kind === "list") return [[path, shape.of]];
  if (shape.kind !== "group") return [];
  return Object.entries(shape.fields).flatMap(([key, each]) => listsOf(each, `${path}.${key}`));
};

const job = "floorworthy: 1\ntitle: A\nlift:\n  name: L\n  kind: two-post\n";
const lift = "floorworthy: 1\nlift:\n  name: L\n  kind: two-post\n";
const mistakes = (text: string, read: typeof readJob | typeof readLift) => {
  const reading = read(text);
  return reading.ok ? [] : reading.issues.map(({ path, message }) => `${path}: ${message}`);
};
/** What is still to be typed is no fault, nor what stands twice until it is typed over. */
const faults = (before: readonly string[], after: readonly string[]) =>
  after.filter((each) => !before.includes(each) && !/is needed here|is missing|twice|needs the outline/.test(each));

const inJob = Object.entries(jobFields as unknown as Record<string, AnyField>).flatMap(([key, field]) =>
  listsOf(field, key),
);
const inLift = listsOf(liftSheetFields.lift as unknown as AnyField, "lift");

describe("what is added to a list on the page reads without a mistake", () => {
  test.each(inJob.filter(([path]) => !path.startsWith("lift.")))("%s in a job", (path, item) => {
    let text: string | undefined = job;
    for (const count of [1, 2]) text = text && addToList(text, path, firstEntry(item, count));
    expect(text).toBeDefined();
    expect(faults(mistakes(job, readJob), mistakes(text!, readJob))).toEqual([]);
  });
  test.each(inLift)("%s in a lift sheet", (path, item) => {
    let text: string | undefined = lift;
    for (const count of [1, 2]) text = text && addToList(text, path, firstEntry(item, count));
    expect(faults(mistakes(lift, readLift), mistakes(text!, readLift))).toEqual([]);
  });
});
