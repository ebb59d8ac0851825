import type { Job, Zone } from "@floorworthy/job";
import { daysBetween } from "./calendar.ts";

/** Age in days of the concrete under the bases at the job's date, and the day it was poured; undefined where not known. */
export const ageOf = (
  job: Job,
  zones: readonly (Zone | undefined)[],
): { days: number | undefined; poured: string | undefined } => {
  const poured = zones.map((zone) => zone?.poured ?? job.floor.poured).filter((date) => date !== undefined);
  const last = poured.toSorted().at(-1);
  if (last && job.date) return { days: daysBetween(last, job.date), poured: last };
  return { days: job.floor.ageDays.known ? job.floor.ageDays.low : undefined, poured: last };
};
