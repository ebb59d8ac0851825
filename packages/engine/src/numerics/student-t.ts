import { incompleteBeta } from "./incomplete-beta.ts";
import { findRoot } from "./root.ts";

/** Probability that Student's t with `freedom` degrees is at most t. Abramowitz & Stegun 26.7.1 [abramowitz-stegun]. */
export const studentCdf = (t: number, freedom: number): number => {
  const tail = 0.5 * incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5);
  return t < 0 ? tail : 1 - tail;
};

/** The t not exceeded with probability p, 0 < p < 1; the root is sought in ln P against asinh t, where the tail is straight. */
export const studentQuantile = (p: number, freedom: number): number => {
  if (p <= 0) return Number.NEGATIVE_INFINITY;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  if (p > 0.5) return -studentQuantile(1 - p, freedom);
  const gap = (y: number): number => Math.log(studentCdf(Math.sinh(y), freedom) / p);
  let low = -2;
  while (gap(low) > 0) low *= 2;
  return Math.sinh(findRoot(gap, low, 0, 1e-15, 200));
};
