import { capital } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { addDays } from "../facts/calendar.ts";
import type { PourDay } from "../pour-day/pour-day.ts";
import { roundsAhead } from "../upkeep/rounds.ts";
import { upkeepOf } from "../upkeep/upkeep.ts";
import type { CureClock } from "./clock.ts";

/** A day of the fresh concrete in the calendar. */
export interface CureDay {
  /** stable for the job, so that a moved day replaces the old one */
  readonly id: string;
  readonly date: string;
  readonly title: string;
  readonly detail: string;
}

const stemOf = ({ title }: Job): string =>
  title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "") || "lift";

/** Saw, covers, cylinders, drilling and the rounds after it; none where the day of the pour is not known or went by unsaid. */
export const cureDays = (job: Job, clock: CureClock, day: PourDay): readonly CureDay[] => {
  const { poured, drilling } = clock;
  if (!poured || clock.pour === "gone-by") return [];
  const stem = stemOf(job);
  const of = (id: string, date: string, title: string, detail: string): CureDay => ({
    id: `${stem}-cure-${id}`,
    date,
    title: `${title}: ${job.lift.name}`,
    detail,
  });
  const { sawWet, sawEarlyEntry } = day.windows;
  const drill = drilling.earliest?.date;
  const off = day.curing.coversOff.date;
  return [
    of(
      "saw",
      addDays(poured, Math.floor(sawWet.from.value / 24)),
      "Pour and saw",
      `Wet saw ${sawWet.words}, early-entry saw ${sawEarlyEntry.words} after placing; begin when the edge of a trial cut does not ravel. Cast the cylinders, one to lie beside the slab.`,
    ),
    of("cylinder-7", addDays(poured, 7), "Break the 7-day cylinder", "Standard-cured: it shows the mix, not the slab."),
    ...(off
      ? [of("covers-off", off, "Covers off", `${capital(day.curing.why)}. Let it cool slowly: ${day.curing.cooling}.`)]
      : []),
    of(
      "cylinder-28",
      addDays(poured, 28),
      "Break the 28-day cylinders",
      "Standard-cured: they show the mix that was ordered.",
    ),
    ...(drill
      ? [
          of(
            "cylinder-field",
            [addDays(drill, -1), poured].toSorted().at(-1)!,
            "Break the field-cured cylinder",
            "It shows the slab's strength. Below the ask: do not drill, and run the clock again with it.",
          ),
          of("drilling", drill, "Earliest day for drilling", clock.sentence),
          ...roundsAfter(job, clock.today, drill),
        ]
      : []),
  ];
};

/** The rounds of the nuts, as if the lift were set on the first day it may be. */
const roundsAfter = (job: Job, today: string, drill: string): readonly CureDay[] => {
  if (job.installation?.date !== undefined || job.visits.length > 0) return [];
  const set: Job = { ...job, installation: { ...(job.installation ?? nothingSet), date: drill } };
  return roundsAhead(set, upkeepOf(set, today));
};

const nothingSet: NonNullable<Job["installation"]> = {
  date: undefined,
  installer: undefined,
  qualification: undefined,
  serial: undefined,
  label: undefined,
  lot: undefined,
  wrench: undefined,
  trial: { known: false },
  instructed: { known: false },
  beam: { known: false },
  plumb: { known: false },
  holes: [],
  levels: [],
};
