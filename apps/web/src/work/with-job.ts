import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import type { Units } from "./messages.ts";

/** An answer, or in words why there is none. */
export type Told<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: string };

/** Work on the job of a text, in the units the page shows. */
export const withJob = <T>(text: string, units: Units | undefined, work: (job: Job) => T | Unable): Told<T> => {
  const reading = readJob(text);
  if (!reading.ok) return { ok: false, why: "The job has mistakes; they are marked at their places." };
  const value = work(units ? { ...reading.job, units } : reading.job);
  return isUnable(value) ? { ok: false, why: value.reason } : { ok: true, value };
};
