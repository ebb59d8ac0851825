import type { Point, Rect } from "../geometry/index.ts";

/** D = E h³ / 12(1 - ν²), N·mm. Timoshenko & Woinowsky-Krieger, eq. (3) of ch. 1 [timoshenko-plates]. */
export const flexuralRigidity = (E: number, nu: number, h: number): number => (E * h * h * h) / (12 * (1 - nu * nu));

/** Radius of relative stiffness l = (D/k)^¼, mm. Westergaard 1926 [westergaard-1926]. */
export const relativeStiffness = (E: number, nu: number, h: number, k: number): number =>
  (flexuralRigidity(E, nu, h) / k) ** 0.25;

/**
 * A rectangle big enough to stand for a floor without end: `reach` times l beyond the given points (6 l leaves about
 * 1 % of the deflection at the rim and less than 0.02 % at the load; a reflected wave dies as e^(-√2 r/l)).
 */
export const unboundedOutline = (around: readonly Point[], l: number, reach = 6): Rect => {
  const xs = around.map((p) => p.x);
  const ys = around.map((p) => p.y);
  return {
    x0: Math.min(...xs) - reach * l,
    y0: Math.min(...ys) - reach * l,
    x1: Math.max(...xs) + reach * l,
    y1: Math.max(...ys) + reach * l,
  };
};
