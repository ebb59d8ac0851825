import { logGamma } from "./log-gamma.ts";
import { normalCdf, normalQuantile } from "./normal.ts";
import { findRoot } from "./root.ts";

/**
 * Probability that (Z + δ)/√(χ²/ν) is at most t, ν = `freedom` > 0.
 *
 * Equation: P = ∫ Φ(t s - δ) g(s) ds, g the density of s = √(χ²/ν) (Johnson & Kotz, ch. 31 [johnson-kotz]).
 * Method: trapezoidal rule in u = ln s, which converges geometrically for this analytic, fast-decaying integrand.
 */
export const noncentralTCdf = (t: number, freedom: number, delta: number): number => {
  const spread = 1 / Math.sqrt(2 * freedom);
  const step = Math.min(spread / 3, 0.25 / (1 + Math.abs(delta)), 0.1);
  const constant = Math.log(2) + (freedom / 2) * Math.log(freedom / 2) - logGamma(freedom / 2);
  const logDensity = (u: number): number => constant + freedom * (u - 0.5 * Math.exp(2 * u));
  const peak = logDensity(0);
  let sum = 0;
  for (const direction of [-1, 1]) {
    for (let u = direction < 0 ? -step : 0; logDensity(u) > peak - 40; u += direction * step)
      sum += Math.exp(logDensity(u)) * normalCdf(t * Math.exp(u) - delta);
  }
  return Math.min(1, sum * step);
};

/** The t not exceeded with probability p, 0 < p < 1. */
export const noncentralTQuantile = (p: number, freedom: number, delta: number): number => {
  const gap = (t: number): number => noncentralTCdf(t, freedom, delta) - p;
  let width = 1 + Math.abs(normalQuantile(p)) + 0.5 * Math.abs(delta);
  while (gap(delta - width) > 0) width *= 2;
  const low = delta - width;
  width = 1 + Math.abs(normalQuantile(p)) + 0.5 * Math.abs(delta);
  while (gap(delta + width) < 0) width *= 2;
  return findRoot(gap, low, delta + width, 1e-11, 100);
};
