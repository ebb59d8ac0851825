import type { Job, Zone } from "@floorworthy/job";
import { daysBetween } from "./calendar.ts";

/** A pad or strip put into a slab afterwards is as old as its own pour. */
const hasOwnPour = ({ kind, tied }: Zone): boolean =>
  (kind === "pad" || kind === "strip") && !(tied.known && tied.value === "cast-with");

const pouredOf = ({ floor, pour }: Job, zone: Zone | undefined): string | undefined =>
  zone?.poured ?? (zone && hasOwnPour(zone) && floor.state === "standing" ? pour?.date : undefined) ?? floor.poured;

/**
 * Age in days of the concrete under the bases at the job's date, and the day it was poured; undefined where not known, or
 * where a base is to stand on concrete that is only proposed.
 */
export const ageOf = (
  job: Job,
  zones: readonly (Zone | undefined)[],
): { days: number | undefined; poured: string | undefined } => {
  if (job.floor.state === "standing" && zones.some((zone) => zone?.state === "proposed"))
    return { days: undefined, poured: undefined };
  const poured = zones.map((zone) => pouredOf(job, zone)).filter((date) => date !== undefined);
  const last = poured.toSorted().at(-1);
  if (last && job.date) return { days: daysBetween(last, job.date), poured: last };
  return { days: job.floor.ageDays.known ? job.floor.ageDays.low : undefined, poured: last };
};
