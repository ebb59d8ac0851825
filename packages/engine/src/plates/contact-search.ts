/**
 * Find w with  Kp w + ∫ r(w) N = f,  r the net reaction of ground that only pushes (bed.ts).
 *
 * Method: Newton on the set of touching Gauss points. The energy is convex and its slope piecewise linear, so the full
 * step ends the search as soon as the set repeats; a step that overshoots is cut at the lowest energy along it, which
 * makes the search safe from any start. Needs: the bilateral matrix Kp + k ∫ N N, unfactored. Leaves: the factor and set
 * of the last step, with which the next load case starts warm. Fails: more than `most` steps. Cost: bench/plates.ts.
 */
import {
  type BandFactor,
  type BandKernel,
  type BandMatrix,
  copyBand,
  findRoot,
  multiplyBand,
} from "../numerics/index.ts";
import { type Unable, unable } from "../quantities/workings.ts";
import { type Bed, loosen, netReaction, openPoints, openWeight, samePoints } from "./bed.ts";
import { holdUnknowns } from "./edges.ts";
import { type GaussPoints, valuesAtGauss } from "./gauss-points.ts";
import type { Grid } from "./grid.ts";

/** Everything of a floor that does not change from one load case to the next. */
export interface Assembled {
  readonly grid: Grid;
  readonly points: GaussPoints;
  readonly bed: Bed;
  /** plate, joints and full bed, before any unknown is held */
  readonly matrix: BandMatrix;
  readonly held: readonly number[];
  readonly kernel: BandKernel;
}

/** A set of open points with the factor that belongs to it. */
export interface Grip {
  readonly open: Uint8Array;
  readonly factor: BandFactor;
  /** the weight of the open points as a load */
  readonly weight: Float64Array;
}

export interface Found {
  readonly c: Float64Array;
  readonly w: Float64Array;
  readonly grip: Grip;
  readonly factorings: number;
}

const most = 60;

/** Factorises for a given set of open points. */
export const grip = (floor: Assembled, open: Uint8Array): Grip | Unable => {
  const matrix = copyBand(floor.matrix);
  loosen(matrix, floor.bed, floor.grid, floor.points, open);
  holdUnknowns(matrix, floor.held);
  const factor = floor.kernel.factor(matrix);
  if (factor.kind === "not-positive")
    return unable("plates", `the floor is not held: unknown ${factor.row} of ${matrix.order} has no stiffness`);
  return { open, factor, weight: openWeight(floor.bed, floor.grid, floor.points, open) };
};

/** One linear solution with the open points as they stand. */
export const solveWith = (floor: Assembled, { factor, weight }: Grip, load: Float64Array): Float64Array => {
  const c = new Float64Array(factor.matrix.rows);
  for (let i = 0; i < load.length; i++) c[i] = load[i]! + weight[i]!;
  for (const i of floor.held) c[i] = 0;
  floor.kernel.solve(factor, c);
  return c.subarray(0, load.length);
};

export const findContact = (floor: Assembled, load: Float64Array, start: Grip): Found | Unable => {
  const { grid, points, bed } = floor;
  let hold = start;
  let c = solveWith(floor, hold, load);
  let w = valuesAtGauss(grid, points, c);
  for (let factorings = 0; factorings < most; ) {
    const open = openPoints(bed, points, w);
    if (samePoints(open, hold.open)) return { c, w, grip: hold, factorings };
    const next = grip(floor, open);
    if ("unable" in next) return next;
    factorings++;
    hold = next;
    const c1 = solveWith(floor, hold, load);
    const w1 = valuesAtGauss(grid, points, c1);
    const t = samePoints(openPoints(bed, points, w1), open) ? 1 : lowest(floor, load, c, w, c1, w1);
    if (t === 1) [c, w] = [c1, w1];
    else {
      c = c.map((value, i) => value + t * (c1[i]! - value));
      w = w.map((value, i) => value + t * (w1[i]! - value));
    }
  }
  return unable("plates", `the search for where the slab touches the ground did not settle in ${most} steps`);
};

/** How far to go from c toward c1: all the way unless the energy turns up before. */
const lowest = (
  { matrix, bed, points }: Assembled,
  load: Float64Array,
  c: Float64Array,
  w: Float64Array,
  c1: Float64Array,
  w1: Float64Array,
): number => {
  const d = c1.map((value, i) => value - c[i]!);
  const Kd = multiplyBand(matrix, d);
  let atStart = 0; // slope of the plate's and the load's part at t = 0
  let curvature = 0;
  for (let i = 0; i < d.length; i++) {
    atStart += Kd[i]! * c[i]! - d[i]! * load[i]!;
    curvature += Kd[i]! * d[i]!;
  }
  for (let i = 0; i < w.length; i++) {
    const step = w1[i]! - w[i]!;
    atStart -= bed.k * points.area[i]! * w[i]! * step; // the matrix holds the full bed: take it out here
    curvature -= bed.k * points.area[i]! * step * step;
  }
  const slope = (t: number): number => {
    let sum = atStart + t * curvature;
    for (let i = 0; i < w.length; i++) {
      const step = w1[i]! - w[i]!;
      sum += points.area[i]! * netReaction(bed, i, w[i]! + t * step) * step;
    }
    return sum;
  };
  return slope(1) <= 0 || slope(0) >= 0 ? 1 : findRoot(slope, 0, 1, 1e-6);
};
