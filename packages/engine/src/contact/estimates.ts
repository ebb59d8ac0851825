/**
 * Stiffnesses nobody prints on a lift's page, estimated with their band. Both ends belong in a calculation: how the
 * pulls and the toe pressure move between them is the answer's honesty.
 */

import type { Term } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";

/** An estimate with the ends of its scatter. */
export interface Estimate {
  readonly low: Term;
  readonly likely: Term;
  readonly high: Term;
}

const FROM_MEMORY = "common practice, no source; from memory";

/** Slip of a torque-set or screw anchor in its hole, N/mm: low, likely, high. */
const holeStiffness = {
  uncracked: [15e3, 45e3, 120e3],
  cracked: [6e3, 18e3, 50e3],
} as const;

/**
 * Axial stiffness of a mechanical anchor of 1/2 to 1 in: bolt and concrete in series, 1/ka = L/(Es As) + 1/kc.
 * The bolt is hardly felt; kc scatters by a factor of 2 to 3 either way, within one product and between products
 * [anchor-stiffness-2023]. Where the anchor's own qualification report states its stiffness, use that instead.
 *
 * @param stressArea - As, mm² @param stretchLength - L: nut to the place where the anchor grips, mm
 */
export const anchorStiffness = (
  stressArea: number,
  stretchLength: number,
  concrete: "cracked" | "uncracked",
): Estimate => {
  const bolt = (200_000 * stressArea) / stretchLength;
  const [low, likely, high] = holeStiffness[concrete];
  const inSeries = (kc: number, words: string): Term => ({
    symbol: "ka",
    words: `axial stiffness of one anchor, ${words}`,
    value: 1 / (1 / bolt + 1 / kc),
    unit: "N/mm",
    clause: FROM_MEMORY,
    formula: "1 / (L/(Es As) + 1/kc)",
    worked: `1 / (${shown(stretchLength)}/(200000 × ${shown(stressArea)}) + 1/${shown(kc)})`,
    basis: `assumed: ${concrete} concrete, grip in the hole ${shown(kc)} N/mm`,
  });
  return { low: inSeries(low, "low"), likely: inSeries(likely, "likely"), high: inSeries(high, "high") };
};

/**
 * Bedding of a steel plate on a concrete slab: the concrete squeezed beneath it, k = Ec / h_eff.
 * A plate on a deep block settles as if on a depth of 1.275 √A (EN 1993-1-8:2005 Table 6.11, k13, from memory); a slab
 * offers no more depth than its thickness. Low end: a tenth of it for shims, uneven bedding and the plate's own
 * bending. High end: twice. The slab's bending is no part of this: the plate on ground computes it.
 *
 * @param Ec - of the concrete, MPa @param slab - thickness, mm @param plateArea - A, mm²
 */
export const beddingModulus = (Ec: number, slab: number, plateArea: number): Estimate => {
  const depth = Math.min(slab, 1.275 * Math.sqrt(plateArea));
  const likely: Term = {
    symbol: "k_b",
    words: "bedding of the plate on the slab, likely",
    value: Ec / depth,
    unit: "N/mm³",
    clause: "EN 1993-1-8:2005 Table 6.11 k13 (from memory), limited by the slab's thickness",
    formula: "Ec / min(h, 1.275 √A)",
    worked: `${shown(Ec)} / min(${shown(slab)}, 1.275 × √${shown(plateArea)})`,
  };
  const scaled = (factor: number, words: string): Term => ({
    ...likely,
    words: `bedding of the plate on the slab, ${words}`,
    value: factor * likely.value,
    clause: "common practice, no source",
    formula: `${factor} × k_b`,
    worked: `${factor} × ${shown(likely.value)}`,
    from: [likely],
  });
  return { low: scaled(0.1, "low"), likely, high: scaled(2, "high") };
};
