import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { type CureClock, runClock } from "./clock.ts";
import { dateWords } from "./words.ts";

/** The clock on the job's own date; undefined where there is none. */
const clockOf = (job: Job): CureClock | undefined => {
  if (!job.date) return undefined;
  const clock = runClock(job, job.date, { detail: "word" });
  return isUnable(clock) ? undefined : clock;
};

/** What may be done while the concrete hardens, and what not. Common practice, no source. */
export const meanwhile = {
  may: ["lay out and mark", "unload and store the lift beside the pads", "run power and air"],
  mayNot: ["drill, not even one hole", 'stand up a column, not even "just snugged"', "drive on the fresh concrete"],
} as const;

/** Why a floor whose maker's days are over still has to wait: the cautious count has not reached the strength by the job's date. */
export const strengthStillComing = (job: Job): string | undefined => {
  const told = job.pour && (job.pour.temperatures.length > 0 || job.pour.days?.length || job.pour.months?.length);
  if (!told) return undefined;
  const clock = clockOf(job);
  if (!clock || clock.age === undefined) return undefined;
  const { state, cautious } = clock.strength;
  if (state !== "never" && !(state === "expected" && cautious && cautious.day > clock.age)) return undefined;
  return state === "never"
    ? "at the temperatures told the cautious count never reaches the strength asked"
    : `by the cautious count the strength asked is there on ${dateWords(cautious!)} only`;
};

/** The sentence and what to do while waiting; undefined where no clock runs. */
export const waiting = (
  job: Job,
): { readonly sentence: string; readonly conditions: readonly string[] } | undefined => {
  const clock = clockOf(job);
  if (!clock?.drilling.earliest) return undefined;
  const { sentence, earliest } = clock.drilling;
  const until = Number.isFinite(earliest.day) ? `before ${dateWords(earliest)}` : "before the strength is shown";
  const [enough] = clock.heatEnough;
  return {
    sentence,
    conditions: [
      `Nothing is drilled and no column is stood up, not even "just snugged", ${until}. Meanwhile one may ${meanwhile.may.join(", ")}.`,
      clock.told === "told"
        ? "The date rests on temperatures: go on writing them down; a cylinder cured beside the slab confirms the strength before drilling."
        : "Days count only for warm concrete: in the cold a field-cured cylinder has to show the strength as well.",
      ...(enough
        ? [`Put the blankets back or heat today: with ${enough.words} the strength no longer holds up the work.`]
        : []),
      ...clock.warnings,
    ],
  };
};
