import type { Point, Polygon } from "./point.ts";

/**
 * Area of the union of convex polygons, mm², to rounding.
 *
 * Method: cut the plane by vertical lines through every corner and every crossing of two sides. Between two neighbouring
 * lines no sides cross, so the union's height varies linearly there and equals its mean at the middle: the sum of
 * (width × height at the middle) is exact.
 * Needs: each polygon convex (either direction); empty ones are ignored. Cost: (sides)² crossings; meant for tens of
 * polygons, not thousands.
 */
export const unionArea = (polygons: readonly Polygon[]): number => {
  const shapes = polygons.filter((p) => p.length >= 3);
  const xs = cuts(shapes);
  let area = 0;
  for (let i = 0; i + 1 < xs.length; i++) {
    const width = xs[i + 1]! - xs[i]!;
    if (width > 0) area += width * heightAt(shapes, xs[i]! + width / 2);
  }
  return area;
};

const heightAt = (shapes: readonly Polygon[], x: number): number => {
  const spans = shapes
    .map((shape) => span(shape, x))
    .filter((s) => s !== undefined)
    .sort((a, b) => a[0] - b[0]);
  let height = 0;
  let top = Number.NEGATIVE_INFINITY;
  for (const [low, high] of spans) {
    if (high <= top) continue;
    height += high - Math.max(low, top);
    top = high;
  }
  return height;
};

/** The interval in which the vertical at x meets a convex polygon. */
const span = (shape: Polygon, x: number): readonly [number, number] | undefined => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < shape.length; i++) {
    const a = shape[i]!;
    const b = shape[(i + 1) % shape.length]!;
    if (a.x === b.x || x < Math.min(a.x, b.x) || x > Math.max(a.x, b.x)) continue;
    const y = a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return high > low ? [low, high] : undefined;
};

const cuts = (shapes: readonly Polygon[]): readonly number[] => {
  const xs = new Set(shapes.flatMap((shape) => shape.map((p) => p.x)));
  for (let i = 0; i < shapes.length; i++)
    for (let j = i + 1; j < shapes.length; j++) for (const x of crossings(shapes[i]!, shapes[j]!)) xs.add(x);
  return [...xs].sort((a, b) => a - b);
};

const crossings = (p: Polygon, q: Polygon): readonly number[] => {
  const xs: number[] = [];
  for (let i = 0; i < p.length; i++)
    for (let j = 0; j < q.length; j++) {
      const x = crossing(p[i]!, p[(i + 1) % p.length]!, q[j]!, q[(j + 1) % q.length]!);
      if (x !== undefined) xs.push(x);
    }
  return xs;
};

const crossing = (a: Point, b: Point, c: Point, d: Point): number | undefined => {
  const [rx, ry, sx, sy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const det = rx * sy - ry * sx;
  if (det === 0) return undefined;
  const t = ((c.x - a.x) * sy - (c.y - a.y) * sx) / det;
  const u = ((c.x - a.x) * ry - (c.y - a.y) * rx) / det;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? a.x + t * rx : undefined;
};
