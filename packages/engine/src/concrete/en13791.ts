import { studentQuantile } from "../numerics/index.ts";
import { type Unable, unable } from "../quantities/index.ts";
import type { Sample } from "../statistics/index.ts";

/** `kn`, variance unknown: t(0.95; n - 1) √(1 + 1/n). @clause EN 1990:2002, Table D.1; EN 13791:2019, clause 8 */
export const knUnknownVariance = (count: number): number => studentQuantile(0.95, count - 1) * Math.sqrt(1 + 1 / count);

/** In-place characteristic strength, MPa, with what decided it. */
export interface CharacteristicInPlace {
  readonly strength: number;
  readonly governs: "spread" | "lowest-core";
  readonly kn: number;
  readonly spread: number;
  /** margin `M` added to the lowest core, MPa */
  readonly margin: number;
}

/**
 * `fck,is`: the lesser of mean - kn s and lowest + M, from at least eight cores (as 2:1 cylinders). s is taken as at least
 * 8 % of the mean; M is 4, 3, 2, 1 MPa for fck,is from 20, 16, 12 MPa and below (both from memory).
 * @clause EN 13791:2019, clause 8
 */
export const characteristicInPlaceEn13791 = (sample: Sample): CharacteristicInPlace | Unable => {
  if (sample.count < 8) return unable("EN 13791:2019, clause 8", `${sample.count} cores: at least eight are needed`);
  const kn = knUnknownVariance(sample.count);
  const spread = Math.max(sample.spread, 0.08 * sample.mean);
  const bySpread = Math.max(0, sample.mean - kn * spread);
  const margin = bySpread >= 20 ? 4 : bySpread >= 16 ? 3 : bySpread >= 12 ? 2 : 1;
  const byLowest = sample.lowest + margin;
  return {
    strength: Math.min(bySpread, byLowest),
    governs: bySpread <= byLowest ? "spread" : "lowest-core",
    kn,
    spread,
    margin,
  };
};

/** A 1:1 core tests higher than a 2:1 cylinder: factor 0.82 (from memory). @clause EN 13791:2019, 6.2 */
export const cylinderFromUnitCore = (strength: number): number => 0.82 * strength;
