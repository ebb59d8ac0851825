/** Steel that holds cracks together, per width of slab: it adds no bending strength. */
import { fromBase, type Term } from "../quantities/index.ts";

/**
 * `As = F L w / 2 fs`: steel that can drag half a panel over its base.
 *
 * Subgrade drag formula, ACI 360R and the Wire Reinforcement Institute, from memory [wri].
 * @param F - friction of the base, 1.5 by custom
 * @param L - distance between free joints, mm
 * @param h - thickness, mm
 * @param unitWeight - N/mm³
 * @param fs - allowable steel stress, MPa (2/3 to 3/4 of the yield strength)
 * @returns As, in²/ft
 */
export const dragSteel = (F: number, L: number, h: number, unitWeight: number, fs: number): Term => {
  const w = h * unitWeight;
  const As = (F * L * w) / (2 * fs);
  return {
    symbol: "As",
    words: "steel to drag half the panel over its base, in² per ft of width",
    value: perFoot(As),
    unit: "in²",
    clause: "subgrade drag formula, ACI 360R",
    formula: "F L w / 2 fs",
    from: [
      { symbol: "F", words: "friction of the base", value: F, unit: "", clause: "custom" },
      { symbol: "L", words: "distance between free joints", value: L, unit: "mm" },
      { symbol: "w", words: "weight of the slab per area", value: w, unit: "MPa" },
      { symbol: "fs", words: "allowable steel stress", value: fs, unit: "MPa" },
    ],
  };
};

/**
 * 0.5 % of the section each way, in²/ft: where a floor is to do without joints. ACI 360R practice as reported from a
 * presentation [aci-360r].
 */
export const jointlessSteel = (h: number, share = 0.005): Term => ({
  symbol: "As",
  words: "steel for a slab without joints, in² per ft of width",
  value: perFoot(share * h),
  unit: "in²",
  clause: "ACI 360R practice",
  formula: "0.005 × 12 × t",
  worked: `${share} × 12 × ${fromBase(h, "in")}`,
});

/** Depth of the steel below the top, mm: t/4, at least 1.5 in, at most 2.5 in. TI 809-28 / UFC 3-320-02A, par. 7a. */
export const steelDepth = (h: number): number => Math.min(Math.max(h / 4, 38.1), 63.5);

/** mm²/mm as in²/ft. */
const perFoot = (area: number): number => fromBase(area * 304.8, "in²");
