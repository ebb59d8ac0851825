import { normalQuantile, studentQuantile } from "../numerics/index.ts";
import { isUnable, type Unable, unable } from "../quantities/index.ts";
import { describeSample, oneSidedToleranceFactor, type Sample } from "../statistics/index.ts";
import { type Core, type CoreFactor, coreFactorsAci2144 } from "./core-factors.ts";

/** Cores turned into concrete in place: one strength each, and the spread that the factors themselves add, MPa. */
export interface InPlaceStrength {
  readonly cores: readonly {
    readonly core: Core;
    readonly factors: readonly CoreFactor[];
    readonly strength: number;
  }[];
  readonly sample: Sample;
  /** `sa`: standard deviation from the uncertain factors, MPa */
  readonly factorSpread: number;
}

/** @clause ACI 214.4R-10, 8.2 and Eq. 9-4 (from memory): fc = F(l/d) F(dia) F(mc) F(d) fcore */
export const inPlaceStrength = (cores: readonly Core[]): InPlaceStrength | Unable => {
  if (cores.length === 0) return unable("cores", "no core was tested");
  const known = [];
  for (const core of cores) {
    const factors = coreFactorsAci2144(core);
    if (isUnable(factors)) return factors;
    known.push({ core, factors, strength: factors.reduce((product, f) => product * f.value, core.strength) });
  }
  const sample = describeSample(known.map((k) => k.strength));
  const meanSquare =
    known.reduce((sum, k) => sum + k.factors.reduce((s, f) => s + f.variation ** 2, 0), 0) / known.length;
  return { cores: known, sample, factorSpread: sample.mean * Math.sqrt(meanSquare) };
};

/** The specified strength that old concrete may be treated as having, MPa, and the numbers it was made of. */
export interface EquivalentStrength {
  readonly strength: number;
  /** K of the tolerance-factor method, T of the alternate method */
  readonly factor: number;
  readonly Z: number;
}

/**
 * `f'c,eq` = mean - √[(K sc)² + (Z sa)²]: lower bound of the 10 % fractile, K the one-sided tolerance factor.
 * @clause ACI 214.4R-10, 9.4.1 (from memory)
 * @param sa - spread added by the factors, in the unit of the mean
 */
export const toleranceFactorStrength = (
  sample: Pick<Sample, "count" | "mean" | "spread">,
  sa: number,
  confidence: number,
): EquivalentStrength | Unable => {
  if (sample.count < 3) return tooFew(sample.count);
  const K = oneSidedToleranceFactor(sample.count, 0.9, confidence);
  const Z = normalQuantile(confidence);
  return { strength: Math.max(0, sample.mean - Math.hypot(K * sample.spread, Z * sa)), factor: K, Z };
};

/** Where the concrete came from, for `C` of the alternate method. @clause ACI 214.4R-10, Table 9.6 (from memory) */
export type Batches = "one-batch-one-member" | "one-batch" | "many-batches-one-member" | "many-batches";

const C: Record<Batches, number> = {
  "one-batch-one-member": 0.91,
  "one-batch": 0.89,
  "many-batches-one-member": 0.85,
  "many-batches": 0.83,
};

/**
 * `f'c,eq` = C {mean - √[(T sc)²/n + (Z sa)²]}: lower bound of the mean, lowered to the 10 % fractile by C.
 * @clause ACI 214.4R-10, 9.4.2 (from memory)
 */
export const alternateStrength = (
  sample: Pick<Sample, "count" | "mean" | "spread">,
  sa: number,
  confidence: number,
  batches: Batches,
): EquivalentStrength | Unable => {
  if (sample.count < 3) return tooFew(sample.count);
  const T = studentQuantile(confidence, sample.count - 1);
  const Z = normalQuantile(confidence);
  const lower = sample.mean - Math.hypot((T * sample.spread) / Math.sqrt(sample.count), Z * sa);
  return { strength: Math.max(0, C[batches] * lower), factor: T, Z };
};

const tooFew = (count: number): Unable =>
  unable("equivalent strength", `${count} ${count === 1 ? "core" : "cores"}: at least three are needed`);
