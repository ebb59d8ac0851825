import { distanceToSegment, type Point } from "../geometry/index.ts";
import { spanLength, tabulate } from "./axis.ts";
import type { Floor } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { besidePadCorners, besidePadEdges, type PadEdge, padEdges } from "./pad-edges.ts";

/**
 * Where the answer is looked at: 5 × 5 points of every cell (both ends of every span, so that each side of a line gives
 * its own value), as tables of the functions and their derivatives there, the same for every load case.
 */
export interface Samples {
  readonly x: readonly [Float64Array, Float64Array, Float64Array];
  readonly y: readonly [Float64Array, Float64Array, Float64Array];
  /** 1 where the sample lies within h (of the thinner side) of a pad edge: not asked point by point */
  readonly nearPadEdge: Uint8Array;
  readonly thinSide: readonly Point[];
  readonly thickSide: readonly Point[];
}

/** The ends, the middle and the two points of a cubic at which its second derivative is most exact. */
export const localPoints = [0, 0.5 - Math.sqrt(1 / 12), 0.5, 0.5 + Math.sqrt(1 / 12), 1];

export const floorSamples = (floor: Floor, grid: Grid): Samples => {
  const edges = padEdges(grid);
  return {
    x: [tabulate(grid.x, localPoints, 0), tabulate(grid.x, localPoints, 1), tabulate(grid.x, localPoints, 2)],
    y: [tabulate(grid.y, localPoints, 0), tabulate(grid.y, localPoints, 1), tabulate(grid.y, localPoints, 2)],
    nearPadEdge: nearPadEdge(grid, edges),
    thinSide: [...besidePadEdges(floor, edges, "thin"), ...besidePadCorners(floor)],
    thickSide: besidePadEdges(floor, edges, "thick"),
  };
};

/** Plan coordinates of sample (g, h) of cell (s, t), numbered 25 cell + 5 g + h. */
export const samplePosition = (grid: Grid, sample: number): Point => {
  const cell = Math.floor(sample / 25);
  const [s, t] = [Math.floor(cell / grid.y.spans), cell % grid.y.spans];
  return {
    x: grid.x.breaks[s]! + spanLength(grid.x, s) * localPoints[Math.floor((sample % 25) / 5)]!,
    y: grid.y.breaks[t]! + spanLength(grid.y, t) * localPoints[sample % 5]!,
  };
};

const nearPadEdge = (grid: Grid, edges: readonly PadEdge[]): Uint8Array => {
  const near = new Uint8Array(25 * grid.thickness.length);
  const { x, y } = grid;
  for (const { a, b, thin } of edges)
    for (let s = 0; s < x.spans; s++) {
      if (x.breaks[s]! > Math.max(a.x, b.x) + thin || x.breaks[s + 1]! < Math.min(a.x, b.x) - thin) continue;
      for (let t = 0; t < y.spans; t++) {
        if (y.breaks[t]! > Math.max(a.y, b.y) + thin || y.breaks[t + 1]! < Math.min(a.y, b.y) - thin) continue;
        const cell = s * y.spans + t;
        for (let i = 25 * cell; i < 25 * cell + 25; i++)
          if (distanceToSegment(samplePosition(grid, i), { a, b }) < thin * (1 - 1e-9)) near[i] = 1;
      }
    }
  return near;
};
