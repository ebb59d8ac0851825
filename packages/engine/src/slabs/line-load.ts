/**
 * A line load (a wall, the side of a strip) on a slab, per unit length: the strip across it is an infinite beam on
 * springs, M = P/4λ and σ = 6M/h².
 *
 * This is the closed form behind the wall-load table of UFC 3-320-06A, Table 3-2 [ufc-3-320-06a]; the formula is our
 * reading of that table, the allowable stress 1.6 √f'c is the manual's.
 */
import type { SlabOnGround } from "./slab-on-ground.ts";

/** `λ = (3k / E h³)^¼`, 1/mm, of a strip of the slab. */
export const stripLambda = ({ E, h, k }: SlabOnGround): number => ((3 * k) / (E * h ** 3)) ** 0.25;

/** Bending stress across a line load of P N/mm, MPa. At a free edge parallel to the load the peak is 0.3224 P/λ instead of P/4λ. */
export const lineLoadStress = (slab: SlabOnGround, P: number, place: "inside" | "free edge" = "inside"): number =>
  (6 * P * (place === "inside" ? 0.25 : 0.32239)) / (stripLambda(slab) * slab.h ** 2);

/** Line load, N/mm, that brings the stress to `allowable` MPa. */
export const lineLoadCapacity = (slab: SlabOnGround, allowable: number): number =>
  (allowable * slab.h ** 2 * stripLambda(slab)) / 1.5;

/** Factor on the thickness read for k = 100 pci: (100/k)^⅕, note under the same table. @param pci - subgrade modulus, lb/in³ */
export const thicknessFactor = (pci: number): number => (100 / pci) ** 0.2;
