import { type BandKernel, plainBandKernel } from "../numerics/index.ts";
import { isUnable, type Unable, unable } from "../quantities/workings.ts";
import { floorBed } from "./bed.ts";
import { type Assembled, type Found, findContact, type Grip, grip, solveWith } from "./contact-search.ts";
import { cellCovers, cutAreas } from "./cut-cells.ts";
import { heldUnknowns } from "./edges.ts";
import { equilibrium, largestImbalance } from "./equilibrium.ts";
import type { Floor, FloorCase, FloorOptions, FloorResult } from "./floor.ts";
import { gaussPoints, valuesAtGauss } from "./gauss-points.ts";
import { floorGrid, type Grid } from "./grid.ts";
import { addJointSprings } from "./joints.ts";
import { loadVector } from "./loads.ts";
import { refusal, tooLarge } from "./refusals.ts";
import { floorResult } from "./result.ts";
import { floorSamples } from "./samples.ts";
import { spanIntegrals } from "./span-integrals.ts";
import { plateOnBed } from "./stiffness.ts";

/**
 * The plate on elastic ground:  ∇²(D ∇²w) [with ν] + p(w) = q,  p = k w + γ h, never negative where the ground only pushes.
 *
 * Method: Ritz with tensor-product cubic B-splines on graded spans; repeated knots make pad edges, hinges and joints.
 * Needs: a floor, its cases, where to look closely. Leaves: nothing of the input is touched.
 * Fails: as `Unable`, when an input is no number, a load hangs over the edge, or ground that only pushes cannot carry it.
 * Cost: one factorisation per floor, and one to four more for each case with lift-off; bench/plates.ts.
 */
export const solveFloor = (
  floor: Floor,
  cases: readonly FloorCase[],
  options: FloorOptions,
  kernel: BandKernel = plainBandKernel,
): FloorResult[] | Unable => {
  const refused = refusal(floor, cases, options);
  if (refused) return refused;
  const grid = floorGrid(floor, options);
  const large = tooLarge(grid);
  if (large) return large;
  const assembled = assemble(floor, grid, kernel);
  const samples = floorSamples(floor, grid);
  let start = grip(assembled, new Uint8Array(assembled.points.area.length));
  const results: FloorResult[] = [];
  for (const one of cases) {
    if (isUnable(start)) return start;
    const load = loadVector(floor, grid, one, options);
    if (isUnable(load)) return load;
    const found =
      options.support === "both-ways" ? linear(assembled, load, start) : findContact(assembled, load, start);
    if (isUnable(found)) return found;
    start = found.grip;
    const balance = equilibrium(floor, assembled, one, options, load, found.c, found.w);
    if (Math.max(balance.force, balance.Mx, balance.My) > largestImbalance)
      return unable(
        `plates: ${one.name}`,
        "the slab lifts off or tips: ground that only pushes cannot carry this load",
      );
    results.push(floorResult(one.name, floor, assembled, samples, options, found, balance));
  }
  return results;
};

const assemble = (floor: Floor, grid: Grid, kernel: BandKernel): Assembled => {
  const [ix, iy] = [spanIntegrals(grid.x), spanIntegrals(grid.y)];
  const covers = cellCovers(floor, grid);
  const points = covers ? cutAreas(floor, grid, covers, gaussPoints(grid)) : gaussPoints(grid);
  const matrix = plateOnBed(floor, grid, ix, iy, covers, points);
  addJointSprings(matrix, floor, grid, ix, iy);
  return {
    grid,
    points,
    bed: floorBed(floor, grid),
    matrix,
    held: heldUnknowns(floor, grid),
    kernel,
  };
};

const linear = (assembled: Assembled, load: Float64Array, start: Grip): Found => {
  const c = solveWith(assembled, start, load);
  return { c, w: valuesAtGauss(assembled.grid, assembled.points, c), grip: start, factorings: 0 };
};
