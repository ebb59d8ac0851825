import { distanceToSegment } from "../geometry/index.ts";
import { type Axis, spanLength, tabulate } from "./axis.ts";
import { curvaturePoints, curvatureWeights, curvatureWidth } from "./curvature.ts";
import { type Probe, probeAt } from "./field.ts";
import type { Floor } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { besidePadCorners, besidePadEdges, type PadEdge, padEdges } from "./pad-edges.ts";
import { flexuralRigidity } from "./relative-stiffness.ts";
import { insideFloor, rimPoints } from "./rim.ts";

/**
 * Where the answer is looked at: five points of every span on each axis (both ends of every span, so that each side of
 * a line gives its own value), with the functions there, the same for every load case.
 */
export interface Samples {
  readonly x: AxisSamples;
  readonly y: AxisSamples;
  /**
   * 1 where sample (i, j), at i * y.count + j, is not asked for stress: within h (of the thinner side) of a pad edge, and
   * on the straight continuation of one, where the curvature would have to be extrapolated past the pad's corner
   */
  readonly nearPadEdge: Uint8Array;
  /** 1 where sample (i, j) is not concrete; undefined where the floor fills its outline */
  readonly outside: Uint8Array | undefined;
  /** points along a slanting rim */
  readonly rim: readonly Probe[];
  /** points h of the thinner side away from the pad edges */
  readonly thinSide: readonly Probe[];
  readonly thickSide: readonly Probe[];
  /** 6 D / h² of every cell: MPa for a curvature of 1 /mm */
  readonly stressPerCurvature: Float64Array;
}

export interface AxisSamples {
  readonly count: number;
  /** mm */
  readonly at: Float64Array;
  /** values and slopes of the four functions of the span, which start at axis.first[span] */
  readonly value: Float64Array;
  readonly slope: Float64Array;
  /** `curvatureWidth` weights of the second derivative, which start at function `curvatureFirst` */
  readonly curvature: Float64Array;
  readonly curvatureFirst: Int32Array;
  /** 1 on a line across which only the curvature may jump */
  readonly onPadLine: Uint8Array;
}

/** The ends, the middle and the two points at which the curvature is most exact. */
const localPoints = [0, curvaturePoints[0], 0.5, curvaturePoints[1], 1];
export const perSpan = localPoints.length;

export const floorSamples = (floor: Floor, grid: Grid): Samples => {
  const edges = padEdges(grid);
  const [x, y] = [axisSamples(grid.x), axisSamples(grid.y)];
  return {
    x,
    y,
    nearPadEdge: nearPadEdge(x, y, edges),
    outside: outsideFloor(floor, x, y),
    rim: rimPoints(floor, grid).map((p) => probeAt(grid, p)),
    thinSide: [...besidePadEdges(floor, edges, "thin"), ...besidePadCorners(floor)].map((p) => probeAt(grid, p)),
    thickSide: besidePadEdges(floor, edges, "thick").map((p) => probeAt(grid, p)),
    stressPerCurvature: grid.thickness.map((h) => (6 * flexuralRigidity(floor.E, floor.nu, h)) / (h * h)),
  };
};

const outsideFloor = (floor: Floor, x: AxisSamples, y: AxisSamples): Uint8Array | undefined => {
  if (!floor.within) return undefined;
  const inside = insideFloor(floor);
  const outside = new Uint8Array(x.count * y.count);
  for (let i = 0; i < x.count; i++)
    for (let j = 0; j < y.count; j++) if (!inside({ x: x.at[i]!, y: y.at[j]! })) outside[i * y.count + j] = 1;
  return outside;
};

const axisSamples = (axis: Axis): AxisSamples => {
  const count = perSpan * axis.spans;
  const at = new Float64Array(count);
  const curvature = new Float64Array(curvatureWidth * count);
  const curvatureFirst = new Int32Array(count);
  const onPadLine = new Uint8Array(count);
  for (let i = 0; i < count; i++) {
    const [s, t] = [Math.floor(i / perSpan), localPoints[i % perSpan]!];
    at[i] = axis.breaks[s]! + spanLength(axis, s) * t;
    curvatureFirst[i] = curvatureWeights(axis, s, t, curvature, curvatureWidth * i);
    const [before, after] = [t === 0 ? s - 1 : s, t === 1 ? s + 1 : s];
    if (after > before && before >= 0 && after < axis.spans && axis.first[after]! - axis.first[before]! === 2)
      onPadLine[i] = 1;
  }
  return {
    count,
    at,
    value: tabulate(axis, localPoints, 0),
    slope: tabulate(axis, localPoints, 1),
    curvature,
    curvatureFirst,
    onPadLine,
  };
};

const nearPadEdge = (x: AxisSamples, y: AxisSamples, edges: readonly PadEdge[]): Uint8Array => {
  const near = new Uint8Array(x.count * y.count);
  for (let i = 0; i < x.count; i++)
    for (let j = 0; j < y.count; j++) near[i * y.count + j] = x.onPadLine[i]! | y.onPadLine[j]!;
  for (const { a, b, thin } of edges)
    for (let i = 0; i < x.count; i++) {
      if (x.at[i]! > Math.max(a.x, b.x) + thin || x.at[i]! < Math.min(a.x, b.x) - thin) continue;
      for (let j = 0; j < y.count; j++) {
        if (y.at[j]! > Math.max(a.y, b.y) + thin || y.at[j]! < Math.min(a.y, b.y) - thin) continue;
        if (distanceToSegment({ x: x.at[i]!, y: y.at[j]! }, { a, b }) < thin * (1 - 1e-9)) near[i * y.count + j] = 1;
      }
    }
  return near;
};
