import type { Point, Rect } from "@floorworthy/engine/geometry";

/** From which share of the way from a to b until which one is inside a rectangle; from > until where none is. Method: Liang and Barsky. */
export const spanInside = (
  a: Point,
  b: Point,
  { x0, y0, x1, y1 }: Rect,
): { readonly from: number; readonly until: number } => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let [from, until] = [0, 1];
  for (const [d, room] of [
    [-dx, a.x - x0],
    [dx, x1 - a.x],
    [-dy, a.y - y0],
    [dy, y1 - a.y],
  ] as const) {
    if (d === 0 && room < 0) return { from: 1, until: 0 };
    if (d < 0) from = Math.max(from, room / d);
    if (d > 0) until = Math.min(until, room / d);
  }
  return { from, until };
};
