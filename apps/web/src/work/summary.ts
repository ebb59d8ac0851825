import { assess, type Outcome } from "@floorworthy/assess";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { readJob } from "@floorworthy/job";

export interface Summary {
  readonly outcome: Outcome | undefined;
  readonly why: string;
  readonly due: { readonly on: string; readonly what: string } | undefined;
}

/** What a job came to, for the list. */
export const summary = (text: string, today: string): Summary => {
  const reading = readJob(text);
  if (!reading.ok) return { outcome: undefined, why: reading.issues[0]?.message ?? "", due: undefined };
  const { outcome, reasons } = assess(reading.job);
  const next =
    reading.job.installation || reading.job.visits.length > 0 ? upkeepOf(reading.job, today).next : undefined;
  const due = next && {
    on: next.date,
    what: next.standing === "overdue" ? "round of the nuts, overdue" : "round of the nuts",
  };
  return { outcome, why: reasons[0] ?? "", due };
};
