/**
 * The matrix of  ½ ∫ D [w,xx² + w,yy² + 2ν w,xx w,yy + 2(1-ν) w,xy²] + ½ ∫ k w²  on the spline grid.
 *
 * Method: D is constant in a cell, so every term is a product of two one-dimensional integrals; exact.
 * Timoshenko & Woinowsky-Krieger, Art. 21 and 57 [timoshenko-plates].
 */
import { type BandMatrix, bandMatrix } from "../numerics/index.ts";
import { addCutCell, type CellCover, voidBed, voidStiffness } from "./cut-cells.ts";
import type { Floor } from "./floor.ts";
import type { GaussPoints } from "./gauss-points.ts";
import type { Grid } from "./grid.ts";
import { flexuralRigidity } from "./relative-stiffness.ts";
import type { SpanIntegrals } from "./span-integrals.ts";

export const plateOnBed = (
  floor: Floor,
  grid: Grid,
  ix: SpanIntegrals,
  iy: SpanIntegrals,
  covers: readonly CellCover[] | undefined,
  points: GaussPoints,
): BandMatrix => {
  const matrix = bandMatrix(grid.unknowns, grid.halfBand);
  const { x, y } = grid;
  for (let s = 0; s < x.spans; s++)
    for (let t = 0; t < y.spans; t++) {
      const cell = s * y.spans + t;
      const cover = covers?.[cell];
      const D = flexuralRigidity(floor.E, floor.nu, grid.thickness[cell]!);
      if (cover === undefined || cover.kind === "solid") addCell(matrix, grid, ix, iy, s, t, D, floor.nu, floor.k);
      else addCell(matrix, grid, ix, iy, s, t, voidStiffness * D, floor.nu, voidBed * floor.k);
      if (cover?.kind === "cut") addCutCell(matrix, floor, grid, points, cell, cover.piece, 1 - voidStiffness);
    }
  return matrix;
};

/** Walks the slow axis outside and the fast axis inside; the form is the same whichever of them is x. */
const addCell = (
  { values, width, halfBand }: BandMatrix,
  grid: Grid,
  ix: SpanIntegrals,
  iy: SpanIntegrals,
  s: number,
  t: number,
  D: number,
  nu: number,
  k: number,
): void => {
  const xSlow = grid.strideX >= grid.strideY;
  const [slow, fast] = xSlow ? [ix, iy] : [iy, ix];
  const [su, sv] = xSlow ? [16 * s, 16 * t] : [16 * t, 16 * s];
  const stride = Math.max(grid.strideX, grid.strideY);
  const start = grid.x.first[s]! * grid.strideX + grid.y.first[t]! * grid.strideY;
  for (let a = 0; a < 4; a++)
    for (let c = 0; c <= a; c++) {
      const ac = su + 4 * a + c;
      const curvature = D * slow.curvature[ac]!;
      const mass = slow.mass[ac]!;
      const twist = 2 * (1 - nu) * D * slow.slope[ac]!;
      const ahead = nu * D * slow.mixed[ac]!;
      const behind = nu * D * slow.mixed[su + 4 * c + a]!;
      for (let b = 0; b < 4; b++) {
        const row = start + a * stride + b;
        const at = row * width + halfBand + 3 + start + c * stride - row;
        for (let d = 0; d < (c < a ? 4 : b + 1); d++) {
          const bd = sv + 4 * b + d;
          values[at + d]! +=
            (curvature + k * mass) * fast.mass[bd]! +
            D * mass * fast.curvature[bd]! +
            ahead * fast.mixed[sv + 4 * d + b]! +
            behind * fast.mixed[bd]! +
            twist * fast.slope[bd]!;
        }
      }
    }
};
