/** Dowels between a pad and the slab: the share of each bar, its bearing σ = K y0 ≤ f'c (4 − d)/3 (d in inches, ACI 325) and its shear. */
import { type Check, fromBase, shown, type Term } from "../quantities/index.ts";
import { type Dowel, dowelAtFace } from "../slabs/index.ts";

/** `f'c (4 − d)/3`, d in inches: allowable bearing of concrete on a dowel, in the unit of f'c; bars up to 4 in. ACI 325 1956 by way of Huang [huang-2004]. */
export const dowelBearingAllowed = (fc: number, d: number): number => (fc * Math.max(0, 4 - fromBase(d, "in"))) / 3;

/**
 * Share of the most loaded bar: 1 at the load, falling evenly to 0 at `reach` to either side.
 * Friberg took 1.8 l for the reach, Finney's tests (1956) give 1.0 l, which loads the first bars more: prefer it.
 * @param positions - of the bars along the joint, mm @param load - place of the load, mm
 * @returns each bar's share of the whole load, adding up to 1; all 0 when no bar is in reach
 */
export const dowelShares = (positions: readonly number[], load: number, reach: number): readonly number[] => {
  const weights = positions.map((x) => Math.max(0, 1 - Math.abs(x - load) / reach));
  const sum = weights.reduce((s, w) => s + w, 0);
  return weights.map((w) => (sum > 0 ? w / sum : 0));
};

/** Bearing of the concrete against the most loaded bar. @param P - shear on that bar, N @param fc - MPa */
export const dowelBearingCheck = (dowel: Dowel, P: number, fc: number): Check => {
  const y0 = dowelAtFace(dowel, P);
  const demand: Term = {
    symbol: "σb",
    words: "bearing of the concrete on the most loaded dowel",
    value: dowel.support * y0,
    unit: "MPa",
    clause: "Friberg 1940",
    formula: "K P (2 + βz) / 4β³EI",
    worked: `${shown(dowel.support)} × ${shown(y0)}`,
    from: [
      { symbol: "P", words: "shear on the dowel", value: P, unit: "N" },
      { symbol: "d", words: "diameter of the dowel", value: dowel.diameter, unit: "mm" },
      { symbol: "K", words: "modulus of dowel support", value: dowel.support, unit: "N/mm³" },
      { symbol: "z", words: "width of the joint", value: dowel.opening, unit: "mm" },
    ],
  };
  const allowed = dowelBearingAllowed(fc, dowel.diameter);
  return {
    id: "dowel-bearing",
    title: "Concrete against the dowels",
    demand,
    capacity: {
      symbol: "fb",
      words: "allowable bearing of concrete on a dowel",
      value: allowed,
      unit: "MPa",
      clause: "ACI 325 (1956), in Huang 2nd ed., ch. 4",
      formula: "f'c (4 − d)/3, d in inches",
      worked: `${shown(fc)} × (4 − ${shown(fromBase(dowel.diameter, "in"))}) / 3`,
    },
    ratio: P === 0 ? 0 : allowed > 0 ? demand.value / allowed : Number.POSITIVE_INFINITY,
    clause: "Friberg 1940; ACI 325 (1956)",
  };
};

/** Shear of the bar itself against an allowable shear stress (0.4 fy by the caller's code), both MPa. */
export const dowelShearCheck = (dowel: Dowel, P: number, allowable: number): Check => {
  const stress = (4 * P) / (Math.PI * dowel.diameter ** 2);
  return {
    id: "dowel-shear",
    title: "Shear of the dowels",
    demand: {
      symbol: "τ",
      words: "shear stress of the most loaded dowel",
      value: stress,
      unit: "MPa",
      formula: "4P/πd²",
    },
    capacity: { symbol: "τa", words: "allowable shear stress of the bar", value: allowable, unit: "MPa" },
    ratio: allowable > 0 ? stress / allowable : Number.POSITIVE_INFINITY,
    clause: "elementary beam theory",
  };
};

/** Whether bars of this size may be set into a slab this thick: at least 4 in and d ≤ h/8 (common practice, no source). */
export const dowelFitsSlab = (d: number, slab: number): "fits" | "slab too thin" | "bar too thick" => {
  if (slab < 4 * 25.4 - 1e-9) return "slab too thin";
  return d <= slab / 8 + 1e-9 ? "fits" : "bar too thick";
};
