import { roundsAhead, type Upkeep } from "@floorworthy/assess/upkeep";
import type { Job } from "@floorworthy/job";
import { calendar } from "./calendar.ts";

/** The rounds to come as a calendar file, with reminders; undefined where none can be planned (a file without a day is none). */
export const roundsCalendar = (job: Job, upkeep: Upkeep, stamp: string): string | undefined => {
  const days = roundsAhead(job, upkeep);
  return days.length === 0
    ? undefined
    : calendar(
        days.map((day) => ({ ...day, ...(job.place ? { place: job.place } : {}), remindDaysBefore: [7, 1] })),
        { stamp, name: `Rounds: ${job.title}` },
      );
};
