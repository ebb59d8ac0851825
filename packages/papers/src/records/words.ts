import { fromBase, printNumber } from "@floorworthy/engine/quantities";
import type { Choice, Job, Quantity } from "@floorworthy/job";
import { printLength } from "../print/measure.ts";

export const chosen = <T extends string>(
  choice: Choice<T> | undefined,
  names: Readonly<Record<T, string>>,
): string | undefined => (choice?.known ? names[choice.value] : undefined);

export const lengthOf = (q: Quantity | undefined, job: Job): string | undefined =>
  q?.known ? printLength(q.value, job.units) : undefined;

export const torqueOf = (q: Quantity | undefined, job: Job): string | undefined => {
  const unit = job.units === "si" ? "N·m" : "lb-ft";
  return q?.known ? `${printNumber(fromBase(q.value, unit), 0)} ${unit}` : undefined;
};

export const weightOf = (q: Quantity | undefined, job: Job): string | undefined => {
  const unit = job.units === "si" ? "kg" : "lb";
  return q?.known ? `${printNumber(fromBase(q.value, unit), 0)} ${unit}` : undefined;
};

export const turnOf = (q: Quantity | undefined): string | undefined =>
  q?.known ? `${Math.round(fromBase(q.value, "deg"))}°` : undefined;
