import { type CureClock, coversOffWords, meanwhile } from "@floorworthy/assess/cure";
import type { PourDay } from "@floorworthy/assess/pour-day";
import { capital } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { dayAfter } from "../print/calendar-day.ts";
import { printStress } from "../print/measure.ts";
import { type Note, note } from "./note.ts";

const sawNote = ({ windows }: PourDay): Note =>
  note("Saw", [
    `Wet saw ${windows.sawWet.words}, early-entry saw ${windows.sawEarlyEntry.words} after placing (${windows.basis}); later when colder.`,
    "Trial cut at an edge: ravels, wait; clean, go on without a stop.",
    "No cut in a pad, nor nearer to an anchor than the joint sheet allows.",
  ]);

const coverNote = ({ curing }: PourDay): Note =>
  note("Keep wet and covered", [
    curing.sentence,
    `Covers off: ${coversOffWords(curing.coversOff)} (${curing.why}).`,
    `Let it cool slowly: ${curing.cooling}.`,
  ]);

const on = ({ poured }: CureClock, age: number): string => (poured ? ` (${dayAfter(poured, age)})` : "");

const cylinderNote = (clock: CureClock, job: Job): Note => {
  const ask = job.lift.asks.strength;
  return note("Cylinders", [
    `3 for the laboratory, broken at 7 days${on(clock, 7)} and 28 days${on(clock, 28)}: they show the mix.`,
    `1 or more lie beside the slab under the same cover: broken the day before drilling, they show the slab${ask.known ? ` (${printStress(ask.high, job.units)} or more)` : ""}.`,
    ...clock.cylinders
      .filter(({ says }) => says !== "superseded")
      .map(({ words }) => words.replace(/ One cylinder is thin.*$/, "")),
  ]);
};

const meanwhileNote = (): Note =>
  note("Until the day of drilling", [`May: ${meanwhile.may.join("; ")}.`, `Not: ${meanwhile.mayNot.join("; ")}.`]);

const heatNote = ({ heat, heatEnough, told }: CureClock): Note => {
  const asItIs = heat[0];
  const warmer = heat.filter(({ id }) => /^(blanket|heater)/.test(id));
  const best = [
    warmer.findLast(({ id }) => id.startsWith("blanket")),
    warmer.findLast(({ id }) => id.startsWith("heater")),
  ];
  return note(told === "told" ? "What warmth buys" : "Were it always as warm as this", [
    ...(told === "told" && asItIs
      ? [asItIs, ...best]
          .filter((row) => row !== undefined)
          .map(
            ({ words, from, cautious }) => `${words}: strength between day ${day(from.day)} and ${day(cautious.day)}.`,
          )
      : heat.map(
          ({ words, from, cautious }) => `${words}: strength between day ${day(from.day)} and ${day(cautious.day)}.`,
        )),
    ...(heatEnough.length > 0
      ? [`Strength never holds up the work with ${heatEnough.map(({ words }) => words).join("; or ")}.`]
      : []),
  ]);
};

const day = (n: number): string => (Number.isFinite(n) ? String(n) : "never");

const weatherNote = ({ evaporation, rain, frost }: PourDay): Note =>
  note("When the weather turns", [...(evaporation ? [evaporation.sentence] : []), rain[1]!, frost[1]!, frost[3]!]);

/** What the crew and the owner are told, most pressing first. */
export const cureNotes = (job: Job, clock: CureClock, pour: PourDay): readonly Note[] => [
  ...(clock.warnings.length + pour.warnings.length > 0
    ? [note("Look out", [...clock.warnings, ...pour.warnings.map(capital)])]
    : []),
  sawNote(pour),
  coverNote(pour),
  cylinderNote(clock, job),
  meanwhileNote(),
  heatNote(clock),
  weatherNote(pour),
  ...(clock.notes.length > 0 ? [note("How the temperatures were counted", clock.notes)] : []),
];
