/** Seeded numbers, Latin hypercubes and Sobol points: determinism, balance and their textbook properties. */
import { createGenerator, latinHypercube, sobolDimensions, sobolPoints } from "@floorworthy/engine/numerics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

describe("seeded generator", () => {
  test("the same seed gives the same numbers, another seed others", () => {
    const draw = (seed: number): number[] => Array.from({ length: 50 }, createGenerator(seed));
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
    expect(draw(2 ** 40)).not.toEqual(draw(0));
  });
  test("kept bits (regression only): a change here would change every stored result", () => {
    const next = createGenerator(1);
    expect([next(), next(), next()].map((u) => Math.floor(u * 2 ** 32))).toEqual([3098314226, 4287568898, 2024100432]);
  });
  test("mean 1/2, variance 1/12, no correlation with the next number, within five standard errors", () => {
    const n = 200_000;
    const next = createGenerator(99);
    let [sum, squares, products, last] = [0, 0, 0, 0.5];
    for (let i = 0; i < n; i++) {
      const u = next() - 0.5;
      sum += u;
      squares += u * u;
      products += u * (last - 0.5);
      last = u + 0.5;
    }
    expect(Math.abs(sum / n)).toBeLessThan(5 / Math.sqrt(12 * n));
    expect(Math.abs(squares / n - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / n));
    expect(Math.abs(products / n)).toBeLessThan(5 / 12 / Math.sqrt(n));
  });
});

describe("Latin hypercube", () => {
  test("each slice of each dimension holds exactly one point", () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 6 }), fc.integer(), (n, d, seed) => {
        const points = latinHypercube(n, d, createGenerator(seed));
        for (let k = 0; k < d; k++)
          expect(points.map((p) => Math.floor(p[k]! * n)).sort((a, b) => a - b)).toEqual(
            Array.from({ length: n }, (_, i) => i),
          );
      }),
    ));
});

describe("Sobol points (Joe & Kuo 2008)", () => {
  test("the first eight points of dimensions 1 to 3, known in closed form", () => {
    expect(sobolPoints(8, 3).map((p) => [...p])).toEqual([
      [0, 0, 0],
      [0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25],
      [0.25, 0.75, 0.75],
      [0.375, 0.375, 0.625],
      [0.875, 0.875, 0.125],
      [0.625, 0.125, 0.875],
      [0.125, 0.625, 0.375],
    ]);
  });
  test("every dimension, shifted or not: of 2^m points each of the 2^m slices holds one", () => {
    const next = createGenerator(3);
    for (const shift of [undefined, Array.from({ length: sobolDimensions }, next)]) {
      const points = sobolPoints(256, sobolDimensions, shift);
      for (let k = 0; k < sobolDimensions; k++)
        expect(new Set(points.map((p) => Math.floor(p[k]! * 256))).size).toBe(256);
    }
  });
  test("beats random numbers on a smooth ten-dimensional mean", () => {
    const f = (p: Float64Array): number => p.reduce((product, x) => product * (1 + (x - 0.5) * 0.8), 1);
    const error = Math.abs(sobolPoints(4096, 10).reduce((sum, p) => sum + f(p), 0) / 4096 - 1);
    expect(error).toBeLessThan(0.002);
  });
  test("more dimensions than direction numbers is a bug, named", () => {
    expect(() => sobolPoints(4, 22)).toThrow("dimensions = 22");
  });
});
