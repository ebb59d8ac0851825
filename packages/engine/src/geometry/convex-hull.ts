import type { Point, Polygon } from "./point.ts";

/**
 * Convex hull, counter-clockwise, without points along its sides (Andrew's monotone chain; exact where the
 * coordinates are whole numbers). One point or two when the points have no area.
 */
export const convexHull = (points: readonly Point[]): Polygon => {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const first = sorted[0];
  const last = sorted.at(-1);
  if (!first || !last || (first.x === last.x && first.y === last.y)) return first ? [first] : [];
  return [...chain(sorted), ...chain(sorted.toReversed())];
};

const chain = (run: readonly Point[]): readonly Point[] => {
  const kept: Point[] = [];
  for (const p of run) {
    while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, p) <= 0) kept.pop();
    kept.push(p);
  }
  return kept.slice(0, -1);
};

const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
