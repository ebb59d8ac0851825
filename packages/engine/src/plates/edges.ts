import { type BandMatrix, bandIndex } from "../numerics/index.ts";
import type { Floor, Side } from "./floor.ts";
import type { Grid } from "./grid.ts";

/**
 * The unknowns that a held edge takes away: the first function of an open spline is the only one with a value at the
 * end, the second the only other one with a slope there.
 */
export const heldUnknowns = (floor: Floor, grid: Grid): number[] => {
  const held = new Set<number>();
  const rows = { simple: 1, clamped: 2, free: 0 };
  for (const side of ["x0", "x1", "y0", "y1"] as Side[]) {
    const depth = rows[floor.edges?.[side] ?? "free"];
    const [across, along] = side.startsWith("x") ? [grid.x, grid.y] : [grid.y, grid.x];
    const [strideAcross, strideAlong] = side.startsWith("x")
      ? [grid.strideX, grid.strideY]
      : [grid.strideY, grid.strideX];
    for (let m = 0; m < depth; m++) {
      const i = side.endsWith("0") ? m : across.count - 1 - m;
      for (let j = 0; j < along.count; j++) held.add(i * strideAcross + j * strideAlong);
    }
  }
  return [...held];
};

/** Makes the held unknowns stand alone in the matrix, so that a zero on the right keeps them zero. */
export const holdUnknowns = (matrix: BandMatrix, held: readonly number[]): void => {
  for (const i of held) {
    for (let j = Math.max(0, i - matrix.halfBand); j < i; j++) matrix.values[bandIndex(matrix, i, j)] = 0;
    const end = Math.min(matrix.order - 1, i + matrix.halfBand);
    for (let r = i + 1; r <= end; r++) matrix.values[bandIndex(matrix, r, i)] = 0;
    matrix.values[bandIndex(matrix, i, i)] = 1;
  }
};
