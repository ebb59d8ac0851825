/**
 * The ground under the slab. The slab is cast where it lies, so its own weight has set the ground before it could bend:
 * with w from that level the ground's pressure is  p = k w + γ h,  and ground that only pushes lets go where p < 0.
 * Net of the weight it then gives back -γ h. A millionth of a tenth of k is left there, so that a part that hangs on
 * nothing still has an answer; equilibrium shows when that answer means nothing.
 */
import { type BandMatrix, bandIndex } from "../numerics/index.ts";
import type { Floor } from "./floor.ts";
import { addCellForces, type GaussPoints } from "./gauss-points.ts";
import type { Grid } from "./grid.ts";

export interface Bed {
  readonly k: number;
  /** γ h of every cell, MPa */
  readonly weight: Float64Array;
}

/** What an open point keeps of k. */
export const residue = 1e-7;

export const floorBed = (floor: Floor, grid: Grid): Bed => ({
  k: floor.k,
  weight: grid.thickness.map((h) => floor.unitWeight * h),
});

/** 1 at the Gauss points where the ground lets go. Noise about zero counts as touching. */
export const openPoints = (bed: Bed, { area }: GaussPoints, w: Float64Array): Uint8Array => {
  const open = new Uint8Array(w.length);
  let largest = 0;
  for (let i = 0; i < w.length; i++) if (area[i]! > 0) largest = Math.max(largest, Math.abs(w[i]!));
  const noise = -1e-10 * bed.k * largest;
  for (let i = 0; i < w.length; i++) if (area[i]! > 0 && bed.k * w[i]! + bed.weight[i >> 4]! < noise) open[i] = 1;
  return open;
};

export const samePoints = (a: Uint8Array, b: Uint8Array): boolean => a.every((value, i) => value === b[i]);

/** What the ground gives against the slab beyond the weight it already carried, MPa, at Gauss point i. */
export const netReaction = (bed: Bed, i: number, w: number): number => {
  const weight = bed.weight[i >> 4]!;
  return bed.k * w + weight >= 0 ? bed.k * w : residue * bed.k * w - (1 - residue) * weight;
};

/** The weight that open points no longer carry, as a load. */
export const openWeight = (bed: Bed, grid: Grid, points: GaussPoints, open: Uint8Array): Float64Array => {
  const load = new Float64Array(grid.unknowns);
  for (let cell = 0; cell < bed.weight.length; cell++)
    if (bed.weight[cell]! > 0 && anyOpen(open, cell))
      addCellForces(grid, points, cell, (i) => (open[i] === 1 ? (1 - residue) * bed.weight[cell]! : 0), load);
  return load;
};

const anyOpen = (open: Uint8Array, cell: number): boolean => {
  for (let i = 16 * cell; i < 16 * cell + 16; i++) if (open[i] === 1) return true;
  return false;
};

/** Takes the open points' share of k ∫ N N out of the matrix. */
export const loosen = (matrix: BandMatrix, bed: Bed, grid: Grid, points: GaussPoints, open: Uint8Array): void => {
  for (let cell = 0; cell < bed.weight.length; cell++)
    if (anyOpen(open, cell)) loosenCell(matrix, bed.k, grid, points, open, cell);
};

const loosenCell = (
  matrix: BandMatrix,
  k: number,
  grid: Grid,
  { nx, ny, area }: GaussPoints,
  open: Uint8Array,
  cell: number,
): void => {
  const [s, t] = [Math.floor(cell / grid.y.spans), cell % grid.y.spans];
  const start = grid.x.first[s]! * grid.strideX + grid.y.first[t]! * grid.strideY;
  const along = new Float64Array(64); // for each x point: Σ over y points of weight N N
  for (let g = 0; g < 4; g++)
    for (let h = 0; h < 4; h++) {
      const point = 16 * cell + 4 * g + h;
      if (open[point] === 0) continue;
      const weight = (1 - residue) * k * area[point]!;
      for (let b = 0; b < 4; b++)
        for (let d = 0; d < 4; d++)
          along[16 * g + 4 * b + d]! += weight * ny[16 * t + 4 * h + b]! * ny[16 * t + 4 * h + d]!;
    }
  for (let a = 0; a < 4; a++)
    for (let c = 0; c < 4; c++)
      for (let b = 0; b < 4; b++)
        for (let d = 0; d < 4; d++) {
          const row = start + a * grid.strideX + b * grid.strideY;
          const column = start + c * grid.strideX + d * grid.strideY;
          if (column > row) continue;
          let sum = 0;
          for (let g = 0; g < 4; g++)
            sum += nx[16 * s + 4 * g + a]! * nx[16 * s + 4 * g + c]! * along[16 * g + 4 * b + d]!;
          matrix.values[bandIndex(matrix, row, column)]! -= sum;
        }
};
