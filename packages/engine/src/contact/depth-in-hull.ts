import { convexHull, type Point } from "../geometry/index.ts";

const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** How deep a point lies inside the convex hull of others: distance to the nearest side, negative outside. */
export const depthInHull = (p: Point, points: readonly Point[]): number => {
  const hull = convexHull(points);
  const depths = hull.map((a, i) => {
    const b = hull[(i + 1) % hull.length]!;
    return turn(a, b, p) / Math.hypot(b.x - a.x, b.y - a.y);
  });
  return Math.min(...depths);
};
