import type { Point, Rect } from "@floorworthy/engine/geometry";

export const rectOf = (points: readonly Point[]): Rect => ({
  x0: Math.min(...points.map(({ x }) => x)),
  y0: Math.min(...points.map(({ y }) => y)),
  x1: Math.max(...points.map(({ x }) => x)),
  y1: Math.max(...points.map(({ y }) => y)),
});

export const overlaps = (a: Rect, b: Rect): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

export const grown = ({ x0, y0, x1, y1 }: Rect, by: number): Rect => ({
  x0: x0 - by,
  y0: y0 - by,
  x1: x1 + by,
  y1: y1 + by,
});
