import { segmentDistance, sides } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { barriersFor } from "../barriers.ts";
import { shown } from "../facts/print.ts";

/** Feet that only rest on the floor keep this far from joints, cracks and edges, mm: 12 in, common practice, no source. */
const CLEAR = 304.8;

/** What to say of feet that nothing holds down and that stand near where the concrete ends; nothing where none does. */
export const feetWords = (job: Job, bases: readonly PlacedBase[]): string => {
  const near = bases
    .filter((base) => base.anchors.length === 0 && base.outline.length >= 3)
    .flatMap((base) =>
      barriersFor(job, base).map((barrier) => ({
        foot: base.side,
        name: barrier.name,
        distance: Math.min(...sides(base.outline).map((side) => segmentDistance(side, barrier))),
      })),
    )
    .filter(({ distance }) => distance < CLEAR)
    .toSorted((a, b) => a.distance - b.distance);
  const worst = near[0];
  if (!worst) return "";
  const count = new Set(near.map(({ foot }) => foot)).size;
  const where =
    worst.distance < 1
      ? `${worst.foot} stands on the ${worst.name}`
      : `${worst.foot} stands ${shown(worst.distance, "length", job.units)} from the ${worst.name}`;
  return ` ${count === 1 ? "A foot stands" : `${count} feet stand`} nearer than ${shown(CLEAR, "length", job.units)} to a joint, crack or edge: ${where}. Roll the columns clear of it.`;
};
