import { incompleteGamma } from "./incomplete-gamma.ts";
import { findRoot } from "./root.ts";

/** Probability that a chi-square value with `freedom` degrees is at most x. Abramowitz & Stegun 26.4.19. */
export const chiSquareCdf = (x: number, freedom: number): number => incompleteGamma(freedom / 2, x / 2).lower;

/** Probability that it exceeds x, accurate when small. */
export const chiSquareUpperTail = (x: number, freedom: number): number => incompleteGamma(freedom / 2, x / 2).upper;

/** The value not exceeded with probability p, 0 <= p < 1; the root is sought in the logarithm of the smaller tail. */
export const chiSquareQuantile = (p: number, freedom: number): number => {
  if (p <= 0) return 0;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  const gap = (y: number): number =>
    p < 0.5
      ? Math.log(chiSquareCdf(Math.exp(y), freedom) / p)
      : Math.log((1 - p) / chiSquareUpperTail(Math.exp(y), freedom));
  const reach = Math.min(1, 4 * Math.sqrt(2 / freedom));
  let [low, high] = [Math.log(freedom) - reach, Math.log(freedom) + reach];
  while (gap(low) > 0) low = 2 * low - high;
  while (gap(high) < 0) high += reach;
  return Math.exp(findRoot(gap, low, high, 1e-15, 200));
};
