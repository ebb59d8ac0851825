import {
  clipByHalfPlane,
  distanceToLine,
  distanceToSegment,
  type HalfPlane,
  type Point,
  type Polygon,
} from "../geometry/index.ts";
import type { Barrier } from "./anchor-group.ts";

/** Below this an anchor stands in the barrier itself, mm. */
const TOUCHING = 1e-6;

/** A barrier that ends an anchor's breakout body, and its distance. */
export interface Facing {
  readonly barrier: Barrier;
  /** ca, mm: square to the barrier's line */
  readonly ca: number;
}

/**
 * The barriers that end the breakout body of an anchor.
 *
 * The body is the square of half side `reach` = 1.5 hef about the anchor. A barrier counts once its nearest point comes
 * within the circle about that square, √2 × reach, and then counts as its endless line, because a crack's tip runs on
 * and the body breaks along a slanted or part-length joint. This is on the safe side of the shape that is really left,
 * and moving an anchor square away from a barrier never makes the body smaller.
 */
export const facing = (anchor: Point, barriers: readonly Barrier[], reach: number): readonly Facing[] =>
  barriers
    .filter((barrier) => distanceToSegment(anchor, barrier) < Math.SQRT2 * reach)
    .map((barrier) => ({ barrier, ca: Math.abs(distanceToLine(anchor, barrier)) }));

/** What is left of one anchor's square after its barriers: convex, counter-clockwise; empty where it stands in one. */
export const breakoutRegion = (anchor: Point, barriers: readonly Barrier[], reach: number): Polygon => {
  if (barriers.some((barrier) => distanceToSegment(anchor, barrier) < TOUCHING)) return [];
  return facing(anchor, barriers, reach).reduce<Polygon>(
    (region, { barrier }) => clipByHalfPlane(region, sideOf(anchor, barrier)),
    square(anchor, reach),
  );
};

const square = ({ x, y }: Point, half: number): Polygon => [
  { x: x - half, y: y - half },
  { x: x + half, y: y - half },
  { x: x + half, y: y + half },
  { x: x - half, y: y + half },
];

/** The half-plane of a barrier's line on which the anchor stands. A barrier of no length is a line square to the anchor. */
const sideOf = (anchor: Point, { a, b }: Barrier): HalfPlane => {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return outward(a.x - anchor.x, a.y - anchor.y, a);
  const left = distanceToLine(anchor, { a, b }) >= 0 ? 1 : -1;
  return outward((left * (b.y - a.y)) / length, (-left * (b.x - a.x)) / length, a);
};

const outward = (nx: number, ny: number, on: Point): HalfPlane => ({ nx, ny, c: nx * on.x + ny * on.y });
