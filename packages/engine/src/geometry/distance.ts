import type { Point, Polygon } from "./point.ts";
import { pointInPolygon } from "./point-in-polygon.ts";

/** A straight piece from `a` to `b`, mm. */
export interface Segment {
  readonly a: Point;
  readonly b: Point;
}

/** Distance between two points, mm. */
export const distance = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);

/** The point of a segment nearest to `p`. */
export const nearestOnSegment = (p: Point, { a, b }: Segment): Point => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length2 = dx * dx + dy * dy;
  const t = length2 === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / length2));
  return { x: a.x + t * dx, y: a.y + t * dy };
};

/** Distance from a point to a segment, mm. */
export const distanceToSegment = (p: Point, segment: Segment): number => distance(p, nearestOnSegment(p, segment));

/** Signed distance from a point to the endless line through a segment, mm: positive on the left of a → b. */
export const distanceToLine = (p: Point, { a, b }: Segment): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy);
  return length === 0 ? distance(p, a) : (dx * (p.y - a.y) - dy * (p.x - a.x)) / length;
};

/** The sides of a polygon, in order. */
export const sides = (polygon: Polygon): readonly Segment[] =>
  polygon.map((a, i) => ({ a, b: polygon[(i + 1) % polygon.length]! }));

/** Distance from a point to a polygon's area, mm: 0 inside or on it. */
export const distanceToPolygon = (p: Point, polygon: Polygon): number =>
  pointInPolygon(p, polygon) === "outside" ? distanceToBoundary(p, polygon) : 0;

/** Distance from a point to the nearest side of a polygon, mm, from within or without. */
export const distanceToBoundary = (p: Point, polygon: Polygon): number =>
  sides(polygon).reduce((least, side) => Math.min(least, distanceToSegment(p, side)), Number.POSITIVE_INFINITY);

const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Whether two segments touch or cross. */
export const segmentsMeet = (p: Segment, q: Segment): boolean => {
  const [d1, d2] = [turn(q.a, q.b, p.a), turn(q.a, q.b, p.b)];
  const [d3, d4] = [turn(p.a, p.b, q.a), turn(p.a, p.b, q.b)];
  if (d1 * d2 < 0 && d3 * d4 < 0) return true;
  return [
    distanceToSegment(p.a, q),
    distanceToSegment(p.b, q),
    distanceToSegment(q.a, p),
    distanceToSegment(q.b, p),
  ].some((d) => d === 0);
};

/** Shortest distance between two segments, mm: 0 where they meet. */
export const segmentDistance = (p: Segment, q: Segment): number =>
  segmentsMeet(p, q)
    ? 0
    : Math.min(
        distanceToSegment(p.a, q),
        distanceToSegment(p.b, q),
        distanceToSegment(q.a, p),
        distanceToSegment(q.b, p),
      );

/** Shortest distance between the areas of two polygons, mm: 0 where they touch or overlap. */
export const polygonDistance = (p: Polygon, q: Polygon): number => {
  if (p.some((v) => pointInPolygon(v, q) !== "outside") || q.some((v) => pointInPolygon(v, p) !== "outside")) return 0;
  let least = Number.POSITIVE_INFINITY;
  for (const s of sides(p)) for (const t of sides(q)) least = Math.min(least, segmentDistance(s, t));
  return least;
};
