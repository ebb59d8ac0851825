/**
 * The numerical pieces under the plate, against a general-purpose library (mathjs, dense LU) and printed Gauss points:
 * Abramowitz M. & Stegun I.A., Handbook of Mathematical Functions, Table 25.4 (on -1..1; from memory).
 */
import {
  bandIndex,
  bandMatrix,
  copyBand,
  findRoot,
  gaussRule,
  multiplyBand,
  plainBandKernel,
} from "@floorworthy/engine/numerics";
import fc from "fast-check";
import { lusolve } from "mathjs";
import { describe, expect, test } from "vitest";

const random = (order: number, half: number, seed: number) => {
  const matrix = bandMatrix(order, half);
  const full = Array.from({ length: order }, () => new Array<number>(order).fill(0));
  for (let i = 0; i < order; i++)
    for (let j = Math.max(0, i - half); j <= i; j++) {
      const value = i === j ? 2 * half + 1 : Math.sin(seed + 12.9 * i + 78.2 * j);
      matrix.values[bandIndex(matrix, i, j)] = value;
      full[i]![j] = value;
      full[j]![i] = value;
    }
  return { matrix, full };
};

describe("band Cholesky", () => {
  test("solves what a dense LU solves, for any order and half-band", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 17 }),
        fc.integer({ min: 0, max: 1000 }),
        (order, half, seed) => {
          const { matrix, full } = random(order, half, seed);
          const right = Array.from({ length: order }, (_, i) => Math.cos(seed * i));
          const expected = (lusolve(full, right) as number[][]).map((row) => row[0]!);
          const factor = plainBandKernel.factor(copyBand(matrix));
          if (factor.kind !== "factor") throw new Error("a dominant diagonal is positive definite");
          const x = Float64Array.from(right);
          plainBandKernel.solve(factor, x);
          for (let i = 0; i < order; i++) expect(Math.abs(x[i]! - expected[i]!)).toBeLessThan(1e-10);
          const back = multiplyBand(matrix, x);
          for (let i = 0; i < order; i++) expect(Math.abs(back[i]! - right[i]!)).toBeLessThan(1e-10);
        },
      ),
      { numRuns: 60, seed: 3 },
    );
  });
  test("names the row that has no stiffness", () => {
    const { matrix } = random(10, 3, 1);
    for (let j = 4; j <= 7; j++) matrix.values[bandIndex(matrix, 7, j)] = 0;
    for (let i = 8; i < 10; i++) matrix.values[bandIndex(matrix, i, 7)] = 0;
    expect(plainBandKernel.factor(matrix)).toEqual({ kind: "not-positive", row: 7 });
  });
});

describe("Gauss rules", () => {
  test.each([
    [2, 0.577350269189626, 1],
    [3, 0.774596669241483, 0.555555555555556],
    [4, 0.861136311594053, 0.347854845137454],
    [5, 0.906179845938664, 0.236926885056189],
  ])("n = %d: outermost point %d, weight %d", (n, point, weight) => {
    const rule = gaussRule(n);
    expect(2 * rule.points[n - 1]! - 1).toBeCloseTo(point, 14);
    expect(2 * rule.weights[0]!).toBeCloseTo(weight, 14);
  });
  test("n points integrate degree 2n - 1 exactly and no higher", () => {
    for (let n = 1; n <= 8; n++) {
      const { points, weights } = gaussRule(n);
      const integral = (degree: number): number => points.reduce((sum, x, i) => sum + weights[i]! * x ** degree, 0);
      for (let degree = 0; degree < 2 * n; degree++) expect(integral(degree)).toBeCloseTo(1 / (degree + 1), 13);
      expect(Math.abs(integral(2 * n) - 1 / (2 * n + 1))).toBeGreaterThan(1e-12);
    }
  });
});

test("a root keeps its bracket: cos x = x at 0.7390851332151607, and a kink does not stop it", () => {
  expect(findRoot((x) => Math.cos(x) - x, 0, 1)).toBeCloseTo(0.7390851332151607, 11);
  expect(findRoot((x) => (x < 0.3 ? x - 0.3 : 1000 * (x - 0.3)), 0, 1)).toBeCloseTo(0.3, 9);
});
