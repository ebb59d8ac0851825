import type { Assessment } from "@floorworthy/assess";
import { cureClock, subjectOf } from "@floorworthy/assess/cure";
import { type NextRound, upkeepOf } from "@floorworthy/assess/upkeep";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";

/** What a job waits for, and from which day. */
export interface Due {
  readonly on: string;
  readonly what: string;
}

const roundOf = ({ date, reason, standing }: NextRound): Due => ({
  on: date,
  what:
    reason.id === "before-lifting"
      ? "repair, before anything is lifted"
      : `round of the nuts${standing === "overdue" ? ", overdue" : ""}`,
});

/** The pour that is planned, or the day for drilling where the answer is to wait for it. */
const freshConcrete = (job: Job, { outcome }: Assessment, today: string): Due | undefined => {
  if (outcome === "wait") {
    const clock = cureClock(job, job.date ?? today, { detail: "word" });
    const on = isUnable(clock) ? undefined : clock.drilling.earliest?.date;
    return on === undefined ? undefined : { on, what: "drilling, not before" };
  }
  const { stands, poured } = subjectOf(job);
  return outcome === "pour" && stands === "to-come" && poured !== undefined
    ? { on: poured, what: poured < today ? "pour planned: was it made?" : "pour planned" }
    : undefined;
};

/** What is due first, for the list of jobs. `today` is YYYY-MM-DD. */
export const dueOf = (job: Job, assessment: Assessment, today: string): Due | undefined => {
  const next = job.installation || job.visits.length > 0 ? upkeepOf(job, today).next : undefined;
  return [freshConcrete(job, assessment, today), next && roundOf(next)]
    .filter((due) => due !== undefined)
    .toSorted((a, b) => a.on.localeCompare(b.on))[0];
};
