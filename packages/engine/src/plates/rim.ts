/** The boundary of a floor that is only part of its outline: what lies inside it, and where a free edge is looked at. */
import { clipByHalfPlane, type HalfPlane, type Point, type Polygon, signedArea } from "../geometry/index.ts";
import type { Floor } from "./floor.ts";
import type { Grid } from "./grid.ts";

/** The half-planes whose common part is a convex polygon, pointing outward. */
export const sidesOut = (polygon: Polygon): HalfPlane[] => {
  const turn = Math.sign(signedArea(polygon));
  return polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) return [];
    const [nx, ny] = [(turn * (b.y - a.y)) / length, (-turn * (b.x - a.x)) / length];
    return [{ nx, ny, c: nx * a.x + ny * a.y }];
  });
};

/** Whether a point lies in the floor's concrete, its rim included. */
export const insideFloor = (floor: Floor): ((p: Point) => boolean) => {
  if (!floor.within) return () => true;
  const rim = sidesOut(floor.within);
  return (p) => rim.every(({ nx, ny, c }) => nx * p.x + ny * p.y <= c + 1e-6);
};

export const clipToFloor = (floor: Floor, polygon: Polygon): Polygon =>
  floor.within ? sidesOut(floor.within).reduce<Polygon>(clipByHalfPlane, polygon) : polygon;

/** Points along the rim, h/4 apart at most where a load is near: where the stress of a free edge is asked. */
export const rimPoints = (floor: Floor, grid: Grid): Point[] => {
  if (!floor.within) return [];
  const { outline: o, within } = floor;
  const step = Math.min(smallest(grid.x.breaks), smallest(grid.y.breaks)) / 2;
  const inward = 1e-3;
  return within.flatMap((a, i) => {
    const b = within[(i + 1) % within.length]!;
    if (onOutline(o, a, b)) return [];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const n = Math.min(2000, Math.max(2, Math.ceil(length / step)));
    const turn = Math.sign(signedArea(within));
    const [ix, iy] = [(-turn * (b.y - a.y) * inward) / length, (turn * (b.x - a.x) * inward) / length];
    return Array.from({ length: n }, (_, m) => {
      const u = (m + 0.5) / n;
      return { x: a.x + u * (b.x - a.x) + ix, y: a.y + u * (b.y - a.y) + iy };
    });
  });
};

const smallest = (breaks: Float64Array): number => {
  let least = Infinity;
  for (let i = 1; i < breaks.length; i++) least = Math.min(least, breaks[i]! - breaks[i - 1]!);
  return least;
};

const onOutline = (o: Floor["outline"], a: Point, b: Point): boolean =>
  [o.x0, o.x1].some((x) => Math.abs(a.x - x) < 1e-6 && Math.abs(b.x - x) < 1e-6) ||
  [o.y0, o.y1].some((y) => Math.abs(a.y - y) < 1e-6 && Math.abs(b.y - y) < 1e-6);
