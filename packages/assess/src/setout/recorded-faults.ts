import type { HoleRecord, Job } from "@floorworthy/job";
import { lengthWords } from "./length-words.ts";

const met = {
  bar: "a bar",
  void: "a hollow",
  tube: "a tube",
  conduit: "a conduit",
  tendon: "a tendon",
} as const;

/** Holes of the record that are not settled: drilling stops at them. A cut bar is settled once the hole has its depth. */
export const recordedFaults = (job: Job): string[] =>
  (job.installation?.holes ?? []).flatMap((hole) => faultOf(job, hole));

const faultOf = (job: Job, { anchor, depth, met: found }: HoleRecord): string[] => {
  const asked = job.lift.anchors.product.holeDepth;
  const short = depth.known && asked.known && depth.value < asked.value - 0.5;
  const what = found.known && found.value !== "nothing" ? found.value : undefined;
  if (what && (what !== "bar" || short))
    return [`${anchor}: the drill met ${met[what]}. Nothing more is drilled before it is settled what to do there.`];
  return short
    ? [
        `${anchor} is only ${lengthWords(depth.value, job.units)} deep, asked ${lengthWords(asked.value, job.units)}: no anchor is set in it.`,
      ]
    : [];
};
