import { type CureClock, cureDays } from "@floorworthy/assess/cure";
import type { PourDay } from "@floorworthy/assess/pour-day";
import type { Job } from "@floorworthy/job";
import { calendar } from "./calendar.ts";

const reminders = (id: string): readonly number[] => (/-(drilling|cylinder-\w+|round-\d+)$/.test(id) ? [7, 1] : [1]);

/** Saw, covers, cylinders, earliest drilling and the rounds after it as a calendar file; undefined where the day of the pour is not known. */
export const cureCalendar = (job: Job, clock: CureClock, day: PourDay): string | undefined => {
  const days = cureDays(job, clock, day);
  return days.length === 0
    ? undefined
    : calendar(
        days.map((event) => ({
          ...event,
          ...(job.place ? { place: job.place } : {}),
          remindDaysBefore: reminders(event.id),
        })),
        { stamp: clock.today, name: `Fresh concrete: ${job.title}` },
      );
};
