import type { Point } from "@floorworthy/engine/geometry";
import type { Job, Support } from "@floorworthy/job";
import { poseOf, rotate } from "../place/footprint.ts";

/**
 * A lift on posts, frames or feet seen as two bases, its outermost supports on the left and on the right, for the lines of
 * the page alone: readings taken "left" and "right" belong to them.
 */
export const onFeet = (job: Job): Job => {
  const { lift, position } = job;
  const left = outermost(lift.supports, -1);
  const right = outermost(lift.supports, 1);
  if (!position || !left?.outline || !right || lift.base.outline) return job;
  const { middle, angle } = poseOf(position);
  const put = (p: Point): Point => {
    const turned = rotate(p, angle);
    return { x: middle.x + turned.x, y: middle.y + turned.y };
  };
  return {
    ...job,
    lift: { ...lift, kind: "two-post", supports: [], base: { ...lift.base, outline: left.outline } },
    position: { left: put(left.at), right: put(right.at) },
  };
};

const outermost = (supports: readonly Support[], side: -1 | 1): Support | undefined =>
  supports.toSorted((a, b) => side * (b.at.x - a.at.x))[0];
