import { incompleteGamma } from "./incomplete-gamma.ts";

/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

/**
 * Probability that a standard normal value is at most z; accurate in the far lower tail too (Φ(-30) is not 0).
 * Φ(z) = ½ Q(½, z²/2) for z < 0: Abramowitz & Stegun 26.4.19 [abramowitz-stegun].
 */
export const normalCdf = (z: number): number => {
  const tail = 0.5 * incompleteGamma(0.5, 0.5 * z * z).upper;
  return z < 0 ? tail : 1 - tail;
};

/**
 * The z below which a standard normal value falls with probability p, 0 <= p <= 1.
 * Start: Abramowitz & Stegun 26.2.23 (4.5e-4); then Halley steps on Φ in the smaller tail [abramowitz-stegun].
 */
export const normalQuantile = (p: number): number => {
  if (p <= 0) return Number.NEGATIVE_INFINITY;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  if (p > 0.5) return -normalQuantile(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  let z = (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let step = 0; step < 3; step++) {
    const e = (normalCdf(z) - p) / normalDensity(z);
    z -= e / (1 + 0.5 * z * e);
  }
  return z;
};
