import { multiplyBand } from "../numerics/index.ts";
import { spanLength } from "./axis.ts";
import { netReaction, residue } from "./bed.ts";
import type { Assembled } from "./contact-search.ts";
import type { Equilibrium, Floor, FloorCase, FloorOptions } from "./floor.ts";
import { addCellForces } from "./gauss-points.ts";
import { resultant } from "./loads.ts";
import { spanRule } from "./span-integrals.ts";

/**
 * What the loads, the ground and the held edges leave over. The ground is summed as it is stated (no tension where it
 * only pushes), not as the matrix has it, so this tells when an answer hangs on nothing.
 */
export const equilibrium = (
  floor: Floor,
  assembled: Assembled,
  { loads }: FloorCase,
  options: FloorOptions,
  load: Float64Array,
  c: Float64Array,
  w: Float64Array,
): Equilibrium => {
  const { grid, points, bed } = assembled;
  const { x0, x1, y0, y1 } = floor.outline;
  const [cx, cy] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const sum = { P: 0, Px: 0, Py: 0, scale: 0 };
  const add = (P: number, x: number, y: number): void => {
    sum.P += P;
    sum.Px += P * (x - cx);
    sum.Py += P * (y - cy);
    sum.scale += Math.abs(P);
  };
  for (const one of loads) {
    const { P, Px, Py } = resultant(one);
    sum.P += P;
    sum.Px += Px - P * cx;
    sum.Py += Py - P * cy;
    sum.scale += Math.abs(P);
  }
  const reaction = (i: number): number => {
    if (options.support === "both-ways") return bed.k * w[i]!;
    const open = bed.k * w[i]! + bed.weight[i >> 4]! < 0;
    return open ? -bed.weight[i >> 4]! : bed.k * w[i]!;
  };
  for (let s = 0, i = 0; s < grid.x.spans; s++)
    for (let t = 0; t < grid.y.spans; t++)
      for (let g = 0; g < 4; g++) {
        const x = grid.x.breaks[s]! + spanLength(grid.x, s) * spanRule.points[g]!;
        for (let h = 0; h < 4; h++, i++)
          add(-points.area[i]! * reaction(i), x, grid.y.breaks[t]! + spanLength(grid.y, t) * spanRule.points[h]!);
      }
  for (const [P, x, y] of heldReactions(assembled, options, load, c, w)) add(P, x, y);
  const scale = sum.scale > 0 ? sum.scale / 2 : 1;
  const arm = Math.hypot(x1 - x0, y1 - y0) / 2;
  return { force: Math.abs(sum.P) / scale, Mx: Math.abs(sum.Py) / (scale * arm), My: Math.abs(sum.Px) / (scale * arm) };
};

/** What the held edges push up with (as loads on the floor), and where. */
const heldReactions = (
  { grid, points, bed, matrix, held }: Assembled,
  options: FloorOptions,
  load: Float64Array,
  c: Float64Array,
  w: Float64Array,
): [number, number, number][] => {
  if (held.length === 0) return [];
  const r = multiplyBand(matrix, c);
  for (let i = 0; i < load.length; i++) r[i]! -= load[i]!;
  if (options.support === "pushes-only")
    for (let cell = 0; cell < bed.weight.length; cell++)
      addCellForces(grid, points, cell, (i) => netReaction(bed, i, w[i]!) - bed.k * w[i]!, r);
  return held.map((i) => {
    const [a, b] = [Math.floor(i / Math.max(grid.strideX, grid.strideY)), i % Math.max(grid.strideX, grid.strideY)];
    const [ix, iy] = grid.strideX >= grid.strideY ? [a, b] : [b, a];
    return [r[i]!, grid.x.abscissae[ix]!, grid.y.abscissae[iy]!];
  });
};

/** Above this the answer leans on the residue of the bed, which is nothing. */
export const largestImbalance = 100 * residue;
