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

/** A plan point made ready: the functions that live there. */
export interface Probe {
  readonly at: Point;
  readonly cell: number;
  readonly x: AxisFunctions;
  readonly y: AxisFunctions;
}

/** On a break point the cell to the right and behind is taken, beyond the rim the rim. */
export const probeAt = (grid: Grid, at: Point): Probe =>
  probeOf(grid, at, functionsAt(grid.x, at.x), functionsAt(grid.y, at.y));

/** Every point that has one of the given x and one of the given y. */
export const probesAt = (grid: Grid, xs: readonly number[], ys: readonly number[]): Probe[] => {
  const along = ys.map((y) => functionsAt(grid.y, y));
  return xs.flatMap((x) => {
    const across = functionsAt(grid.x, x);
    return along.map((one, j) => probeOf(grid, { x, y: ys[j]! }, across, one));
  });
};

const probeOf = (grid: Grid, at: Point, x: AxisFunctions, y: AxisFunctions): Probe => ({
  at,
  x,
  y,
  cell: x.span * grid.y.spans + y.span,
});

export const derivativesAt = (grid: Grid, c: Float64Array, p: Point): Derivatives =>
  derivatives(grid, c, probeAt(grid, p));

/** The second derivatives alone. */
export const curvatures = (
  grid: Grid,
  c: Float64Array,
  { x, y }: Pick<Probe, "x" | "y">,
): Pick<Derivatives, "wxx" | "wyy" | "wxy"> => ({
  wxx: sum(grid, c, x.curvature, y.value),
  wyy: sum(grid, c, x.value, y.curvature),
  wxy: sum(grid, c, x.slope, y.slope),
});

const derivatives = (grid: Grid, c: Float64Array, { x, y, cell }: Probe): Derivatives => ({
  w: sum(grid, c, x.value, y.value),
  wx: sum(grid, c, x.slope, y.value),
  wy: sum(grid, c, x.value, y.slope),
  ...curvatures(grid, c, { x, y }),
  cell,
});

const sum = (grid: Grid, c: Float64Array, fx: Functions, fy: Functions): number => {
  let total = 0;
  for (let a = 0; a < fx.width; a++) {
    const at = (fx.first + a) * grid.strideX + fy.first * grid.strideY;
    let along = 0;
    for (let b = 0; b < fy.width; b++) along += fy.of[b]! * c[at + b * grid.strideY]!;
    total += fx.of[a]! * along;
  }
  return total;
};

/** Weights of `width` neighbouring coefficients, from number `first` on. */
interface Functions {
  readonly first: number;
  readonly width: number;
  readonly of: Float64Array;
}

interface AxisFunctions {
  readonly span: number;
  readonly value: Functions;
  readonly slope: Functions;
  readonly curvature: Functions;
}

const functionsAt = (axis: Axis, at: number): AxisFunctions => {
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
