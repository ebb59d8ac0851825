import { findRoot, noncentralTQuantile, normalQuantile } from "../numerics/index.ts";
import type { CensoredFit } from "./censored-fit.ts";
import { addCurves, priorCurve, readingCurve } from "./censored-likelihood.ts";
import type { Claim } from "./tolerance-bound.ts";

/**
 * k of the one-sided bound mean - k·spread when the spread also leans on `prior` degrees of freedom from elsewhere.
 * With none it is the tolerance factor. `worth` and `prior` need not be whole numbers.
 */
export const boundFactor = (worth: number, prior: number, claim: Claim): number =>
  noncentralTQuantile(claim.confidence, worth - 1 + prior, normalQuantile(claim.content) * Math.sqrt(worth)) /
  Math.sqrt(worth);

/**
 * Lower bound of a fractile from a fit with censored readings: with probability `confidence` at least `content` of the
 * population lies above it.
 *
 * Method: profile likelihood. Its threshold is not the chi-square one, which claims too much from few readings, but that
 * at which the same profile gives the exact noncentral t bound for `worth` full readings; so with no censored reading the
 * bound is the tolerance bound. Coverage is measured in tests/laws/censored-fit.
 */
export const lowerFractileBound = (fit: CensoredFit, claim: Claim): number => {
  const z = normalQuantile(claim.content);
  const k = boundFactor(fit.worth, fit.prior.freedom, claim);
  const allowed = threshold(fit, k, z);
  const excess = (bound: number): number => 2 * (fit.peak.value - profile(fit, bound, z)) - allowed;
  const estimate = fit.mean - z / fit.peak.h;
  let reach = k * fit.spread;
  while (excess(estimate - reach) < 0) reach *= 2;
  return findRoot(excess, estimate - reach, estimate, 1e-10, 100);
};

/** Highest log-likelihood of all populations whose fractile is `bound`: a concave search in h along g = h bound + z. */
const profile = (fit: CensoredFit, bound: number, z: number): number => {
  let h = fit.peak.h;
  for (let step = 0; ; step++) {
    const c = addCurves([priorCurve(fit.prior, h), ...fit.spans.map((span) => readingCurve(span, h * bound + z, h))]);
    const slope = c.dh + c.dg * bound;
    const bend = c.dhh + 2 * c.dgh * bound + c.dgg * bound * bound;
    const change = Math.max(-0.7 * h, Math.min(2 * h, -slope / bend));
    if (Math.abs(change) < 1e-9 * h || step === 60) return c.value + slope * change + 0.5 * bend * change * change;
    h += change;
  }
};

/** Twice the drop of the profile at the exact bound when all readings are exact: mean 0, spread 1 without loss. */
const threshold = (fit: CensoredFit, k: number, z: number): number => {
  const n = fit.worth;
  const weight = n + fit.prior.freedom;
  const squares = weight - 1;
  const loss = (sigma: number): number =>
    weight * Math.log(sigma) + (squares + n * (k - z * sigma) ** 2) / (2 * sigma ** 2);
  // d/dσ = 0: weight σ² + n k z σ - (squares + n k²) = 0
  const b = n * k * z;
  const sigma = (-b + Math.sqrt(b * b + 4 * weight * (squares + n * k * k))) / (2 * weight);
  return 2 * (loss(sigma) - loss0(weight, squares));
};

const loss0 = (weight: number, squares: number): number => 0.5 * weight * Math.log(squares / weight) + 0.5 * weight;

/**
 * Lower bound when every reading says only "at least": with spread at most `spread`, all `limits` are exceeded together
 * with probability Φ((μ - c)/σ)^n at most, so μ >= c + σ Φ⁻¹((1 - confidence)^(1/n)), c the lowest limit.
 */
export const boundFromLowerLimits = (limits: readonly number[], spread: number, claim: Claim): number =>
  Math.min(...limits) +
  spread * (normalQuantile((1 - claim.confidence) ** (1 / limits.length)) - normalQuantile(claim.content));
