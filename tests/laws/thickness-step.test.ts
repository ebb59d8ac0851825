/** Two levels under one base are found and never averaged; how often the finder is wrong is measured. */
import { createGenerator, type Generator, normalQuantile } from "@floorworthy/engine/numerics";
import { findThicknessStep, type PlacedValue } from "@floorworthy/engine/statistics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const inch = 25.4;
const normal = (next: Generator): number => normalQuantile((Math.floor(next() * 2 ** 32) + 0.5) / 2 ** 32);
const corners = [
  { x: 0, y: 0 },
  { x: 450, y: 0 },
  { x: 450, y: 450 },
  { x: 0, y: 450 },
];
const base = (inches: readonly number[]): PlacedValue[] => corners.map((c, i) => ({ ...c, value: inches[i]! * inch }));

describe("two levels under a base", () => {
  test("footing under two corners: 12 in and 4 in", () => {
    const found = findThicknessStep(base([12, 4.1, 3.9, 12.2]), 0.5 * inch);
    expect(found).toMatchObject({ kind: "step", low: [2, 1], high: [0, 3] });
    if (found.kind === "step") expect(found.difference / inch).toBeCloseTo(8.1, 9);
  });
  test("ordinary scatter is one level", () => {
    expect(findThicknessStep(base([3.9, 3.6, 4.1, 3.7]), 0.5 * inch).kind).toBe("one-level");
    expect(findThicknessStep(base([5.4, 5.6, 5.5, 5.7]), 0.5 * inch).kind).toBe("one-level");
  });
  test("two levels that no line parts are mixed, and still not averaged", () =>
    expect(findThicknessStep(base([6, 4, 6, 4]), 0.5 * inch).kind).toBe("mixed"));
  test("none and one reading are one level", () => {
    expect(findThicknessStep([], 10).kind).toBe("one-level");
    expect(findThicknessStep([{ x: 0, y: 0, value: 100 }], 10).kind).toBe("one-level");
  });
});

describe("error rates, 2,000 bases of four holes", () => {
  const rate = (spread: number, step: number): number => {
    const next = createGenerator(31);
    let found = 0;
    for (let i = 0; i < 2000; i++) {
      const inches = [0, 0, step, step].map((add) => 4 + add + spread * normal(next));
      if (findThicknessStep(base(inches), 0.5 * inch).kind !== "one-level") found++;
    }
    return found / 2000;
  };
  test("no step, spread 0.2 in: a false alarm in fewer than 3 %", () => expect(rate(0.2, 0)).toBeLessThan(0.03));
  test("step of 2 in, spread 0.2 in: found in more than 99 %", () => expect(rate(0.2, 2)).toBeGreaterThan(0.99));
});

test("the finding does not depend on the order of the readings or on where the plan begins", () =>
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          x: fc.integer({ min: 0, max: 500 }),
          y: fc.integer({ min: 0, max: 500 }),
          value: fc.integer({ min: 80, max: 200 }),
        }),
        { minLength: 2, maxLength: 9 },
      ),
      (readings) => {
        const one = findThicknessStep(readings, 12.7);
        const two = findThicknessStep(readings.map((r) => ({ ...r, x: r.x + 1000 })).reverse(), 12.7);
        if (one.kind === "one-level" || two.kind === "one-level") expect(two.kind).toBe(one.kind);
        else expect([two.gap, two.difference]).toEqual([one.gap, expect.closeTo(one.difference, 9)]);
      },
    ),
  ));
