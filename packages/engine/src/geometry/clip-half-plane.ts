import type { Point, Polygon } from "./point.ts";

/** The points with `nx·x + ny·y ≤ c`; (nx, ny) points out of the half-plane. */
export interface HalfPlane {
  readonly nx: number;
  readonly ny: number;
  readonly c: number;
}

/**
 * The part of a polygon inside a half-plane (Sutherland–Hodgman, one side). Exact for convex polygons; a non-convex one
 * may come back as one outline with coincident sides where it falls in pieces: its area and moments are still right.
 * Returns an empty polygon when nothing is left.
 */
export const clipByHalfPlane = (polygon: Polygon, { nx, ny, c }: HalfPlane): Polygon => {
  const kept: Point[] = [];
  for (let i = 0; i < polygon.length; i++) {
    const p = polygon[i]!;
    const q = polygon[(i + 1) % polygon.length]!;
    const dp = nx * p.x + ny * p.y - c;
    const dq = nx * q.x + ny * q.y - c;
    if (dp <= 0) kept.push(p);
    if ((dp < 0 && dq > 0) || (dp > 0 && dq < 0)) {
      const t = dp / (dp - dq);
      kept.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
    }
  }
  return kept.length < 3 ? [] : kept;
};
