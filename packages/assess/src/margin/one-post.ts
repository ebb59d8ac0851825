import { onePostCases } from "@floorworthy/engine/frames";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { ends, type PlainCase, plain } from "./plain-case.ts";
import type { SupportDuty } from "./reactions.ts";

/** One column with the whole load, for every set of pads. */
export const onePost = (job: Job, duty: SupportDuty): PlainCase[] | Unable => {
  const id = job.lift.supports[0]?.id ?? "column";
  const found: PlainCase[] = [];
  for (const [i, { reach, padSpacing }] of duty.pads.entries())
    for (const [standing, factor] of ends(duty)) {
      const cases = onePostCases({
        weight: duty.weight,
        dynamicFactor: factor,
        columnWeight: duty.columnWeight,
        reach,
        foreAft: 0,
        padSpacing,
        fullRise: duty.fullRise,
        workForce: duty.workForce,
        side: "left",
      });
      if (isUnable(cases)) return cases;
      const kept = cases.filter((c) => c.id.startsWith("toward-") === (standing === "hard-use"));
      found.push(...kept.map((c) => plain(job, { ...c, id: `${c.id}-${i}` }, standing, () => id)));
    }
  return found;
};
