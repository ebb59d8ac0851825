/** Dry mix in bags. */
import { toBase } from "../quantities/index.ts";

/** Concrete per weight of dry mix: 0.15 ft³ per 20 lb, so 0.30, 0.45, 0.60 ft³ from 40, 60, 80 lb (trade figures). */
const YIELD = toBase(0.15, "ft³") / toBase(20, "lb");

/** Volume one bag makes, mm³. @param weight - of the dry bag, N. A bag's own printed yield is better. */
export const bagYield = (weight: number): number => weight * YIELD;

/** Whole bags for a volume, mm³, each making `perBag` mm³. */
export const bagsFor = (volume: number, perBag: number): number => Math.ceil(volume / perBag - 1e-9);
