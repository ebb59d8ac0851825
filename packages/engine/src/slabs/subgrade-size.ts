/**
 * k is no constant of the soil: a 1-ft plate gives more than a footing. Terzaghi 1955 [terzaghi-1955]; limits also in
 * TM 5-818-1. Lengths mm, k N/mm³.
 */
const FOOT = 304.8;

/** On clay: `k = k₁ (1 ft / B) (m + 0.5)/1.5m`, m = length / width; k₁ from a 1-ft square plate. */
export const subgradeOnClay = (k1: number, width: number, length: number): number =>
  k1 * (FOOT / width) * clayShape(length / width);

/** `(m + 0.5)/1.5m`: 1 for a square, 0.667 for a long strip. */
export const clayShape = (m: number): number => (m + 0.5) / (1.5 * m);

/** On sand: `k = k₁ ((B + 1 ft)/2B)²`: 1 for the plate itself, 0.25 for a very wide footing. */
export const subgradeOnSand = (k1: number, width: number): number => k1 * ((width + FOOT) / (2 * width)) ** 2;

/** `k = 36 qa` (kcf from ksf): 12 × safety factor 3 at 1 in of settlement. Bowles, Foundation Analysis and Design [bowles]. @param qa - allowable bearing, MPa */
export const subgradeFromBearing = (qa: number): number => (36 * qa) / FOOT;
