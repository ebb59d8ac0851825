import type { Point } from "@floorworthy/engine/geometry";
import type { Obstacle } from "@floorworthy/engine/placement";
import type { Job } from "@floorworthy/job";
import type { Hit } from "./hit.ts";
import { holeDepthOf, placeOf } from "./hole-facts.ts";

/** `filled`: with non-shrink grout at least as strong as the slab. */
export type Fill = "filled" | "open";

/** Distance of a new hole from an abandoned one in depths of the deeper of the two. Common practice; the anchor's sheet governs. */
export const depthsApart: Readonly<Record<Fill, number>> = { filled: 1, open: 2 };

export interface AbandonedHole {
  readonly id: string;
  readonly at: Point;
  /** mm */
  readonly depth: number;
}

/** The hole that was stopped, and every other hole already drilled: a moved column leaves them all behind. */
export const abandonedHoles = (job: Job, hit: Hit): AbandonedHole[] => {
  const drilled = (job.installation?.holes ?? []).flatMap(({ anchor, depth }) => {
    const at = placeOf(job, anchor);
    return at && depth.known && depth.value > 0 && anchor !== hit.hole ? [{ id: anchor, at, depth: depth.value }] : [];
  });
  const at = placeOf(job, hit.hole);
  return at ? [{ id: hit.hole, at, depth: hit.depth }, ...drilled] : drilled;
};

/** mm */
export const keepAway = (job: Job, hole: AbandonedHole, fill: Fill): number =>
  depthsApart[fill] * Math.max(hole.depth, holeDepthOf(job)?.depth ?? 0);

export const obstaclesFrom = (job: Job, holes: readonly AbandonedHole[], fill: Fill): Obstacle[] =>
  holes.map((hole) => ({
    id: `abandoned-${hole.id}`,
    name: `the abandoned hole ${hole.id}`,
    shape: { a: hole.at, b: hole.at },
    clear: { anchors: keepAway(job, hole, fill) },
  }));
