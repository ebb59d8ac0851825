import { normalQuantile } from "../numerics/index.ts";
import { boundFactor, lowerFractileBound } from "./censored-bound.ts";
import type { CensoredFit } from "./censored-fit.ts";
import type { Claim } from "./tolerance-bound.ts";

/** Whether more readings would show that the fractile is above a limit. */
export type MoreReadings =
  /** the bound is there already */
  | { readonly kind: "shown"; readonly bound: number }
  /** `count` more full readings would do, if they turn out like those so far */
  | { readonly kind: "more"; readonly bound: number; readonly count: number }
  /** the fractile as fitted is below the limit, or more than 50 readings would be needed */
  | { readonly kind: "not-likely"; readonly bound: number; readonly estimate: number };

/** How many more full readings, like those so far in mean and spread, would settle the claim against `limit`. */
export const moreReadings = (fit: CensoredFit, limit: number, claim: Claim): MoreReadings => {
  const bound = lowerFractileBound(fit, claim);
  if (bound >= limit) return { kind: "shown", bound };
  const estimate = fit.mean - normalQuantile(claim.content) * fit.spread;
  const reached = (count: number): boolean =>
    fit.mean - boundFactor(fit.worth + count, fit.prior.freedom, claim) * fit.spread >= limit;
  if (estimate < limit || !reached(50)) return { kind: "not-likely", bound, estimate };
  let count = 1;
  while (!reached(count)) count++;
  return { kind: "more", bound, count };
};
