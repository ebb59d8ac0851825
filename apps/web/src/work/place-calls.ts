import { marginMapSteps, placeLift } from "@floorworthy/assess/place";
import type { Units } from "./messages.ts";
import type { Tell } from "./tell.ts";
import { withJob } from "./with-job.ts";

/** Where the lift may stand. */
export const placing = (text: string, units: Units) => withJob(text, units, (job) => placeLift(job));

/** The margin over the places where it may stand. */
export const placeMap = (tell: Tell, text: string, units: Units, count: number) =>
  withJob(text, units, (job) => {
    const steps = marginMapSteps(job, placeLift(job), { count });
    let step = steps.next();
    while (!step.done) {
      tell(step.value.done, step.value.of);
      step = steps.next();
    }
    return step.value;
  });
