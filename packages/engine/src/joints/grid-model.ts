/** The task laid on its grid: sums along lines, so that any stretch of a line and any box is judged in constant time. */
import { type Polygon, pointInPolygon } from "../geometry/index.ts";
import { type Candidates, evenDivision, specialPlaces } from "./candidates.ts";
import type { JointTask, LineAxis } from "./joint-plan.ts";
import { barredBy, lineBlocks } from "./line-blocks.ts";

/** Sums for the lines of one axis; line i, unit j between places j and j+1 of the other axis. */
export interface LineSums {
  /** saw cut up to unit j, mm: [i * units + j] */
  readonly length: Float64Array;
  /** barred units up to j */
  readonly barred: Int32Array;
  /** cost per mm of cut: 1 and a little for places off the even division */
  readonly price: Float64Array;
  /** cost of stopping short, for lines that cannot run right through */
  readonly stop: Float64Array;
}

export interface GridModel {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly x: LineSums;
  readonly y: LineSums;
  /** cells inside the slab, summed from the corner: [i * ys.length + j] */
  readonly inside: Int32Array;
}

/** Price of being off the even division by one spacing, as a share of the cut. */
const UNEVEN = 0.05;
/** Settles ties, so that facing cuts choose the same place and join into one line. */
const TIE = 1e-7;

export const gridModel = (task: JointTask, { xs, ys }: Candidates): GridModel => {
  const [nx, ny] = [xs.length, ys.length];
  const cell = new Uint8Array((nx - 1) * (ny - 1));
  for (let i = 0; i + 1 < nx; i++) {
    for (let j = 0; j + 1 < ny; j++) cell[i * (ny - 1) + j] = isInside(task.slab, xs, ys, i, j) ? 1 : 0;
  }
  const inside = new Int32Array(nx * ny);
  for (let i = 1; i < nx; i++) {
    for (let j = 1; j < ny; j++) {
      const own = cell[(i - 1) * (ny - 1) + j - 1]!;
      inside[i * ny + j] = own + inside[(i - 1) * ny + j]! + inside[i * ny + j - 1]! - inside[(i - 1) * ny + j - 1]!;
    }
  }
  const both = (axis: LineAxis, i: number, j: number): boolean =>
    axis === "x"
      ? i > 0 && i < nx - 1 && cell[(i - 1) * (ny - 1) + j] === 1 && cell[i * (ny - 1) + j] === 1
      : i > 0 && i < ny - 1 && cell[j * (ny - 1) + i - 1] === 1 && cell[j * (ny - 1) + i] === 1;
  return { xs, ys, inside, x: lineSums(task, "x", xs, ys, both), y: lineSums(task, "y", ys, xs, both) };
};

const isInside = (slab: Polygon, xs: readonly number[], ys: readonly number[], i: number, j: number): boolean =>
  pointInPolygon({ x: (xs[i]! + xs[i + 1]!) / 2, y: (ys[j]! + ys[j + 1]!) / 2 }, slab) === "inside";

const lineSums = (
  task: JointTask,
  axis: LineAxis,
  lines: readonly number[],
  across: readonly number[],
  cuts: (axis: LineAxis, i: number, j: number) => boolean,
): LineSums => {
  const [n, m] = [lines.length, across.length];
  const sums = {
    length: new Float64Array(n * m),
    barred: new Int32Array(n * m),
    price: new Float64Array(n),
    stop: new Float64Array(n),
  };
  const liked = [...evenDivision(task, axis), ...task.wanted.filter((w) => w.axis === axis).map((w) => w.at)];
  const meant = new Set([...task.slab.map((p) => p[axis]), ...columnLines(task, axis)]);
  for (let i = 0; i < n; i++) {
    const at = lines[i]!;
    const blocks = lineBlocks(task, axis, at);
    for (let j = 0; j + 1 < m; j++) {
      const here = cuts(axis, i, j);
      const barred = here && barredBy(blocks, across[j]!, across[j + 1]!) !== undefined;
      sums.length[i * m + j + 1] = sums.length[i * m + j]! + (here ? across[j + 1]! - across[j]! : 0);
      sums.barred[i * m + j + 1] = sums.barred[i * m + j]! + (barred ? 1 : 0);
    }
    const off = meant.has(at) || liked.length === 0 ? 0 : Math.min(...liked.map((v) => Math.abs(v - at)));
    sums.price[i] = 1 + (UNEVEN * off) / task.spacing + TIE * i;
    sums.stop[i] = sums.barred[i * m + m - 1]! > 0 ? task.stopCost : 0;
  }
  return sums;
};

const columnLines = (task: JointTask, axis: LineAxis): readonly number[] => {
  const middles = task.columns.map(({ rect }) => (axis === "x" ? (rect.x0 + rect.x1) / 2 : (rect.y0 + rect.y1) / 2));
  const special = specialPlaces(task, axis);
  return special.filter((v) => middles.includes(v));
};
