import { roundsAhead, type Upkeep } from "@floorworthy/assess/upkeep";
import type { Job } from "@floorworthy/job";
import { calendar } from "./calendar.ts";

/** The rounds to come as a calendar file, with reminders; empty of days for a lift out of service. */
export const roundsCalendar = (job: Job, upkeep: Upkeep, stamp: string): string =>
  calendar(
    roundsAhead(job, upkeep).map((day) => ({
      ...day,
      ...(job.place ? { place: job.place } : {}),
      remindDaysBefore: [7, 1],
    })),
    { stamp, name: `Rounds: ${job.title}` },
  );
