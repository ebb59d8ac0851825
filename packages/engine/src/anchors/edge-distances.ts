import { distanceToSegment, type Point, polygonArea } from "../geometry/index.ts";
import type { Barrier } from "./anchor-group.ts";
import { breakoutRegion, facing } from "./breakout-region.ts";

/**
 * `ca,min`: least distance from any of the points to a barrier, mm; Infinity where there is none. A barrier that ends the
 * body counts as its line, one farther off as the piece that is there.
 */
export const leastEdge = (points: readonly Point[], barriers: readonly Barrier[], reach: number): number => {
  const distances = points.flatMap((point) => [
    ...facing(point, barriers, reach).map(({ ca }) => ca),
    ...barriers.map((barrier) => distanceToSegment(point, barrier)),
  ]);
  return Math.min(Number.POSITIVE_INFINITY, ...distances);
};

/**
 * The edge distances smaller than `reach` that truly bound the bodies of a group, one for each line: a barrier that lies
 * behind another, or continues it, takes nothing away and is not counted. mm.
 */
export const boundingEdges = (
  points: readonly Point[],
  barriers: readonly Barrier[],
  reach: number,
): readonly number[] => {
  const near = points.flatMap((point) =>
    facing(point, barriers, reach)
      .filter(({ ca }) => ca < reach)
      .map(({ barrier, ca }) => ({ barrier, ca, point })),
  );
  const lines: { barrier: Barrier; ca: number }[] = [];
  for (const { barrier, ca, point } of near) {
    if (!bounds(point, barrier, barriers, reach)) continue;
    const same = lines.find((line) => collinear(line.barrier, barrier));
    if (same) same.ca = Math.min(same.ca, ca);
    else lines.push({ barrier, ca });
  }
  return lines.map(({ ca }) => ca);
};

const bounds = (point: Point, barrier: Barrier, barriers: readonly Barrier[], reach: number): boolean => {
  const without = barriers.filter((other) => !collinear(other, barrier));
  const left = polygonArea(breakoutRegion(point, barriers, reach));
  return polygonArea(breakoutRegion(point, without, reach)) > left * (1 + 1e-9);
};

/** Whether two barriers lie on one line, within 1 mm at their ends. */
const collinear = (p: Barrier, q: Barrier): boolean => {
  const length = Math.hypot(p.b.x - p.a.x, p.b.y - p.a.y);
  const off = (point: Point): number =>
    length === 0
      ? Math.hypot(point.x - p.a.x, point.y - p.a.y)
      : Math.abs((p.b.x - p.a.x) * (point.y - p.a.y) - (p.b.y - p.a.y) * (point.x - p.a.x)) / length;
  return off(q.a) <= 1 && off(q.b) <= 1;
};
