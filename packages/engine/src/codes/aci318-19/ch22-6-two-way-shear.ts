import { sizeEffect } from "./ch22-5-one-way-shear.ts";

/** Where the loaded area stands in the slab. */
export type LoadedAreaPosition = "interior" | "edge" | "corner";

/**
 * `αs`: perimeter coefficient.
 *
 * @clause ACI 318-19, 22.6.5.3
 */
export const alphaS = (position: LoadedAreaPosition): number => ({ interior: 40, edge: 30, corner: 20 })[position];

/** The critical section of two-way shear, in. */
export interface TwoWaySection {
  /** perimeter at d/2 from the loaded area */
  readonly bo: number;
  readonly d: number;
  /** long side over short side of the loaded area, at least 1 */
  readonly beta: number;
  readonly position: LoadedAreaPosition;
}

/**
 * `vc`: two-way shear stress carried by concrete without shear reinforcement.
 *
 * @clause ACI 318-19, Table 22.6.5.2
 * @param fc - psi (√f'c counted up to 100 psi, 22.6.3.1)
 * @param section - critical section, in
 * @param lambda - lightweight factor
 * @returns vc, psi
 */
export const twoWayShearStress = (fc: number, { bo, d, beta, position }: TwoWaySection, lambda = 1): number =>
  Math.min(4, 2 + 4 / beta, 2 + (alphaS(position) * d) / bo) * sizeEffect(d) * lambda * Math.min(100, Math.sqrt(fc));
