import { readJob } from "@floorworthy/job";
import { putInList } from "@floorworthy/job/editing";
import { writtenTree } from "@floorworthy/job/listing";
import { describe, expect, test } from "vitest";

const base = `# kept
floorworthy: 1
title: a round
visits:
  - date: 2024-05-01 # the first
    who: A
    readings:
      - { anchor: L1, found: 80 lb-ft, turned: 5 deg }
  - { date: 2025-05-01, readings: [{ anchor: L1, found: 90 lb-ft }] }
`;
const visits = (text: string) => (writtenTree(text) as { visits: readonly Record<string, unknown>[] }).visits;

describe("an entry put into a list by its name", () => {
  test("of a new day is added, days in their order", () => {
    const text = putInList(base, "visits", { date: "2024-11-01", readings: [] }, ["date"])!;
    expect(visits(text).map(({ date }) => date)).toEqual(["2024-05-01", "2024-11-01", "2025-05-01"]);
    expect(text).toContain("# kept");
    expect(text).toContain("# the first");
  });

  test("of a day that is there joins it: same anchors are written over, others added, the rest stays", () => {
    const entry = {
      date: "2024-05-01",
      wrench: "W2",
      readings: [
        { anchor: "l1", found: "85 lb-ft" },
        { anchor: "R1", found: "70 lb-ft" },
      ],
    };
    const text = putInList(base, "visits", entry, ["date", "anchor"])!;
    expect(visits(text)[0]).toEqual({
      date: "2024-05-01",
      who: "A",
      wrench: "W2",
      readings: [
        { anchor: "L1", found: "85 lb-ft", turned: "5 deg" },
        { anchor: "R1", found: "70 lb-ft" },
      ],
    });
    expect(putInList(text, "visits", entry, ["date", "anchor"])).toBe(text);
  });

  test("can be named by its place", () => {
    const text =
      "floorworthy: 1\ntitle: a\nlift: { name: b, kind: two-post }\nfloor:\n  readings:\n    - { at: [44 in, 10 ft], thickness: 5 in }\n";
    const again = putInList(text, "floor.readings", { at: ["44 in", "10 ft"], thickness: "5 1/8 in" }, ["at"])!;
    const reading = readJob(again);
    expect(
      reading.ok && reading.job.floor.readings.map(({ thickness }) => thickness.known && thickness.written),
    ).toEqual(["5 1/8 in"]);
  });

  test("a missing list is made", () =>
    expect(putInList("title: a\n", "installation.holes", { anchor: "L1" }, ["anchor"])).toBe(
      "title: a\ninstallation:\n  holes:\n    - anchor: L1\n",
    ));

  test.each([
    ["title", base],
    ["visits..x", base],
    ["visits", "a: [1"],
  ])("refuses %s", (path, text) => expect(putInList(text, path, { date: "b" }, ["date"])).toBeUndefined());
});
