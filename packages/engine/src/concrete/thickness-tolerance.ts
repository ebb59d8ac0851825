import { describeSample } from "../statistics/index.ts";

/** So that a reading exactly at the limit meets it, mm. */
const rounding = 1e-6;

/** A slab's measured thickness against what was ordered, mm under (positive) the specified thickness. */
export interface ThicknessTolerance {
  readonly meanUnder: number;
  readonly mean: "met" | "not-met";
  readonly worstUnder: number;
  readonly single: "met" | "not-met";
}

/**
 * Slab on ground: the average of the samples not more than 3/8 in under, no single one more than 3/4 in under. It says
 * whether the builder kept to tolerance; it says nothing on a lift maker's minimum.
 * @clause ACI 117-06/-10, 4.5.4
 */
export const thicknessTolerance = (readings: readonly number[], specified: number): ThicknessTolerance => {
  const { mean, lowest } = describeSample(readings);
  const [meanUnder, worstUnder] = [specified - mean, specified - lowest];
  return {
    meanUnder,
    mean: meanUnder <= 0.375 * 25.4 + rounding ? "met" : "not-met",
    worstUnder,
    single: worstUnder <= 0.75 * 25.4 + rounding ? "met" : "not-met",
  };
};
