import { readFileSync } from "node:fs";
import { readJob } from "@floorworthy/job";
import { writtenTree } from "@floorworthy/job/listing";
import { describe, expect, test } from "vitest";
import { writtenIn } from "../../apps/web/src/form/written-in.ts";
import { stepsDone } from "../../apps/web/src/job/first-steps/steps-done.ts";
import { firstJob } from "../../apps/web/src/jobs/first-job.ts";
import { freest } from "../../apps/web/src/pictures/freest.ts";
import { inTheMiddle } from "../../apps/web/src/plan/hand/in-the-middle.ts";
import { askedBy } from "../../apps/web/src/plan/hand/thing-keys.ts";
import { inUsualUnit, usualUnit } from "../../apps/web/src/quantities/shown.ts";
import { lowered } from "../../apps/web/src/quantities/symbol.tsx";

describe("a new job", () => {
  const text = firstJob("2026-03-01");

  test("has none of its three steps done", () =>
    expect(stepsDone(writtenTree(text))).toEqual({ lift: false, floor: false, place: false }));

  test("stands in the middle of a bay that is drawn for it", () => {
    const stood = inTheMiddle(text, writtenTree(text), 3200, "inch-pound");
    expect(stepsDone(writtenTree(stood)).place).toBe(true);
    const reading = readJob(stood);
    expect(
      reading.ok && reading.job.position && (reading.job.position.left.x + reading.job.position.right.x) / 2,
    ).toBeCloseTo(12 * 304.8, 0);
  });

  test("a known bay is left as it is", () => {
    const bay = text.replace("bay: {}", "bay:\n  outline: {width: 20 ft, depth: 30 ft}");
    const stood = inTheMiddle(bay, writtenTree(bay), 3200, "inch-pound");
    expect(stood).toMatch(/outline: \{ ?width: 20 ft, depth: 30 ft ?\}/);
    const reading = readJob(stood);
    expect(reading.ok && reading.job.position?.left.y).toBeCloseTo(15 * 304.8, 0);
  });

  test("every demo job but the one nobody measured has all three", () => {
    const read = (name: string) =>
      stepsDone(writtenTree(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8")));
    expect(read("saw-cut-in-the-way")).toEqual({ lift: true, floor: true, place: true });
  });
});

describe("how much is written", () => {
  test.each([
    ["a: 4 in", 1],
    ["a: unknown", 0],
    ["a: {value: 4 in, basis: measured}", 1],
    ["a: {b: 1 in, c: unknown, d: {e: 2 in}}", 2],
    ["a: [1 in, 2 in, 3 in]", 3],
    ["b: 4 in", 0],
  ])("%s: %i", (file, count) => {
    const tree = writtenTree(file);
    expect(
      writtenIn(typeof tree === "object" && !Array.isArray(tree) ? (tree as Record<string, never>).a : undefined),
    ).toBe(count);
  });
});

describe("symbols", () => {
  test.each([
    ["t_min", ["t", "low min"]],
    ["f_r/σ", ["f", "low r", "/σ"]],
    ["1/U", ["1/U"]],
    ["φ V_n / 1.6", ["φ V", "low n", " / 1.6"]],
  ])("%s", (written, pieces) =>
    expect(lowered(written).map(({ text, set }) => (set === "low" ? `low ${text}` : text))).toEqual(pieces),
  );
});

describe("scales", () => {
  test("values come in the usual unit of either system", () => {
    expect(usualUnit("N·mm", "si")).toBe("kN·m");
    expect(inUsualUnit(2.54e6, "N·mm", "si")).toBeCloseTo(2.54, 9);
    expect(inUsualUnit(254, "mm", "inch-pound")).toBeCloseTo(10, 9);
    expect(inUsualUnit(10, "in", "inch-pound")).toBeCloseTo(10, 9);
  });

  test("words stand where no curve runs", () => {
    const places = [
      { x: 100, y: 50, textAnchor: "end" as const },
      { x: 10, y: 50, textAnchor: "start" as const },
    ];
    expect(freest(places, "limit", [{ x: 90, y: 46 }])).toBe(places[1]);
    expect(freest(places, "limit", [])).toBe(places[0]);
  });
});

describe("keys on the plan", () => {
  const press = (key: string, shiftKey = false) => ({ key, shiftKey });
  test("arrow keys go by an inch, with Shift by a foot; by a centimetre and a decimetre in SI", () => {
    expect(askedBy(press("ArrowRight"), "inch-pound")).toEqual({ do: "move", by: { x: 25.4, y: 0 } });
    expect(askedBy(press("ArrowUp", true), "inch-pound")).toEqual({ do: "move", by: { x: 0, y: -12 * 25.4 } });
    expect(askedBy(press("ArrowDown", true), "si")).toEqual({ do: "move", by: { x: 0, y: 100 } });
  });
  test("other keys say what they ask, most ask nothing", () => {
    expect(askedBy(press("T", true), "si")).toEqual({ do: "turn" });
    expect(askedBy(press("Delete"), "si")).toEqual({ do: "remove" });
    expect(askedBy(press("q"), "si")).toBeUndefined();
  });
});
