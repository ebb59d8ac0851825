import type { Job } from "@floorworthy/job";
import { addDays } from "../facts/calendar.ts";
import type { Upkeep } from "./upkeep.ts";

/** A day in the calendar of one lift. */
export interface RoundDay {
  /** stable for the job, so that a moved day replaces the old one */
  readonly id: string;
  readonly date: string;
  readonly title: string;
  readonly detail: string;
}

const AHEAD = 3;

/** The next round, on its day or today where it is overdue, and the ones after it. None is planned for a lift out of service. */
export const roundsAhead = (job: Job, { answer, next, today }: Upkeep): RoundDay[] => {
  if (answer === "out-of-service" || !next) return [];
  const first = next.date < today ? today : next.date;
  const every = job.lift.anchors.roundEvery;
  const step = every?.known ? every.low : 365;
  const stem =
    job.title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-|-$/g, "") || "lift";
  return Array.from(
    { length: AHEAD },
    (_, i): RoundDay => ({
      id: `${stem}-round-${i + 1}`,
      date: addDays(first, i * step),
      title: `Round of the nuts: ${job.lift.name}`,
      detail:
        i === 0
          ? `Why: ${next.reason.words} (${next.reason.basis}). Torque wrench, card, tape, hammer; the lift unloaded.`
          : "Torque wrench, card, tape, hammer; the lift unloaded. The day moves with what the round before finds.",
    }),
  );
};
