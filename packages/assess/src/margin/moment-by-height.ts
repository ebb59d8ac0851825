import { boundReactions } from "@floorworthy/engine/frames";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { stopsOf } from "../stops/stops.ts";
import { marginInputs } from "./inputs.ts";

/** How the inward moment at a column's base runs with carriage height, the rated load shared evenly. mm, N·mm. */
export interface MomentByHeight {
  readonly pads: "car" | "frame-truck";
  readonly points: readonly { readonly height: number; readonly moment: number }[];
}

const STEPS = 24;

/** One row for each set of pads of the lift's sheet. Only a two-post lift has such moments. */
export const momentByHeight = (job: Job): readonly MomentByHeight[] | Unable => {
  const stop = stopsOf(job)[0];
  if (stop) return unable("moment by height", stop.reason);
  const inputs = marginInputs(job, factsOf(job), "worst");
  if (isUnable(inputs)) return inputs;
  if (job.lift.reactions.length > 0)
    return unable("moment by height", "The maker states the reactions; how they run with height is not known.");
  const { frame, duty, soft } = inputs;
  const rows: MomentByHeight[] = [];
  for (const pads of duty.pads) {
    const points = [];
    for (let step = 0; step <= STEPS; step++) {
      const carriageHeight = duty.pickUpHeight + ((duty.fullRise - duty.pickUpHeight) * step) / STEPS;
      const load = { weight: duty.weight, dynamicFactor: 1, leftShare: 0.5, foreAft: 0, carriageHeight };
      const reactions = boundReactions({ ...frame, reach: pads.reach }, load, soft);
      if (isUnable(reactions)) return reactions;
      points.push({ height: carriageHeight, moment: reactions.left.inwardMoment });
    }
    rows.push({ pads: pads.kind, points });
  }
  return rows;
};
