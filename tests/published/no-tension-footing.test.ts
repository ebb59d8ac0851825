/** Rigid bases on ground that only pushes, without anchors: the contact solution's special case. */
import { effectiveArea, solveContact } from "@floorworthy/engine/contact";
import type { Polygon } from "@floorworthy/engine/geometry";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

const rectangle = (B: number, L: number): Polygon => [
  { x: -B / 2, y: -L / 2 },
  { x: B / 2, y: -L / 2 },
  { x: B / 2, y: L / 2 },
  { x: -B / 2, y: L / 2 },
];

const rest = (outline: Polygon, P: number, Mx: number, My: number) =>
  able(solveContact({ outline, anchors: [], bedding: 1 }, { P, Mx, My, Vx: 0, Vy: 0 }));

describe("McCormac & Brown, Design of Reinforced Concrete, 9th ed. (ACI 318-11), Example 12.8 (P = 30 k/ft, M = 39 ft-k/ft)", () => {
  const pressures = (width: number) => {
    const { pressure } = rest(rectangle(width, 1), 30, 0, 39);
    return { max: pressure.p0 + (pressure.px * width) / 2, min: pressure.p0 - (pressure.px * width) / 2 };
  };
  // ksf; the 9 ft row's 6.22 and 0.44 are 6.2222 and 0.4444
  test.each([
    [9, 6.22, 0.44],
    [14, 3.34, 0.95],
  ])("%d ft wide: %d and %d ksf, to print", (width, max, min) => {
    expect(Math.abs(pressures(width).max - max)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(pressures(width).min - min)).toBeLessThanOrEqual(0.005);
  });
});

/**
 * The problem of W. C. Teng (Foundation Design, 1962) and of G. Özmen (2011), J. Bellos & N. Bakas (2017).
 * Reference values derived by an independent exact solution, confirmed by a 600 × 600 fibre model.
 */
describe("two-way eccentricity on the unit square, no tension", () => {
  test.each([
    [0.1, 0.1, 2.2045336386442207, 0.985321738615371],
    [0.2, 0.1, 2.993344069463448, 0.8373789369105379],
    [0.2, 0.2, 4.137286107350887, 0.6884612672707996],
    [0.25, 0.25, 6, 0.5],
    [0.3, 0.3, 9.374999999999996, 0.32],
    [0.3, 0.1, 4.492055434643124, 0.5650159907624395],
    [0.3, 0, 10 / 3, 0.6],
    [0.35, 0.05, 5.154266769168049, 0.4432998683435464],
  ])("e = (%d, %d): q·BL/P %d on %d of the area, within 1e-5", (ex, ey, q, share) => {
    const found = rest(rectangle(1, 1), 1, ey, ex);
    expect(Math.abs(found.maxPressure / q - 1)).toBeLessThanOrEqual(1e-5);
    expect(Math.abs(found.contactArea / share - 1)).toBeLessThanOrEqual(1e-5);
  });

  test.each([
    [0.25, 0.25],
    [0.3, 0.3],
    [0.3, 0.4],
    [0.45, 0.28],
  ])("corner triangle at (%d, %d): q = 3P/(8 dx dy), derived by hand", (ex, ey) => {
    const found = rest(rectangle(1, 1), 1, ey, ex);
    expect(found.maxPressure / (3 / (8 * (0.5 - ex) * (0.5 - ey)))).toBeCloseTo(1, 9);
    expect(found.contactArea / (8 * (0.5 - ex) * (0.5 - ey))).toBeCloseTo(1, 9);
  });

  test("one-way outside the kern: q = 2P/(3ab), the textbook triangle", () => {
    for (const ex of [0.2, 0.3, 0.4, 0.45])
      expect(rest(rectangle(1, 1), 1, 0, ex).maxPressure).toBeCloseTo(2 / (3 * (0.5 - ex)), 9);
  });
});

/**
 * B. M. Das, Principles of Foundation Engineering, two-way eccentricity after Highter & Anders (1985): B = L = 1.5 m,
 * eL = 0.3 m, eB = 0.15 m. From memory; reproduces by calculation. Exact from the two centroid equations: L1 = 6/7 L, L2 = L1/4.
 */
describe("effective area, uniform contact", () => {
  const found = able(effectiveArea(rectangle(1.5, 1.5), { x: 0.15, y: 0.3 }));
  test("A' 1.205357142375 m², within 1e-6", () =>
    expect(Math.abs(found.area / 1.205357142375 - 1)).toBeLessThanOrEqual(1e-6));
  test("A' 1.193 m² by the chart, which reads L1/L 0.85 and L2/L 0.21 (1 % and 2.5 %)", () => {
    const ends = found.outline.filter((p) => Math.abs(p.y) < 0.7499).map((p) => [p.x, p.y]);
    const lengths = ends.map(([, y]) => (0.75 - y!) / 1.5).sort((a, b) => b - a);
    expect(Math.abs(lengths[0]! / 0.85 - 1)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(lengths[1]! / 0.21 - 1)).toBeLessThanOrEqual(0.025);
  });
  test("one eccentricity: (B − 2e) L, Meyerhof 1953", () => {
    const strip = able(effectiveArea(rectangle(2, 3), { x: 0.3, y: 0 }));
    expect(strip.area).toBeCloseTo((2 - 0.6) * 3, 9);
  });
});
