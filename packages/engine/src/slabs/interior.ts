/** A load far from every edge (more than about 2 l). Force N, radius mm, stress MPa at the bottom, deflection mm. */
import { specialRadius } from "./equivalent-radius.ts";
import { type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

const EULER = 0.5772156649015329;

/**
 * "special": with `b`, Westergaard's allowance for the depth of the slab, for real concrete;
 * "ordinary": thin plate theory with `a`, to compare with a thin-plate solver.
 */
export type InteriorTheory = "special" | "ordinary";

/**
 * Largest bending stress under a load spread over a circle of radius `a`.
 *
 * `σ = 3(1+ν)P/2πh² [ln(2l/b) + ½ − γ]`, plus `3(1+ν)P/64h² (a/l)²` in the ordinary theory; Westergaard 1926 and
 * Ioannides, Thompson & Barenberg 1985 (TRR 1043) [westergaard-1926, ioannides-1985]. The printed form
 * 0.316 P/h² [4 log₁₀(l/b) + 1.069] has ν = 0.15 built in. Range: a up to about 0.5 l; beyond, `interiorExact`.
 */
export const interiorStress = (
  slab: SlabOnGround,
  P: number,
  a: number,
  theory: InteriorTheory = "special",
): number => {
  const { h, nu } = slab;
  const l = stiffnessRadius(slab);
  const radius = theory === "special" ? specialRadius(a, h) : a;
  const main = ((3 * (1 + nu) * P) / (2 * Math.PI * h * h)) * (Math.log((2 * l) / radius) + 0.5 - EULER);
  return theory === "special" ? main : main + ((3 * (1 + nu) * P) / (64 * h * h)) * (a / l) ** 2;
};

/**
 * Deflection under the centre.
 *
 * `δ = P/8kl² {1 + (1/2π)[ln(a/2l) + γ − 5/4](a/l)²}`, Westergaard 1939 in Huang 2nd ed., Eq. 4.21 [huang-2004]
 * (the book writes 0.673 for 5/4 − γ).
 */
export const interiorDeflection = (slab: SlabOnGround, P: number, a: number): number => {
  const l = stiffnessRadius(slab);
  return (P / (8 * slab.k * l * l)) * (1 + (1 / (2 * Math.PI)) * (Math.log(a / (2 * l)) + EULER - 1.25) * (a / l) ** 2);
};
