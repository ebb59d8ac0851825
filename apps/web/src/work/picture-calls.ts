import { cureClock } from "@floorworthy/assess/cure";
import { momentByHeight } from "@floorworthy/assess/margin";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Units } from "./messages.ts";
import { withJob } from "./with-job.ts";

/** The inward moment at a base against carriage height, at the rated load. */
export const momentPicture = (text: string, units: Units) => withJob(text, units, momentByHeight);

/** Strength against days with the day for drilling, on the day the job is looked at. */
export const curePicture = (text: string, units: Units, today: string) =>
  withJob(text, units, (job) => {
    const clock = cureClock(job, job.date ?? today);
    if (isUnable(clock)) return clock;
    const { concrete, sentence, curve, maker, ask, drilling, notes, warnings, heatEnough } = clock;
    return { concrete, sentence, curve, maker, ask, earliest: drilling.earliest, notes, warnings, heatEnough };
  });
