import type { Point } from "../geometry/index.ts";
import { type Axis, evaluate, spanAt, spanLength } from "./axis.ts";
import { curvatureWeights, curvatureWidth } from "./curvature.ts";
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
  const x = functionsAt(grid.x, p.x);
  const y = functionsAt(grid.y, p.y);
  const sum = (fx: Functions, fy: Functions): number => {
    let total = 0;
    for (let a = 0; a < fx.width; a++) {
      const at = (fx.first + a) * grid.strideX + fy.first * grid.strideY;
      let along = 0;
      for (let b = 0; b < fy.width; b++) along += fy.of[b]! * c[at + b * grid.strideY]!;
      total += fx.of[a]! * along;
    }
    return total;
  };
  return {
    w: sum(x.value, y.value),
    wx: sum(x.slope, y.value),
    wy: sum(x.value, y.slope),
    wxx: sum(x.curvature, y.value),
    wyy: sum(x.value, y.curvature),
    wxy: sum(x.slope, y.slope),
    cell: x.span * grid.y.spans + y.span,
  };
};

/** Weights of `width` neighbouring coefficients, from number `first` on. */
interface Functions {
  readonly first: number;
  readonly width: number;
  readonly of: Float64Array;
}

const functionsAt = (axis: Axis, at: number): { span: number } & Record<"value" | "slope" | "curvature", Functions> => {
  const span = spanAt(axis, at);
  const t = Math.min(1, Math.max(0, (at - axis.breaks[span]!) / spanLength(axis, span)));
  const first = axis.first[span]!;
  const [value, slope, curvature] = [new Float64Array(4), new Float64Array(4), new Float64Array(curvatureWidth)];
  evaluate(axis, span, t, 0, value);
  evaluate(axis, span, t, 1, slope);
  const bent = curvatureWeights(axis, span, t, curvature);
  return {
    span,
    value: { first, width: 4, of: value },
    slope: { first, width: 4, of: slope },
    curvature: { first: bent, width: Math.min(curvatureWidth, axis.count - bent), of: curvature },
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
