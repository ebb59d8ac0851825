/** A load at a free edge, far from a corner. Force N, radius mm, stress MPa (bottom, along the edge), deflection mm. */
import { specialRadius } from "./equivalent-radius.ts";
import { plateStiffness, type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

/**
 * Three formulas circulate. "1948-circle": the circle touches the edge; "1948-semicircle": its straight side lies on the
 * edge; both use `a` and agree with the exact half-plate within about 1 % up to a = 0.5 l. "1926" uses `b`, underrates
 * the stress and is kept only to read old tables.
 */
export type EdgeTheory = "1948-circle" | "1948-semicircle" | "1926";

/**
 * `σ = 3(1+ν)P/π(3+ν)h² [ln(Eh³/100ka⁴) + 1.84 − 4ν/3 + (1−ν)/2 + 1.18(1+2ν)a/l]` for the circle,
 * `[... + 3.84 − 4ν/3 + (1+2ν)a/2l]` for the semicircle: Westergaard 1948 in Ioannides et al. 1985 [ioannides-1985].
 * `0.572 P/h² [4 log₁₀(l/b) + 0.359]` for 1926, valid for ν = 0.15 [westergaard-1926].
 */
export const edgeStress = (slab: SlabOnGround, P: number, a: number, theory: EdgeTheory): number => {
  const { E, h, k, nu } = slab;
  const l = stiffnessRadius(slab);
  if (theory === "1926") return ((0.572 * P) / h ** 2) * (4 * Math.log10(l / specialRadius(a, h)) + 0.359);
  const factor = (3 * (1 + nu) * P) / (Math.PI * (3 + nu) * h * h);
  const shape =
    theory === "1948-circle"
      ? 1.84 - (4 * nu) / 3 + (1 - nu) / 2 + (1.18 * (1 + 2 * nu) * a) / l
      : 3.84 - (4 * nu) / 3 + ((1 + 2 * nu) * a) / (2 * l);
  return factor * (Math.log((E * h ** 3) / (100 * k * a ** 4)) + shape);
};

/**
 * `δ = √(2+1.2ν) P/√(Eh³k) [1 − (0.76+0.4ν)a/l]` for the circle, `(0.323+0.17ν)` for the semicircle (1948);
 * `(1+0.4ν)P/√6kl²` for a point (1926). The 1948 expansions drift: −1.3 % at a = 0.25 l, −7.5 % at 0.5 l for the
 * circle, so use `edgeExact` for wide bases.
 */
export const edgeDeflection = (slab: SlabOnGround, P: number, a: number, theory: EdgeTheory): number => {
  const { E, h, k, nu } = slab;
  const l = stiffnessRadius(slab);
  if (theory === "1926") return ((1 + 0.4 * nu) * P) / Math.sqrt(6 * plateStiffness(slab) * k);
  const slope = theory === "1948-circle" ? 0.76 + 0.4 * nu : 0.323 + 0.17 * nu;
  return ((Math.sqrt(2 + 1.2 * nu) * P) / Math.sqrt(E * h ** 3 * k)) * (1 - (slope * a) / l);
};
