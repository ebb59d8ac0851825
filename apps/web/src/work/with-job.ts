import { type Assessment, assess } from "@floorworthy/assess";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import type { Units } from "./messages.ts";

/** An answer, or in words why there is none. */
export type Told<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: string };

/** Texts are asked about by several parts of the page at once; they are read and judged once. */
const MOST_KEPT = 4;
const read = new Map<string, Job | undefined>();
const judged = new WeakMap<Job, Assessment>();

const jobOf = (text: string, units: Units | undefined): Job | undefined => {
  const key = `${units ?? ""}\n${text}`;
  if (!read.has(key)) {
    const reading = readJob(text);
    read.set(key, reading.ok ? (units ? { ...reading.job, units } : reading.job) : undefined);
    if (read.size > MOST_KEPT) read.delete(read.keys().next().value as string);
  }
  return read.get(key);
};

/** The whole judgement of a job that `withJob` gave. */
export const assessed = (job: Job): Assessment => {
  const there = judged.get(job) ?? assess(job);
  judged.set(job, there);
  return there;
};

/** Work on the job of a text, in the units the page shows. */
export const withJob = <T>(text: string, units: Units | undefined, work: (job: Job) => T | Unable): Told<T> => {
  const job = jobOf(text, units);
  if (!job) return { ok: false, why: "The job has mistakes; they are marked at their places." };
  const value = work(job);
  return isUnable(value) ? { ok: false, why: value.reason } : { ok: true, value };
};
