import { distanceToSegment, nearestOnSegment, type Point } from "../geometry/index.ts";
import type { Barrier } from "./anchor-group.ts";

/** The barrier nearest to an anchor, as one would measure it with a tape. */
export interface NearestBarrier {
  readonly barrier: Barrier;
  /** mm */
  readonly distance: number;
  /** where on the barrier */
  readonly at: Point;
}

/** The nearest edge, joint or crack to a point, measured to the piece that is there; undefined where there is none. */
export const nearestBarrier = (anchor: Point, barriers: readonly Barrier[]): NearestBarrier | undefined => {
  let nearest: NearestBarrier | undefined;
  for (const barrier of barriers) {
    const distance = distanceToSegment(anchor, barrier);
    if (nearest === undefined || distance < nearest.distance)
      nearest = { barrier, distance, at: nearestOnSegment(anchor, barrier) };
  }
  return nearest;
};
