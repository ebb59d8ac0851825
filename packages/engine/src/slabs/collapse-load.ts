/**
 * Collapse of a slab on ground under one patch, with radial cracks below and one circular crack on top.
 *
 * Meyerhof 1962, in the form of Concrete Society TR34, 4th ed. [meyerhof-1962, tr34], from memory:
 *
 *   interior  2π(Mp+Mn)            4π(Mp+Mn) / (1 − a/3l)
 *   edge      π(Mp+Mn)/2 + 2Mn     [π(Mp+Mn) + 4Mn] / (1 − 2a/3l)
 *   corner    2Mn                  4Mn / (1 − a/l)
 *   at        a = 0                a ≥ 0.2 l; linear between
 */
import type { SlabMoments } from "./section-moments.ts";

/** Where the patch stands. */
export type LoadPlace = "interior" | "edge" | "corner";

/** Collapse load, N. @param a - radius of the patch, mm @param l - radius of relative stiffness, mm */
export const collapseLoad = (place: LoadPlace, moments: SlabMoments, a: number, l: number): number => {
  const x = a / l;
  const [point, wide] = [atPoint(place, moments), (ratio: number) => spread(place, moments, ratio)];
  return x >= 0.2 ? wide(x) : point + (x / 0.2) * (wide(0.2) - point);
};

const atPoint = (place: LoadPlace, { Mp, Mn }: SlabMoments): number => {
  if (place === "interior") return 2 * Math.PI * (Mp + Mn);
  return place === "edge" ? (Math.PI * (Mp + Mn)) / 2 + 2 * Mn : 2 * Mn;
};

/** The formulas grow without bound as the patch nears the size of the mechanism; the ratio is held where they lose meaning. */
const WIDEST: Record<LoadPlace, number> = { interior: 1, edge: 0.6, corner: 0.5 };

const spread = (place: LoadPlace, { Mp, Mn }: SlabMoments, ratio: number): number => {
  const x = Math.min(ratio, WIDEST[place]);
  if (place === "interior") return (4 * Math.PI * (Mp + Mn)) / (1 - x / 3);
  return place === "edge" ? (Math.PI * (Mp + Mn) + 4 * Mn) / (1 - (2 * x) / 3) : (4 * Mn) / (1 - x);
};

/**
 * The other set of constants in use, on one moment M0: 6(1+2a/l), 3.5(1+3a/l), 2(1+4a/l) times M0. ACI 360R-10, ch. 11,
 * from memory [aci-360r]. Never mixed with the set above.
 */
export const collapseLoadSingleMoment = (place: LoadPlace, M0: number, a: number, l: number): number => {
  const x = a / l;
  if (place === "interior") return 6 * (1 + 2 * x) * M0;
  return place === "edge" ? 3.5 * (1 + 3 * x) * M0 : 2 * (1 + 4 * x) * M0;
};
