import type { Point } from "../geometry/index.ts";

/** Convex hull, counter-clockwise, without points along its sides (Andrew's monotone chain). */
const convexHull = (points: readonly Point[]): Point[] => {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const half = (run: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const p of run) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, p) <= 0) chain.pop();
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
};

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
