/**
 * The infinite thin plate on springs under a uniform circle of radius a, exactly:
 *
 *   w₀ = P/(π a² k) [1 + (a/l) ker'(a/l)],   M₀ = (1+ν)P/2π · kei'(a/l)/(a/l)
 *
 * Timoshenko & Woinowsky-Krieger, ch. 8 [timoshenko-plates]. It knows nothing of the slab's depth (no `b`): compare a
 * thin-plate solver with it, and take `interiorStress` "special" for real concrete.
 */
import { kelvinDerivatives } from "./kelvin.ts";
import { type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

/** Response at the point where it is worst. */
export interface PlateResponse {
  /** mm, downward */
  readonly deflection: number;
  /** N·mm per mm */
  readonly moment: number;
  /** MPa, 6 M / h² */
  readonly stress: number;
}

export const interiorExact = (slab: SlabOnGround, P: number, a: number): PlateResponse => {
  const x = a / stiffnessRadius(slab);
  const { ker, kei } = kelvinDerivatives(x);
  const moment = (((1 + slab.nu) * P) / (2 * Math.PI)) * (Math.abs(kei) / x);
  return {
    deflection: (P / (Math.PI * a * a * slab.k)) * (1 + x * ker),
    moment,
    stress: (6 * moment) / slab.h ** 2,
  };
};
