/**
 * Concentrically loaded base plate under an I-shaped column: bearing and thickness.
 * Source: AISC Steel Design Guide 1, 2nd ed. (2006), section 3.1 [aisc-dg1]. Any consistent units.
 */
import type { SteelFormat } from "./plate-thickness.ts";

/** Greatest bearing pressure on concrete: 0.85 f'c √(A2/A1) ≤ 1.7 f'c, times φ = 0.65 or over Ω = 2.50, MPa. */
export const bearingPressureLimit = (fc: number, areaRatio: number, format: SteelFormat = "LRFD"): number => {
  const nominal = 0.85 * fc * Math.min(2, Math.sqrt(Math.max(1, areaRatio)));
  return format === "LRFD" ? 0.65 * nominal : nominal / 2.5;
};

export interface ConcentricInput {
  /** N */
  readonly P: number;
  /** N and B: plate length (along the column depth) and width, mm */
  readonly length: number;
  readonly width: number;
  /** d and bf of the column, mm */
  readonly depth: number;
  readonly flange: number;
  /** fp,max, MPa */
  readonly maxPressure: number;
  /** MPa */
  readonly Fy: number;
  readonly format?: SteelFormat;
}

export interface ConcentricPlate {
  /** fp,max N B, N */
  readonly bearingStrength: number;
  /** P / fp,max, mm² */
  readonly requiredArea: number;
  /** m, n and n', mm */
  readonly m: number;
  readonly n: number;
  readonly nPrime: number;
  /** X, and λ before and after its cap of 1 */
  readonly X: number;
  readonly lambdaUncapped: number;
  readonly lambda: number;
  /** mm */
  readonly thickness: number;
}

export const concentricPlate = (input: ConcentricInput): ConcentricPlate => {
  const { P, length: N, width: B, depth: d, flange: bf, maxPressure, Fy, format = "LRFD" } = input;
  const bearingStrength = maxPressure * N * B;
  const [m, n, nPrime] = [(N - 0.95 * d) / 2, (B - 0.8 * bf) / 2, Math.sqrt(d * bf) / 4];
  const X = Math.min(1, ((4 * d * bf) / (d + bf) ** 2) * (P / bearingStrength));
  const lambdaUncapped = (2 * Math.sqrt(X)) / (1 + Math.sqrt(1 - X));
  const lambda = Math.min(1, lambdaUncapped);
  const cantilever = Math.max(m, n, lambda * nPrime);
  const factor = format === "LRFD" ? 2 / 0.9 : 2 * 1.67;
  const thickness = cantilever * Math.sqrt((factor * P) / (Fy * N * B));
  return { bearingStrength, requiredArea: P / maxPressure, m, n, nPrime, X, lambdaUncapped, lambda, thickness };
};
