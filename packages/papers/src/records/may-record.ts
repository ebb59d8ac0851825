import type { Assessment } from "@floorworthy/assess";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";

/**
 * Papers that go with drilling or lifting are refused under a stop and before the floor is accepted; what was done already
 * (the installation has a date) may always be written down.
 */
export const mayRecord = (name: string, job: Job, assessment: Assessment): Unable | undefined => {
  if (job.installation?.date) return undefined;
  const { stops, outcome, sentence } = assessment;
  if (stops.length > 0) return unable(name, stops.map(({ reason, next }) => `${reason} ${next}`.trim()).join(" "));
  return outcome === "accept" || outcome === "accept-if"
    ? undefined
    : unable(name, `Nothing is installed on this floor as it stands. ${sentence}`);
};

/** What leads to lifting: only on an accepted floor, whatever was installed. */
export const mayLift = (name: string, { stops, outcome, sentence }: Assessment): Unable | undefined =>
  stops.length > 0
    ? unable(name, stops.map(({ reason, next }) => `${reason} ${next}`.trim()).join(" "))
    : outcome === "accept" || outcome === "accept-if"
      ? undefined
      : unable(name, `No card before this floor is accepted. ${sentence}`);

export const tooMuch = (name: string): Unable => unable(name, "There is too much to say for one readable page.");
