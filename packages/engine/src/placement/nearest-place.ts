import { distance, nearestOnSegment, type Point, pointInPolygon, sides } from "../geometry/index.ts";
import type { Region } from "./region.ts";

/** The point of a region nearest to another; that point itself when it lies within. */
export const nearestPlace = (wanted: Point, { outline, holes }: Region): Point => {
  const within = pointInPolygon(wanted, outline) !== "outside";
  if (within && holes.every((hole) => pointInPolygon(wanted, hole) !== "inside")) return wanted;
  return nearestOf(
    wanted,
    [outline, ...holes].flatMap(sides).map((side) => nearestOnSegment(wanted, side)),
  )!;
};

/** The nearest of some points, the first of equals; undefined of none. */
export const nearestOf = (wanted: Point, points: readonly Point[]): Point | undefined =>
  points.reduce<Point | undefined>(
    (best, p) => (best && distance(best, wanted) <= distance(p, wanted) ? best : p),
    undefined,
  );
