import type { Job, Lift, Position } from "@floorworthy/job";
import { poseOf, rotate } from "../place/footprint.ts";

/**
 * The same floor with another lift about the same middle, at its own spacing. What was recorded of the first lift's
 * installation says nothing of another.
 */
export const withLift = (job: Job, lift: Lift): Job =>
  lift === job.lift
    ? job
    : { ...job, lift, position: respaced(job.position, lift), installation: undefined, visits: [] };

const respaced = (position: Position | undefined, { spacing, kind }: Lift): Position | undefined => {
  if (!position || !spacing.known || kind !== "two-post") return position;
  const { middle, angle } = poseOf(position);
  const half = rotate({ x: spacing.value / 2, y: 0 }, angle);
  return {
    left: { x: middle.x - half.x, y: middle.y - half.y },
    right: { x: middle.x + half.x, y: middle.y + half.y },
  };
};
