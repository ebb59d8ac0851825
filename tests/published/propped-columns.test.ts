/**
 * Columns held at the head.
 * - W. C. Young, R. G. Budynas & A. Sadegh, Roark's Formulas for Stress and Strain, 8th ed., Table 8.1 case 3c (couple; one
 *   end fixed, the other simply supported). Roark measures a from the supported end; the rows here from the fixed base.
 *   Values derived by an independent calculation, confirmed by a second method; within 1e-6.
 * - AISC Steel Construction Manual Table 3-23 case 14 (point load), quoted by a document that was read.
 */
import {
  baseMomentByHeight,
  baseReactions,
  type ColumnFrame,
  type LiftLoad,
  strutForce,
} from "@floorworthy/engine/frames";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

const tied = (tieHeight: number): ColumnFrame => ({
  top: "overhead-tied",
  spacing: 120,
  tieHeight,
  columnWeight: 0,
  reach: 1,
  baseStiffness: "rigid",
});

describe("couple on a propped cantilever", () => {
  test.each([
    [0.25, 0.65625, 0.34375],
    [0.5, 1.125, -0.125],
    [0.75, 1.40625, -0.40625],
    [1, 1.5, -0.5],
  ])("a/L = %d: prop R L/M0 %d, base M/M0 %d", (a, prop, base) => {
    // reach 1 and a weight of 2 bring a couple of 1 to each column
    const load: LiftLoad = { weight: 2, dynamicFactor: 1, leftShare: 0.5, foreAft: 0, carriageHeight: a * 100 };
    const found = able(baseReactions(tied(100), load));
    expect(Math.abs((found.strutForce * 100) / prop - 1)).toBeLessThanOrEqual(1e-6);
    expect(Math.abs(found.left.inwardMoment / base - 1)).toBeLessThanOrEqual(1e-6);
    expect(found.left.inwardShear).toBeCloseTo(-found.strutForce, 12);
  });

  test("the base moment vanishes at a/L = 1 − 1/√3 = 0.42265", () => {
    const load: LiftLoad = { weight: 2, dynamicFactor: 1, leftShare: 0.5, foreAft: 0, carriageHeight: 0 };
    const heights = Array.from({ length: 11 }, (_, i) => 10 * i);
    const [at] = able(baseMomentByHeight(tied(100), load, heights)).signChanges.left;
    expect(Math.abs(at! / 100 / 0.42264973081037416 - 1)).toBeLessThanOrEqual(1e-6);
  });

  test("M0 = 60 kip-in at 48 in of 140 in: R 0.36525, base 8.8653, above −33.603, below 26.397", () => {
    const action = { couple: 60, force: 0 };
    const R = able(strutForce(tied(140), 48, action, action));
    const base = 60 - R * 140;
    for (const [value, printed] of [
      [R, 0.3652478134110787],
      [base, 8.865306122448985],
      [base + R * 48 - 60, -33.60279883381924],
      [base + R * 48, 26.397201166180757],
    ] as const) {
      expect(Math.abs(value / printed - 1)).toBeLessThanOrEqual(1e-6);
    }
  });
});

test("point load at mid-height of a propped cantilever: prop 0.3125 P, base 0.1875 P L", () => {
  const action = { couple: 0, force: 1 };
  const R = able(strutForce(tied(100), 50, action, action));
  expect(Math.abs(R - 0.3125)).toBeLessThanOrEqual(0.00005);
  expect(Math.abs((50 - R * 100) / 100 - 0.1875)).toBeLessThanOrEqual(0.00005);
});
