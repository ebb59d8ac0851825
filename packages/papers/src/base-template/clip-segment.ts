import type { Point, Rect } from "@floorworthy/engine/geometry";

/** The part of a segment inside a rectangle; undefined when there is none. Method: Liang and Barsky. */
export const clipSegment = (a: Point, b: Point, { x0, y0, x1, y1 }: Rect): readonly [Point, Point] | undefined => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let [low, high] = [0, 1];
  for (const [d, room] of [
    [-dx, a.x - x0],
    [dx, x1 - a.x],
    [-dy, a.y - y0],
    [dy, y1 - a.y],
  ] as const) {
    if (d === 0 && room < 0) return undefined;
    if (d < 0) low = Math.max(low, room / d);
    if (d > 0) high = Math.min(high, room / d);
  }
  const at = (t: number): Point => ({ x: a.x + t * dx, y: a.y + t * dy });
  return low < high ? [at(low), at(high)] : undefined;
};
