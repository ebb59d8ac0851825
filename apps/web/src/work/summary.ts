import { assess, type Outcome } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";

export interface Summary {
  readonly outcome: Outcome | undefined;
  readonly why: string;
  readonly due: { readonly on: string; readonly what: string } | undefined;
}

/** What a job came to, for the list. */
export const summary = (text: string): Summary => {
  const reading = readJob(text);
  if (!reading.ok) return { outcome: undefined, why: reading.issues[0]?.message ?? "", due: undefined };
  const { outcome, reasons } = assess(reading.job);
  return { outcome, why: reasons[0] ?? "", due: undefined };
};
