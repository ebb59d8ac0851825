import { type Unable, unable } from "../quantities/index.ts";
import { describeSample, type Sample } from "./sample.ts";
import { oneSidedToleranceFactor } from "./tolerance-factor.ts";

/** What a lower (or upper) bound claims: with probability `confidence`, at most 1 - `content` of the population is beyond it. */
export interface Claim {
  /** part of the population on the good side, e.g. 0.9 */
  readonly content: number;
  /** probability that the statement is true, e.g. 0.75 */
  readonly confidence: number;
}

export interface ToleranceBound {
  readonly bound: number;
  readonly factor: number;
  readonly sample: Sample;
}

/**
 * Lower one-sided tolerance bound mean - k s of a normal population from at least two full readings, in their unit.
 * Owen (1958), Natrella (1963) [natrella].
 */
export const lowerToleranceBound = (values: readonly number[], claim: Claim): ToleranceBound | Unable => {
  if (values.length < 2) return unable("tolerance bound", "one reading shows no spread; at least two are needed");
  const sample = describeSample(values);
  const factor = oneSidedToleranceFactor(sample.count, claim.content, claim.confidence);
  return { bound: sample.mean - factor * sample.spread, factor, sample };
};
