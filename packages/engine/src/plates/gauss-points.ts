import { spanLength, tabulate } from "./axis.ts";
import type { Grid } from "./grid.ts";
import { spanRule } from "./span-integrals.ts";

/** Sixteen points of every cell, point (g, h) of cell (s, t) at 16 cell + 4 g + h, at which the bed is asked. */
export interface GaussPoints {
  /** function values on both axes, as `tabulate` lays them out */
  readonly nx: Float64Array;
  readonly ny: Float64Array;
  /** area that each point stands for, mm² */
  readonly area: Float64Array;
}

export const gaussPoints = (grid: Grid): GaussPoints => {
  const { x, y } = grid;
  const { points, weights } = spanRule;
  const area = new Float64Array(16 * x.spans * y.spans);
  for (let s = 0; s < x.spans; s++)
    for (let t = 0; t < y.spans; t++) {
      const cell = spanLength(x, s) * spanLength(y, t);
      for (let g = 0; g < 4; g++)
        for (let h = 0; h < 4; h++) area[16 * (s * y.spans + t) + 4 * g + h] = cell * weights[g]! * weights[h]!;
    }
  return { nx: tabulate(x, points, 0), ny: tabulate(y, points, 0), area };
};

/** w at every Gauss point, summed one axis after the other. */
export const valuesAtGauss = (grid: Grid, { nx, ny }: GaussPoints, c: Float64Array): Float64Array => {
  const { x, y, strideX, strideY } = grid;
  const out = new Float64Array(16 * x.spans * y.spans);
  const half = new Float64Array(16);
  for (let s = 0; s < x.spans; s++)
    for (let t = 0; t < y.spans; t++) {
      const start = x.first[s]! * strideX + y.first[t]! * strideY;
      for (let a = 0; a < 4; a++) {
        const at = start + a * strideX;
        const [c0, c1, c2, c3] = [c[at]!, c[at + strideY]!, c[at + 2 * strideY]!, c[at + 3 * strideY]!];
        for (let h = 0; h < 4; h++) {
          const n = 16 * t + 4 * h;
          half[4 * a + h] = c0 * ny[n]! + c1 * ny[n + 1]! + c2 * ny[n + 2]! + c3 * ny[n + 3]!;
        }
      }
      const cell = 16 * (s * y.spans + t);
      for (let g = 0; g < 4; g++) {
        const n = 16 * s + 4 * g;
        const [n0, n1, n2, n3] = [nx[n]!, nx[n + 1]!, nx[n + 2]!, nx[n + 3]!];
        for (let h = 0; h < 4; h++)
          out[cell + 4 * g + h] = n0 * half[h]! + n1 * half[4 + h]! + n2 * half[8 + h]! + n3 * half[12 + h]!;
      }
    }
  return out;
};

/** Adds Σ field × area × N over the Gauss points of one cell to a right-hand side. */
export const addCellForces = (
  grid: Grid,
  { nx, ny, area }: GaussPoints,
  cell: number,
  field: (point: number) => number,
  into: Float64Array,
): void => {
  const { x, y, strideX, strideY } = grid;
  const [s, t] = [Math.floor(cell / y.spans), cell % y.spans];
  const start = x.first[s]! * strideX + y.first[t]! * strideY;
  for (let g = 0; g < 4; g++)
    for (let h = 0; h < 4; h++) {
      const point = 16 * cell + 4 * g + h;
      const force = field(point) * area[point]!;
      if (force === 0) continue;
      for (let a = 0; a < 4; a++) {
        const fa = force * nx[16 * s + 4 * g + a]!;
        for (let b = 0; b < 4; b++) into[start + a * strideX + b * strideY]! += fa * ny[16 * t + 4 * h + b]!;
      }
    }
};
