/** Stress in a slab that is warmer (or wetter) on one face and held flat by its weight. */
import type { SlabOnGround } from "./slab-on-ground.ts";

/**
 * `C`: Bradbury's restraint coefficient of a side of length L, from L/l.
 *
 * `C = 1 − 2 cos λ cosh λ (tan λ + tanh λ) / (sin 2λ + sinh 2λ)`, λ = L / (l √8). Bradbury 1938 in Huang 2nd ed.,
 * Fig. 4.4 [bradbury-1938, huang-2004]. Largest 1.0863 at L = 8.886 l (the book reads 1.084 from its chart).
 */
export const bradburyCoefficient = (sideOverRadius: number): number => {
  const x = sideOverRadius / Math.sqrt(8);
  if (x === 0) return 0;
  // tan λ · cos λ = sin λ keeps the formula finite where the tangent is not; cosh and sinh 2λ are divided by e^2λ.
  const [e1, e2] = [Math.exp(-2 * x), Math.exp(-4 * x)];
  const cosh = (1 + e1) / 2;
  const sinh = (1 - e1) / 2;
  const top = 2 * (Math.sin(x) * cosh + Math.cos(x) * sinh) * Math.exp(-x);
  return 1 - top / (Math.sin(2 * x) * e1 + (1 - e2) / 2);
};

/**
 * Curling stress, MPa: at mid-slab `E α Δt/2 (Cx + ν Cy)/(1 − ν²)`, at the middle of an edge along x `Cx E α Δt/2`.
 * Huang 2nd ed., Eqs 4.7 and 4.8 [huang-2004].
 * @param alpha - coefficient of expansion, 1/°C
 * @param difference - top minus bottom, °C
 */
export const curlingStress = (
  slab: SlabOnGround,
  alpha: number,
  difference: number,
  Cx: number,
  Cy: number,
): { readonly interior: number; readonly edge: number } => {
  const half = (slab.E * alpha * difference) / 2;
  return { interior: (half * (Cx + slab.nu * Cy)) / (1 - slab.nu ** 2), edge: half * Cx };
};
