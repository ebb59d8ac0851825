/**
 * The cheapest way to cut a slab into panels by straight cuts, each running through the piece it divides.
 *
 *   cost(box) = min( panel cost,  min over cuts [ cost of the cut + cost(one side) + cost(other side) ] )
 *
 * Method: dynamic programming over all boxes of the grid, small ones first: every layout of this kind on the grid is
 * covered, so the result is the cheapest of them. Cost: (pairs of x places) × (pairs of y places) × places; boxes that
 * are fine as they are need no look at their cuts. Fails: when told to stop.
 */
import type { GridModel } from "./grid-model.ts";
import type { JointTask, PlanWatch } from "./joint-plan.ts";
import { panelCost, UNMET } from "./panel-cost.ts";

/** A box of the grid by its places. */
export interface Box {
  readonly i0: number;
  readonly i1: number;
  readonly j0: number;
  readonly j1: number;
}

/** A cut through a box: at place `at` of the axis. */
export interface Cut {
  readonly axis: "x" | "y";
  readonly at: number;
  readonly box: Box;
}

export interface Partition {
  readonly cost: number;
  readonly cuts: readonly Cut[];
  readonly panels: readonly Box[];
}

export const partition = (task: JointTask, model: GridModel, watch: PlanWatch): Partition | "stopped" => {
  const { xs, ys } = model;
  const [nx, ny] = [xs.length, ys.length];
  const [px, py] = [pairs(nx), pairs(ny)];
  const best = new Float64Array(px.count * py.count); // by pair of x places, then pair of y places
  const choice = new Int16Array(px.count * py.count); // 0: a panel; i > 0: cut at x place i; −j: at y place j
  const [cutX, cutY] = [cutCosts(model.x, nx, ny, py), cutCosts(model.y, ny, nx, px)];
  const least = new Float64Array(py.count);
  const chosen = new Int16Array(py.count);
  const limit = task.spacing + 1e-6;
  let done = 0;
  for (let dx = 1; dx < nx; dx++) {
    if (watch.shouldStop?.()) return "stopped";
    for (let i0 = 0; i0 + dx < nx; i0++) {
      const i1 = i0 + dx;
      least.fill(Number.POSITIVE_INFINITY);
      chosen.fill(0);
      for (let i = i0 + 1; i < i1; i++) {
        const [one, other, cut] = [px.at(i0, i) * py.count, px.at(i, i1) * py.count, i * py.count];
        for (let p = 0; p < py.count; p++) {
          const total = cutX[cut + p]! + best[one + p]! + best[other + p]!;
          if (total < least[p]!) {
            least[p] = total;
            chosen[p] = i;
          }
        }
      }
      const base = px.at(i0, i1) * py.count;
      for (let dy = 1; dy < ny; dy++) {
        for (let j0 = 0; j0 + dy < ny; j0++) {
          const j1 = j0 + dy;
          const p = py.at(j0, j1);
          const large = xs[i1]! - xs[i0]! > limit || ys[j1]! - ys[j0]! > limit;
          const panel = large ? Number.POSITIVE_INFINITY : leaf(task, model, { i0, i1, j0, j1 });
          if (panel <= least[p]!) {
            least[p] = panel;
            chosen[p] = 0;
          }
          if (panel > 0) {
            for (let j = j0 + 1; j < j1; j++) {
              const total =
                cutY[j * px.count + px.at(i0, i1)]! + best[base + py.at(j0, j)]! + best[base + py.at(j, j1)]!;
              if (total < least[p]!) {
                least[p] = total;
                chosen[p] = -j;
              }
            }
          }
          // too large a panel costs more than any layout that keeps the spacing: look at it only where none does
          if (large && least[p]! >= UNMET.aspect) {
            const whole = leaf(task, model, { i0, i1, j0, j1 });
            if (whole <= least[p]!) {
              least[p] = whole;
              chosen[p] = 0;
            }
          }
          best[base + p] = least[p]!;
          choice[base + p] = chosen[p]!;
        }
      }
      done += py.count;
    }
    watch.progress?.(done / best.length);
  }
  const at = ({ i0, i1, j0, j1 }: Box) => px.at(i0, i1) * py.count + py.at(j0, j1);
  const whole = { i0: 0, i1: nx - 1, j0: 0, j1: ny - 1 };
  return {
    cost: best[at(whole)]!,
    ...collect(
      whole,
      (box) => choice[at(box)]!,
      (box) => cells(model, box) > 0,
    ),
  };
};

/** Numbering of the pairs a < b of n places. */
interface Pairs {
  readonly count: number;
  readonly at: (a: number, b: number) => number;
}

const pairs = (n: number): Pairs => {
  const row = Int32Array.from({ length: n }, (_, a) => a * n - (a * (a + 1)) / 2 - a - 1);
  return { count: (n * (n - 1)) / 2, at: (a, b) => row[a]! + b };
};

/** Cost of a cut at each line over each stretch: Infinity where barred, 0 along or outside the slab's edge. */
const cutCosts = (sums: GridModel["x"], lines: number, stride: number, stretches: Pairs): Float64Array => {
  const costs = new Float64Array(lines * stretches.count);
  for (let line = 0; line < lines; line++) {
    for (let from = 0; from < stride; from++) {
      for (let to = from + 1; to < stride; to++) {
        const [a, b] = [line * stride + from, line * stride + to];
        const length = sums.length[b]! - sums.length[a]!;
        const open = length === 0 ? 0 : length * sums.price[line]! + sums.stop[line]!;
        costs[line * stretches.count + stretches.at(from, to)] =
          sums.barred[b]! === sums.barred[a]! ? open : Number.POSITIVE_INFINITY;
      }
    }
  }
  return costs;
};

const cells = ({ inside, ys }: GridModel, { i0, i1, j0, j1 }: Box): number => {
  const n = ys.length;
  return inside[i1 * n + j1]! - inside[i0 * n + j1]! - inside[i1 * n + j0]! + inside[i0 * n + j0]!;
};

const leaf = (task: JointTask, model: GridModel, box: Box): number => {
  const count = cells(model, box);
  if (count === 0) return 0;
  const rect = { x0: model.xs[box.i0]!, y0: model.ys[box.j0]!, x1: model.xs[box.i1]!, y1: model.ys[box.j1]! };
  const cost = panelCost(task, rect);
  return count === (box.i1 - box.i0) * (box.j1 - box.j0) ? cost : cost + UNMET["re-entrant corner"];
};

const collect = (box: Box, choice: (box: Box) => number, solid: (box: Box) => boolean): Omit<Partition, "cost"> => {
  const c = choice(box);
  if (c === 0) return { cuts: [], panels: solid(box) ? [box] : [] };
  const [one, other]: readonly Box[] =
    c > 0
      ? [
          { ...box, i1: c },
          { ...box, i0: c },
        ]
      : [
          { ...box, j1: -c },
          { ...box, j0: -c },
        ];
  const [a, b] = [collect(one!, choice, solid), collect(other!, choice, solid)];
  return {
    cuts: [{ axis: c > 0 ? "x" : "y", at: Math.abs(c), box }, ...a.cuts, ...b.cuts],
    panels: [...a.panels, ...b.panels],
  };
};
