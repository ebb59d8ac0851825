/**
 * Quantities against printed figures: bag yields and the trade's bags per cubic yard; a contractor's exam question;
 * Concrete Construction, "New numbering system explained" (welded wire) and "Rebar size and weights" (ASTM bars), and an
 * answer on yield; NRMCA CIP 8; UFC 3-320-02A par. 7a. Tolerance = half the last printed digit unless said.
 */

import {
  type BarSize,
  bagsFor,
  bagYield,
  barArea,
  barDiameter,
  barPerimeter,
  barWeight,
  concreteOrder,
  dragSteel,
  excessShare,
  jointlessSteel,
  steelDepth,
  wirePerWidth,
  wireWeight,
} from "@floorworthy/engine/orders";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const near = (value: number, printed: number, half: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(half * 1.0001);
const box = (L: number, b: number, t: number) => toBase(L * b * t, "ft³");

describe("bags", () => {
  test.each([
    [80, 0.6, 45],
    [60, 0.45, 60],
    [40, 0.3, 90],
  ])("%s lb makes %s ft³: %s bags per yd³", (lb, ft3, bags) => {
    const made = bagYield(toBase(lb, "lb"));
    expect(fromBase(made, "ft³")).toBeCloseTo(ft3, 9);
    expect(bagsFor(toBase(1, "yd³"), made)).toBe(bags);
  });
  test("50 lb 0.375 ft³, 90 lb 0.68 ft³", () => {
    expect(fromBase(bagYield(toBase(50, "lb")), "ft³")).toBeCloseTo(0.375, 9);
    near(fromBase(bagYield(toBase(90, "lb")), "ft³"), 0.68, 0.0051);
  });
});

describe("orders", () => {
  const sold = { waste: 0.08, step: 0, load: toBase(10, "yd³"), unit: "yd³" as const };
  test("120 × 80 × 2 ft: 711.11 yd³ net, 768.0 with 8 %", () => {
    const order = concreteOrder(box(120, 80, 2), sold);
    near(order.net.value, 711.11, 0.005);
    near(order.ordered.value, 768, 0.05);
    expect(order.loads.value).toBe(77);
  });
  test("footing 48 × 1.33 × 0.66 ft: 42.13 ft³, 1.56 yd³", () => {
    near(fromBase(box(48, 1.33, 0.66), "ft³"), 42.13, 0.006);
    near(concreteOrder(box(48, 1.33, 0.66), sold).net.value, 1.56, 0.005);
  });
  test("1/4 yd³ lost of 9 is 2.8 %; 32 ft³ for 31.25 is 2.4 %; 1/8 in of 4 in is 3 %", () => {
    near(100 * (0.25 / 9), 2.8, 0.05);
    near(100 * excessShare(31.25, 32), 2.4, 0.05);
    near(100 * excessShare(4, 4.125), 3, 0.15);
  });
});

describe("welded wire, in²/ft", () => {
  test.each([
    [6, 1.4, 0.028],
    [6, 2, 0.04],
    [6, 2.9, 0.058],
    [6, 4, 0.08],
    [6, 5.5, 0.11],
    [4, 1.4, 0.042],
    [4, 2, 0.06],
    [4, 2.9, 0.087],
    [4, 4, 0.12],
  ])("%s in, W%s: %s", (spacing, W, printed) =>
    near(fromBase(wirePerWidth(W, toBase(spacing, "in")) * toBase(1, "ft"), "in²"), printed, 0.0005),
  );
});

describe("welded wire, lb per 100 ft², within the 1 lb by which the table rounds", () => {
  test.each([
    [6, 2, 29],
    [6, 2.9, 42],
    [6, 4, 58],
    [6, 5.5, 80],
    [4, 2, 43],
    [4, 2.9, 62],
    [4, 4, 85],
  ])("%s in, W%s: %s", (spacing, W, printed) =>
    near(fromBase(wireWeight(W, toBase(spacing, "in")), "psf") * 100, printed, 1),
  );
  test("footnotes: in²/ft × 2117 = mm²/m; lb/100 ft² × 4.883 = kg/100 m²", () => {
    near((toBase(1, "in²") / toBase(1, "ft")) * 1000, 2117, 0.6);
    near((fromBase(toBase(1, "psf"), "MPa") / 9.80665) * 1e6, 4.883, 0.001);
  });
});

describe("bars: in², lb/ft, in", () => {
  test.each([
    ["#3", 0.11, 0.376, 1.178],
    ["#4", 0.2, 0.668, 1.571],
    ["#5", 0.31, 1.043, 1.963],
    ["#6", 0.44, 1.502, 2.356],
    ["#7", 0.6, 2.044, 2.749],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: as the table prints it
    ["#8", 0.79, 2.67, 3.142],
    ["#9", 1, 3.4, 3.544],
    ["#10", 1.27, 4.303, 3.99],
    ["#11", 1.56, 5.313, 4.43],
  ] as const)("%s: %s, %s, %s", (size: BarSize, area, weight, perimeter) => {
    near(fromBase(barArea(size), "in²"), area, 1e-9);
    near(fromBase(barWeight(size), "lb/ft"), weight, 1e-9);
    near(fromBase(barPerimeter(size), "in"), perimeter, 0.001);
    // the table against πd²/4 and 3.4 lb/ft per in² of that
    const round = (Math.PI * fromBase(barDiameter(size), "in") ** 2) / 4;
    near(round, area, 0.0052);
    if (size !== "#10" && size !== "#11") near(3.4 * round, weight, 0.006); // their tabulated weights round the diameter
  });
});

describe("crack steel", () => {
  test("0.5 % of a 6-in slab: 0.36 in²/ft", () => near(jointlessSteel(toBase(6, "in")).value, 0.36, 0.001));
  test("depth t/4 between 38 and 64 mm", () => {
    near(steelDepth(toBase(4, "in")), 38, 0.5);
    near(steelDepth(toBase(12, "in")), 64, 0.6);
    near(steelDepth(toBase(8, "in")), 50.8, 1e-9);
  });
  test("drag over 20 ft of a 4-in slab, 150 pcf, F 1.5, 40 ksi: 1.5 × 20 × 50 / 80,000 = 0.01875 in²/ft (by hand)", () =>
    near(
      dragSteel(1.5, toBase(20, "ft"), toBase(4, "in"), toBase(150, "pcf"), toBase(40, "ksi")).value,
      0.01875,
      1e-9,
    ));
});
