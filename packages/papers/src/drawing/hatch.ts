import { type Point, type Polygon, pointInPolygon, type Rect } from "@floorworthy/engine/geometry";

export const boundsOf = (points: readonly Point[]): Rect => ({
  x0: Math.min(...points.map((p) => p.x)),
  y0: Math.min(...points.map((p) => p.y)),
  x1: Math.max(...points.map((p) => p.x)),
  y1: Math.max(...points.map((p) => p.y)),
});

/** Fixed pseudo-random numbers in [0, 1), so that the same pad always gets the same stones. */
const sequence = (seed: number) => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};

const LARGEST = 2500;

/** Places on a jittered grid inside the polygon. */
const scattered = (polygon: Polygon, spacing: number, seed: number): readonly Point[] => {
  const { x0, y0, x1, y1 } = boundsOf(polygon);
  const step = Math.max(spacing, Math.sqrt(((x1 - x0) * (y1 - y0)) / LARGEST));
  if (!(step > 0) || !Number.isFinite(step)) return [];
  const next = sequence(seed);
  const places: Point[] = [];
  for (let y = y0 + step / 2; y < y1; y += step)
    for (let x = x0 + step / 2; x < x1; x += step) {
      const p = { x: x + (next() - 0.5) * step * 0.8, y: y + (next() - 0.5) * step * 0.8 };
      if (pointInPolygon(p, polygon) === "inside") places.push(p);
    }
  return places;
};

const within = (points: readonly Point[], polygon: Polygon) =>
  points.every((p) => pointInPolygon(p, polygon) === "inside");

/** The builder's sign for concrete: small stones (triangles) and sand (dots). `s` is the size of 1 mm of paper. */
export const concreteStones = (polygon: Polygon, s: number): readonly Polygon[] =>
  scattered(polygon, 1.9 * s, 7)
    .map((p, i): Polygon => {
      const r = (i % 3 === 0 ? 0.55 : 0.13) * s;
      const turn = i * 2.4;
      return [0, 1, 2].map((k) => ({
        x: p.x + r * Math.cos(turn + (k * 2 * Math.PI) / 3),
        y: p.y + r * Math.sin(turn + (k * 2 * Math.PI) / 3),
      }));
    })
    .filter((stone) => within(stone, polygon));

/** Rounded stones of a base course, as eight-sided outlines. */
export const baseStones = (polygon: Polygon, s: number): readonly Polygon[] =>
  scattered(polygon, 1.25 * s, 3)
    .map((p, i): Polygon => {
      const r = (0.32 + (i % 3) * 0.08) * s;
      return Array.from({ length: 8 }, (_, k) => ({
        x: p.x + r * 1.2 * Math.cos((k * Math.PI) / 4),
        y: p.y + r * 0.8 * Math.sin((k * Math.PI) / 4),
      }));
    })
    .filter((stone) => within(stone, polygon));

/** Parallel strokes rising to the right, clipped to the polygon. Method: sort the crossings of x + y = c with the sides. */
export const diagonalStrokes = (polygon: Polygon, s: number): readonly (readonly [Point, Point])[] => {
  const sums = polygon.map((p) => p.x + p.y);
  const low = Math.min(...sums);
  const high = Math.max(...sums);
  const step = Math.max(1.5 * s, (high - low) / 400);
  if (!(step > 0) || !Number.isFinite(step)) return [];
  const strokes: [Point, Point][] = [];
  for (let c = low + step / 2; c < high; c += step) {
    const crossings: Point[] = [];
    polygon.forEach((p, i) => {
      const q = polygon[(i + 1) % polygon.length]!;
      const a = p.x + p.y - c;
      const b = q.x + q.y - c;
      if (a < 0 === b < 0) return;
      const t = a / (a - b);
      crossings.push({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
    });
    crossings.sort((p, q) => p.x - q.x);
    for (let i = 0; i + 1 < crossings.length; i += 2) strokes.push([crossings[i]!, crossings[i + 1]!]);
  }
  return strokes;
};

/** A line that wanders about its course as a crack does; its ends stay. */
export const irregular = (points: readonly Point[], s: number): readonly Point[] => {
  const next = sequence(11);
  const course: Point[] = [];
  for (let i = 0; i + 1 < points.length; i++) {
    const p = points[i]!;
    const q = points[i + 1]!;
    const length = Math.hypot(q.x - p.x, q.y - p.y);
    const pieces = Math.min(200, Math.max(1, Math.round(length / (1.6 * s))));
    course.push(p);
    for (let k = 1; k < pieces; k++) {
      const aside = ((next() - 0.5) * 1.5 * s) / (length || 1);
      const t = k / pieces;
      course.push({
        x: p.x + t * (q.x - p.x) - aside * (q.y - p.y),
        y: p.y + t * (q.y - p.y) + aside * (q.x - p.x),
      });
    }
  }
  const end = points.at(-1);
  return end ? [...course, end] : course;
};
