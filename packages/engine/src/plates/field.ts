import type { Point } from "../geometry/index.ts";
import { evaluate, spanAt, spanLength } from "./axis.ts";
import type { Moments } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { flexuralRigidity } from "./relative-stiffness.ts";

/** w and its derivatives at a point of one cell. */
export interface Derivatives {
  readonly w: number;
  readonly wx: number;
  readonly wy: number;
  readonly wxx: number;
  readonly wyy: number;
  readonly wxy: number;
  /** number of the cell the point was taken from */
  readonly cell: number;
}

/** Derivatives at a plan point; on a break point those of the cell to the right and behind, beyond the rim those of the rim. */
export const derivativesAt = (grid: Grid, c: Float64Array, p: Point): Derivatives => {
  const { x, y, strideX, strideY } = grid;
  const [s, t] = [spanAt(x, p.x), spanAt(y, p.y)];
  const along = (u: number): number => Math.min(1, Math.max(0, u));
  const [fx, fy] = [new Float64Array(12), new Float64Array(12)];
  const tx = along((p.x - x.breaks[s]!) / spanLength(x, s));
  const ty = along((p.y - y.breaks[t]!) / spanLength(y, t));
  for (const order of [0, 1, 2] as const) {
    evaluate(x, s, tx, order, fx, 4 * order);
    evaluate(y, t, ty, order, fy, 4 * order);
  }
  const start = x.first[s]! * strideX + y.first[t]! * strideY;
  const sum = (dx: number, dy: number): number => {
    let total = 0;
    for (let a = 0; a < 4; a++)
      for (let b = 0; b < 4; b++) total += fx[4 * dx + a]! * fy[4 * dy + b]! * c[start + a * strideX + b * strideY]!;
    return total;
  };
  return {
    w: sum(0, 0),
    wx: sum(1, 0),
    wy: sum(0, 1),
    wxx: sum(2, 0),
    wyy: sum(0, 2),
    wxy: sum(1, 1),
    cell: s * y.spans + t,
  };
};

/** M = -D [(1-ν) ∇∇w + ν Δw I], sagging positive. Timoshenko & Woinowsky-Krieger, Art. 21 (Mxy of opposite sign) [timoshenko-plates]. */
export const momentsFrom = (E: number, nu: number, h: number, d: Pick<Derivatives, "wxx" | "wyy" | "wxy">): Moments => {
  const D = flexuralRigidity(E, nu, h);
  return { Mx: -D * (d.wxx + nu * d.wyy), My: -D * (d.wyy + nu * d.wxx), Mxy: -D * (1 - nu) * d.wxy };
};

/** The two principal moments, larger first. */
export const principalMoments = ({ Mx, My, Mxy }: Moments): [number, number] => {
  const middle = (Mx + My) / 2;
  const radius = Math.hypot((Mx - My) / 2, Mxy);
  return [middle + radius, middle - radius];
};
