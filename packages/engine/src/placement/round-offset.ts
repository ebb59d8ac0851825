import type { Point, Polygon } from "../geometry/index.ts";

/**
 * All points within `r` of a convex hull (one point, two, or a polygon counter-clockwise), with the rounds drawn as
 * tangent polygons: never less than the true offset, at most `tolerance` more. Any one length unit; r > 0.
 *
 * A round of angle θ becomes m tangents, θ/m apart; their corners lie at r/cos(θ/2m), so m ≥ θ / (2·acos(r/(r + tolerance))).
 */
export const roundOffset = (hull: Polygon, r: number, tolerance: number): Polygon => {
  const widest = 2 * Math.acos(r / (r + tolerance));
  if (hull.length === 1) return round(hull[0]!, 0, 2 * Math.PI, Math.max(3, Math.ceil((2 * Math.PI) / widest)), r);
  return hull.flatMap((p, i) => {
    const before = direction(hull.at(i - 1)!, p);
    const after = direction(p, hull[(i + 1) % hull.length]!);
    const turned = (after - before + 4 * Math.PI) % (2 * Math.PI);
    return round(p, before - Math.PI / 2, turned, Math.max(1, Math.ceil(turned / widest)), r);
  });
};

const round = (p: Point, from: number, angle: number, tangents: number, r: number): Point[] => {
  const R = r / Math.cos(angle / tangents / 2);
  return Array.from({ length: tangents }, (_, i) => {
    const at = from + ((i + 0.5) * angle) / tangents;
    return { x: p.x + R * Math.cos(at), y: p.y + R * Math.sin(at) };
  });
};

const direction = (a: Point, b: Point): number => Math.atan2(b.y - a.y, b.x - a.x);
