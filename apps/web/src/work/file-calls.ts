import { assess } from "@floorworthy/assess";
import { cureClock } from "@floorworthy/assess/cure";
import { orderFor } from "@floorworthy/assess/order";
import { pourDay } from "@floorworthy/assess/pour-day";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { isUnable } from "@floorworthy/engine/quantities";
import { cureCalendar, roundsCalendar } from "@floorworthy/papers/calendar";
import { historyCsv, orderCsv } from "@floorworthy/papers/csv";
import type { Units } from "./messages.ts";
import { withJob } from "./with-job.ts";

/** A file a person takes along beside the sheets. */
export interface OtherFile {
  readonly name: string;
  readonly title: string;
  readonly mime: string;
  readonly text: string;
}

const CALENDAR = "text/calendar;charset=utf-8";
const TABLE = "text/csv;charset=utf-8";

/** Lists for a spreadsheet and days for a calendar, as far as this job has them. `today` is YYYY-MM-DD. */
export const otherFiles = (text: string, units: Units, today: string) =>
  withJob(text, units, (job): readonly OtherFile[] => {
    const order = orderFor(job, assess(job));
    const upkeep = upkeepOf(job, today);
    const clock = cureClock(job, today);
    const rounds = roundsCalendar(job, upkeep, today);
    const pour = isUnable(clock) ? undefined : cureCalendar(job, clock, pourDay(job));
    return [
      ...(isUnable(order)
        ? []
        : [{ name: "order.csv", title: "the order, for a spreadsheet", mime: TABLE, text: orderCsv(order) }]),
      ...(pour
        ? [
            {
              name: "pour.ics",
              title: "saw, covers, cylinders and drilling day, for a calendar",
              mime: CALENDAR,
              text: pour,
            },
          ]
        : []),
      ...(rounds
        ? [{ name: "rounds.ics", title: "rounds of the nuts, for a calendar", mime: CALENDAR, text: rounds }]
        : []),
      ...(job.visits.length > 0
        ? [
            {
              name: "rounds.csv",
              title: "every reading of every round, for a spreadsheet",
              mime: TABLE,
              text: historyCsv(job, upkeep),
            },
          ]
        : []),
    ];
  });
