import { readFileSync } from "node:fs";
import { readJob } from "@floorworthy/job";
import { addToList, liftFileOf, putLift, setPlain, withOwnLift } from "@floorworthy/job/editing";
import { writtenTree } from "@floorworthy/job/listing";
import { describe, expect, test } from "vitest";

const base =
  "# kept\nfloorworthy: 1\ntitle: A bay # and this\nfloor:\n  readings:\n    - { thickness: 5 in, method: drill }\n";

describe("adding to a list", () => {
  test("keeps comments and what was there", () => {
    const text = addToList(base, "floor.readings", { thickness: "4 7/8 in", method: "drill", near: "left" })!;
    expect(text).toContain("# kept");
    expect(text).toContain("# and this");
    expect(text).toContain("5 in");
    expect(text).toMatch(/- thickness: 4 7\/8 in/);
  });

  test.each(["visits", "installation.holes", "floor.cracks[0].seen"])("makes what is missing: %s", (path) => {
    const text = addToList(`${base}  cracks:\n    - { name: a }\n`, path, { date: "2026-01-02" })!;
    expect(text).toContain("date: 2026-01-02");
  });

  test("the word unknown makes way for a list", () =>
    expect(addToList("visits: unknown\n", "visits", { date: "2026-01-02" })).toBe("visits:\n  - date: 2026-01-02\n"));

  test.each([
    ["title", base],
    ["floor.readings[0]", base],
    ["floor.zones[3].x", base],
    ["floor..x", base],
    ["visits", "a: [1"],
    ["visits", "- 1\n"],
  ])("refuses %s", (path, text) => expect(addToList(text, path, { a: "b" })).toBeUndefined());

  test("text that looks like YAML stays text", () => {
    const note = "- { # : yes\n'";
    const text = addToList("visits: []\n", "visits", { note })!;
    expect(text).toBeDefined();
    expect(addToList(text, "visits", { note: "true" })).toContain('"true"');
  });
});

describe("the lift of a job", () => {
  const job = readFileSync("tests/scenarios/files/01-records-in-hand.yaml", "utf8");
  const load = (name: string) => readFileSync(`tests/scenarios/files/${name}`, "utf8");

  test("is written out from its sheet, and the job reads the same", () => {
    const name = liftFileOf(job);
    expect(name).toBeDefined();
    const own = withOwnLift(job, load);
    expect(liftFileOf(own)).toBeUndefined();
    const [before, after] = [readJob(job, { load }), readJob(own)];
    expect(before.ok && after.ok && after.job).toEqual(before.ok && before.job);
  });

  test("stays a reference when the sheet cannot be had", () => expect(withOwnLift(job, () => undefined)).toBe(job));

  test.each(["", "a: [", "lift: 3\n", "- 1\n"])("a sheet %j gives no lift", (sheet) =>
    expect(putLift(job, sheet)).toBeUndefined(),
  );
});

describe("putting plain data at a path", () => {
  test("a place on one line, groups made on the way, comments kept", () => {
    const text = setPlain("# kept\ntitle: A\n", "columns.left", ["32 in", "20 ft"]);
    expect(text).toBe("# kept\ntitle: A\ncolumns:\n  left: [ 32 in, 20 ft ]\n");
    expect(setPlain(text, "columns.left", ["33 in", "20 ft"])).toContain("33 in");
  });
  test("undefined takes an entry out of its list", () =>
    expect(setPlain("a:\n  - b\n  - c\n", "a[0]", undefined)).toBe("a:\n  - c\n"));
  test.each([
    ["a[0].b", "a: 3\n"],
    ["x[2]", "a: 3\n"],
    ["a", "a: [\n"],
  ])("no room at %s: the text stays", (path, text) => expect(setPlain(text, path, "1")).toBe(text));
  test("the tree is as written", () =>
    expect(writtenTree("a: 0x1F\nb: { value: 4 1/2 in }\nc: [true, 'x']\nd:\n")).toEqual({
      a: "0x1F",
      b: { value: "4 1/2 in" },
      c: ["true", "x"],
      d: undefined,
    }));
});
