import type { Point, Polygon } from "./point.ts";

/**
 * Where a point lies with respect to a simple polygon. "on" means on a side or a corner, judged by an exactly zero
 * cross product, so use coordinates that are meant to coincide or test the distance to the boundary as well.
 * Method: crossings of the ray toward +x (half-open rule at the corners).
 */
export const pointInPolygon = (p: Point, polygon: Polygon): "inside" | "on" | "outside" => {
  let crossings = 0;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i]!;
    const b = polygon[(i + 1) % polygon.length]!;
    const cross = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
    if (cross === 0 && between(p.x, a.x, b.x) && between(p.y, a.y, b.y)) return "on";
    if (a.y <= p.y !== b.y <= p.y && cross > 0 === b.y > a.y) crossings++;
  }
  return crossings % 2 === 1 ? "inside" : "outside";
};

const between = (v: number, a: number, b: number): boolean => Math.min(a, b) <= v && v <= Math.max(a, b);
