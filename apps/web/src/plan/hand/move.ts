import type { Point } from "@floorworthy/engine/geometry";
import type { Thing } from "./things.ts";

export const shift = (points: readonly Point[], by: Point): readonly Point[] =>
  points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));

/** Turned about its middle, radians, the way the hands of a clock go. */
export const turned = (points: readonly Point[], angle: number): readonly Point[] => {
  const middle = middleOf(points);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return points.map(({ x, y }) => ({
    x: middle.x + (x - middle.x) * c - (y - middle.y) * s,
    y: middle.y + (x - middle.x) * s + (y - middle.y) * c,
  }));
};

export const middleOf = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});

/** Which places others' lines give to hold on to. */
export interface Guides {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
}

export const guidesOf = (things: readonly Thing[], moving: string): Guides => {
  const others = things.filter(({ path, kind }) => path !== moving && kind !== "reading");
  const bay = things.find(({ kind }) => kind === "bay");
  const points = others.flatMap((thing) => thing.points);
  const middle = bay && middleOf(bay.points);
  return {
    xs: [...points.map(({ x }) => x), ...(middle ? [middle.x] : [])],
    ys: [...points.map(({ y }) => y), ...(middle ? [middle.y] : [])],
  };
};

const nearest = (value: number, marks: readonly number[], reach: number): number | undefined =>
  marks.reduce<number | undefined>((best, mark) => {
    const off = Math.abs(mark - value);
    return off <= reach && (best === undefined || off < Math.abs(best - value)) ? mark : best;
  }, undefined);

/**
 * A move of some points rounded to what a tape can find: a place of another line within reach, else whole steps.
 * @param step mm; 0 holds on to nothing
 */
export const snapped = (points: readonly Point[], by: Point, step: number, reach: number, guides: Guides): Point => {
  if (step === 0) return by;
  const along = (axis: "x" | "y", marks: readonly number[]): number => {
    for (const point of points) {
      const mark = nearest(point[axis] + by[axis], marks, reach);
      if (mark !== undefined) return mark - point[axis];
    }
    const first = points[0]?.[axis] ?? 0;
    return Math.round((first + by[axis]) / step) * step - first;
  };
  return { x: along("x", guides.xs), y: along("y", guides.ys) };
};
