import type { Floor, Moments } from "./floor.ts";

/** Reissner's shear factor for a plate. */
const shearFactor = 5 / 6;

/**
 * Deflection by transverse shear that a thin plate leaves out, mm:  w_s = (Mx + My) / ((1 + ν) κ G h),  since Q = ∇M and
 * γ = Q / κGh. Exact for simply supported polygonal plates; on a bed it leaves out that the extra sinking also draws a
 * little more ground (second order). Wang, J. Engng Mech. 121 (1995) [wang-1995].
 */
export const shearDeflection = ({ E, nu }: Pick<Floor, "E" | "nu">, h: number, { Mx, My }: Moments): number => {
  const G = E / (2 * (1 + nu));
  return (Mx + My) / ((1 + nu) * shearFactor * G * h);
};
