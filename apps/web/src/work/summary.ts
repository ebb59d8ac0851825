import { assess, type Outcome } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { type Due, dueOf } from "./due.ts";

export interface Summary {
  readonly outcome: Outcome | undefined;
  readonly why: string;
  readonly due: Due | undefined;
}

/** What a job came to, for the list. */
export const summary = (text: string, today: string): Summary => {
  const reading = readJob(text);
  if (!reading.ok) return { outcome: undefined, why: reading.issues[0]?.message ?? "", due: undefined };
  const assessment = assess(reading.job);
  return {
    outcome: assessment.outcome,
    why: assessment.reasons[0] ?? "",
    due: dueOf(reading.job, assessment, today),
  };
};
