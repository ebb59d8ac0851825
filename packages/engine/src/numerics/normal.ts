/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

/**
 * Probability that a standard normal value is at most z; accurate in the far lower tail too (Φ(-30) is not 0).
 * Power series of Abramowitz & Stegun 26.2.11 within ±3, Laplace's continued fraction 26.2.14 beyond
 * [abramowitz-stegun].
 */
export const normalCdf = (z: number): number => {
  const x = Math.abs(z);
  if (x < 3) return 0.5 + Math.sign(z) * centralPart(x);
  return z < 0 ? upperTail(x) : 1 - upperTail(x);
};

const centralPart = (x: number): number => {
  let term = x;
  let sum = x;
  for (let k = 3; term > sum * 1e-17; k += 2) {
    term *= (x * x) / k;
    sum += term;
  }
  return normalDensity(x) * sum;
};

const upperTail = (x: number): number => {
  let fraction = x;
  for (let k = 45; k >= 1; k--) fraction = x + k / fraction;
  return normalDensity(x) / fraction;
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
