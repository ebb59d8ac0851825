import type { Point } from "../geometry/index.ts";

/** Distance of the resultant of parallel loads from the centroid of the points that carry them, along x and y, mm. */
export const eccentricity = (points: readonly Point[], loads: readonly number[]): Point => {
  const total = loads.reduce((sum, load) => sum + load, 0);
  if (total === 0) return { x: 0, y: 0 };
  const offset = (axis: "x" | "y"): number => {
    const mean = points.reduce((sum, p) => sum + p[axis], 0) / points.length;
    return Math.abs(points.reduce((sum, p, i) => sum + (p[axis] - mean) * loads[i]!, 0) / total);
  };
  return { x: offset("x"), y: offset("y") };
};
