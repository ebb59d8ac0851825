import type { Point, Rect } from "@floorworthy/engine/geometry";
import { spanInside } from "../drawing/span-inside.ts";

/** The part of a segment inside a rectangle; undefined when there is none. */
export const clipSegment = (a: Point, b: Point, box: Rect): readonly [Point, Point] | undefined => {
  const { from, until } = spanInside(a, b, box);
  const at = (t: number): Point => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
  return from < until ? [at(from), at(until)] : undefined;
};
