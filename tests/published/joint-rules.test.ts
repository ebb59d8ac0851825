/**
 * Joint spacing and depth. C. Beall, Masonry and Concrete for Residential Construction, Fig. 2-15 (24, 30, 36 times the
 * thickness, printed to the foot); ACI 302.1R-96 as quoted in a ready-mix answer; Illinois ready-mixed pavement profile (30
 * times, rounded down to the foot); NRMCA CIP 6 (depth t/4, 1 in for 4 in); UFC 3-260-02 Table 12-7 (12.5-15 ft under 9 in).
 */

import { jointSpacing, sawDepth } from "@floorworthy/engine/joints";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const feet = (inches: number, multiple: number) =>
  fromBase(jointSpacing(toBase(inches, "in"), multiple, toBase(18, "ft")).value, "ft");

describe("Beall Fig. 2-15: spacing in ft", () => {
  test.each([
    [4, 24, 8],
    [4, 30, 10],
    [4, 36, 12],
    [5, 24, 10],
    [5, 30, 13],
    [5, 36, 15],
    [6, 24, 12],
    [6, 30, 15],
    [6, 36, 18],
  ])("%s in, %s t: %s", (inches, n, printed) =>
    expect(Math.abs(feet(inches, n) - printed)).toBeLessThanOrEqual(0.5001),
  );
});

test("ACI 302.1R: 4 in 8 to 12 ft, 6 in 18 ft, and never more than 18 ft", () => {
  expect([feet(4, 24), feet(4, 36), feet(6, 36), feet(8, 36)]).toEqual(
    [8, 12, 18, 18].map((v) => expect.closeTo(v, 9)),
  );
});

test("state profile: 10, 12, 15 ft for 4, 5, 6 in (30 t rounded down)", () =>
  expect([4, 5, 6].map((t) => Math.floor(feet(t, 30) + 1e-9))).toEqual([10, 12, 15]));

test("UFC 3-260-02 band 12.5-15 ft holds 30 t of 5 and 6 in", () =>
  expect([feet(5, 30), feet(6, 30)]).toEqual([expect.closeTo(12.5, 9), expect.closeTo(15, 9)]));

test("the default cap is 15 ft", () =>
  expect(fromBase(jointSpacing(toBase(8, "in"), 36).value, "ft")).toBeCloseTo(15, 9));

test("depth: 1 in for 4 in, t/4 above, 1 in early-entry whatever the thickness to 9 in", () => {
  const inches = (t: number, kind: "wet" | "early") => fromBase(sawDepth(toBase(t, "in"), kind).value, "in");
  expect(inches(4, "wet")).toBeCloseTo(1, 9);
  expect(inches(3.5, "wet")).toBeCloseTo(1, 9);
  expect(inches(6, "wet")).toBeCloseTo(1.5, 9);
  expect(inches(6, "early")).toBeCloseTo(1, 9);
  expect(inches(10, "early")).toBeCloseTo(2.5, 9);
});
