import { incompleteGamma } from "./incomplete-gamma.ts";
import { normalQuantile } from "./normal.ts";
import { findRoot } from "./root.ts";

/** Probability that a chi-square value with `freedom` degrees is at most x. Abramowitz & Stegun 26.4.19. */
export const chiSquareCdf = (x: number, freedom: number): number => incompleteGamma(freedom / 2, x / 2).lower;

/** Probability that it exceeds x, accurate when small. */
export const chiSquareUpperTail = (x: number, freedom: number): number => incompleteGamma(freedom / 2, x / 2).upper;

/** The value not exceeded with probability p, 0 <= p < 1. Bracketed around Wilson and Hilferty's cube (A&S 26.4.17). */
export const chiSquareQuantile = (p: number, freedom: number): number => {
  if (p <= 0) return 0;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  const w = 2 / (9 * freedom);
  const guess = freedom * Math.max(1e-3, 1 - w + normalQuantile(p) * Math.sqrt(w)) ** 3;
  const gap = (x: number): number => (p < 0.5 ? chiSquareCdf(x, freedom) - p : 1 - p - chiSquareUpperTail(x, freedom));
  let [low, high] = [guess / 2, guess * 2];
  while (gap(low) > 0) low /= 4;
  while (gap(high) < 0) high *= 2;
  return findRoot(gap, low, high, 1e-14, 200);
};
