/**
 * Base plate on a uniform (plastic) block of pressure under the compressed end: the published alternative to the
 * elastic bedding, bending about one axis.
 *
 *   e = M/P,  q = fp,max B,  e_crit = N/2 − P/2q
 *   e ≤ e_crit:  Y = N − 2e, no anchor pull, pressure P/(B Y)
 *   e > e_crit:  Y = (f + N/2) − √((f + N/2)² − 2P(e + f)/q),  T = qY − P
 *
 * Source: AISC Steel Design Guide 1, 2nd ed. (2006), sections 3.3 and 3.4 [aisc-dg1]. Any consistent units.
 */
import { type Unable, unable } from "../quantities/index.ts";

export interface UniformBlockInput {
  /** axial load, compression positive, N */
  readonly P: number;
  /** N·mm, not negative */
  readonly M: number;
  /** N: length of the plate in the plane of bending, mm */
  readonly length: number;
  /** B: width of the plate, mm */
  readonly width: number;
  /** f: from the plate's centre to the row of anchors in tension, mm */
  readonly anchorDistance: number;
  /** fp,max: greatest bearing pressure allowed, MPa */
  readonly maxPressure: number;
}

export interface UniformBlock {
  readonly moment: "small" | "large";
  /** e and e_crit, mm */
  readonly eccentricity: number;
  readonly criticalEccentricity: number;
  /** Y: length under pressure, mm */
  readonly bearingLength: number;
  /** MPa */
  readonly pressure: number;
  /** T: of the whole row, N */
  readonly tension: number;
}

/** @returns the block, or Unable where the plate is too small for any block to balance the load */
export const uniformBlock = (input: UniformBlockInput): UniformBlock | Unable => {
  const { P, M, length: N, width: B, anchorDistance: f, maxPressure } = input;
  if (!(P > 0)) return unable("uniform block", "The block needs a plate pressed onto the concrete (P > 0).");
  const q = maxPressure * B;
  const e = M / P;
  const criticalEccentricity = N / 2 - P / (2 * q);
  if (criticalEccentricity < 0) return unable("uniform block", "The plate is too small for the axial load alone.");
  if (e <= criticalEccentricity) {
    const Y = N - 2 * e;
    const pressure = P / (B * Y);
    return { moment: "small", eccentricity: e, criticalEccentricity, bearingLength: Y, pressure, tension: 0 };
  }
  const root = (f + N / 2) ** 2 - (2 * P * (e + f)) / q;
  if (!(root >= 0))
    return unable("uniform block", "The plate is too small: no length of bearing balances this moment.");
  const Y = f + N / 2 - Math.sqrt(root);
  return {
    moment: "large",
    eccentricity: e,
    criticalEccentricity,
    bearingLength: Y,
    pressure: maxPressure,
    tension: q * Y - P,
  };
};
