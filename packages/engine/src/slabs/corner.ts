/** A load at a free corner. Force N, radius mm, stress MPa (TOP of the slab, across the bisector), deflection mm. */
import { squareSide } from "./equivalent-radius.ts";
import { type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

/**
 * "ioannides": square of the same area in the corner; preferred, since the exact thin-plate deflection of a corner point
 * load is 1.212 P/kl² and Westergaard's 1.1 is 9 % on the unsafe side. Both stresses are 2 to 4 % low.
 */
export type CornerTheory = "ioannides" | "westergaard";

/**
 * `σ = 3P/h² [1 − (c/l)^0.72]`, c = 1.772a [ioannides-1985]; `3P/h² [1 − (a√2/l)^0.6]` [westergaard-1926].
 * Falls to 0 (never below) where the load covers the corner region.
 */
export const cornerStress = (slab: SlabOnGround, P: number, a: number, theory: CornerTheory = "ioannides"): number => {
  const l = stiffnessRadius(slab);
  const taken = theory === "ioannides" ? (squareSide(a) / l) ** 0.72 : ((a * Math.SQRT2) / l) ** 0.6;
  return ((3 * P) / slab.h ** 2) * Math.max(0, 1 - taken);
};

/** `δ = P/kl² (1.205 − 0.69 c/l)` [ioannides-1985]; `P/kl² (1.1 − 0.88 a√2/l)` [westergaard-1926]. */
export const cornerDeflection = (
  slab: SlabOnGround,
  P: number,
  a: number,
  theory: CornerTheory = "ioannides",
): number => {
  const l = stiffnessRadius(slab);
  const shape = theory === "ioannides" ? 1.205 - (0.69 * squareSide(a)) / l : 1.1 - (0.88 * a * Math.SQRT2) / l;
  return (P / (slab.k * l * l)) * Math.max(0, shape);
};

/** Distance from the corner to the worst top stress along the bisector, about 0.86 l for a small load (thin-plate Ritz solution, our own), mm. */
export const cornerCrackDistance = (slab: SlabOnGround): number => 0.86 * stiffnessRadius(slab);
