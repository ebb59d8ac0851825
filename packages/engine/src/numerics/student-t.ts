import { incompleteBeta } from "./incomplete-beta.ts";
import { findRoot } from "./root.ts";

/** Probability that Student's t with `freedom` degrees is at most t. Abramowitz & Stegun 26.7.1 [abramowitz-stegun]. */
export const studentCdf = (t: number, freedom: number): number => {
  const tail = 0.5 * incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
  return t < 0 ? tail : 1 - tail;
};

/** The t not exceeded with probability p, 0 < p < 1. */
export const studentQuantile = (p: number, freedom: number): number => {
  if (p <= 0) return Number.NEGATIVE_INFINITY;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  if (p > 0.5) return -studentQuantile(1 - p, freedom);
  if (p === 0.5) return 0;
  const gap = (t: number): number => studentCdf(t, freedom) - p;
  let low = -2;
  while (gap(low) > 0) low *= 2;
  return findRoot(gap, low, 0, 1e-14, 200);
};
