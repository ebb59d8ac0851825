import {
  type Binder,
  coolingLimits,
  curingDays,
  maturity,
  pourLimits,
  type TemperatureStory,
} from "@floorworthy/engine/concrete";
import { fromBase, isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { runClock } from "../cure/clock.ts";
import type { LogReading } from "../cure/readings.ts";
import { subjectOf } from "../cure/subject.ts";
import { type Told, toldTemperatures } from "../cure/told.ts";
import { type CureDate, cureDate, printTemperature, temperatureUnit } from "../cure/words.ts";
import { term } from "../facts/print.ts";

/** How long to keep the concrete wet and covered. */
export interface Curing {
  readonly days: Term;
  /** when covers may come off; the day lies later where the concrete was colder than it should be kept */
  readonly coversOff: CureDate;
  readonly why: string;
  readonly keepAbove: Term;
  /** largest fall after the covers come off, in a day and in an hour, in words */
  readonly cooling: string;
  readonly sentence: string;
}

const binderOf = ({ pour }: Job): { readonly binder: Binder; readonly words: string } => {
  const cement = pour?.cement.known ? pour.cement.value : undefined;
  switch (cement) {
    case "III":
      return { binder: "type-III", words: "type III cement" };
    case "II":
      return { binder: "type-II", words: "type II cement" };
    case "blended":
      return { binder: "up-to-25-percent-fly-ash-or-slag", words: "cement with fly ash or slag" };
    case "I":
      return { binder: "type-I", words: "type I cement" };
    default:
      return { binder: "type-I", words: "ordinary cement (not said)" };
  }
};

const KEEP = pourLimits.keepAbove.temperature;
const LONGEST = 90;

/** The day by which so many days lay at or above the least temperature; undefined where they never do. */
const warmDaysDone = (story: TemperatureStory, wanted: number): number | undefined => {
  let warm = 0;
  for (let day = 0; day < LONGEST; day++) {
    const mean = maturity(story, day + 1, -200) - maturity(story, day, -200) - 200;
    if (mean >= KEEP - 0.5) warm++;
    if (warm >= wanted) return day + 1;
  }
  return undefined;
};

const coverDay = (
  job: Job,
  wanted: number,
  log: readonly LogReading[],
  told: Told,
): { readonly day: number; readonly why: string } => {
  const keep = printTemperature(KEEP, job.units);
  if (told.state === "not-told")
    return { day: wanted, why: `${wanted} days at ${keep} or more; colder days do not count` };
  const done = warmDaysDone(told.value, wanted);
  if (done === wanted) return { day: done, why: `${wanted} days at ${keep} or more` };
  const clock = runClock(job, job.date ?? job.pour?.date ?? "2000-01-01", { log, detail: "word" });
  const cautious = isUnable(clock) ? undefined : clock.strength.cautious?.day;
  const strong = cautious ?? Number.POSITIVE_INFINITY;
  return done === undefined || strong < done
    ? { day: Math.max(wanted, strong), why: `colder than ${keep}: covers stay until the strength is there` }
    : { day: done, why: `days colder than ${keep} do not count` };
};

/** Curing by cement, at the least temperature of the guide specifications. */
export const curingOf = (job: Job, log: readonly LogReading[] = []): Curing => {
  const { binder, words } = binderOf(job);
  const wanted = curingDays(binder);
  const { poured } = subjectOf(job);
  const { day, why } = coverDay(job, wanted, log, toldTemperatures(job, poured, log));
  const unit = temperatureUnit(job.units);
  const keep = printTemperature(KEEP, job.units);
  const fall = (difference: number): string =>
    job.units === "si" ? `${Math.round(difference)} °C` : `${Math.round(difference * 1.8)} °F`;
  return {
    days: term("n", "days of curing", wanted, "days", job.units, {
      clause: binder === "type-III" ? "ACI 318-19 26.5.3, from memory" : "UFGS 03 30 53, 03 31 00",
      basis: words,
    }),
    coversOff: cureDate(day, poured),
    why,
    keepAbove: {
      symbol: "T",
      words: pourLimits.keepAbove.words,
      value: fromBase(KEEP, unit),
      unit,
      clause: pourLimits.keepAbove.source,
    },
    cooling: `at most ${fall(coolingLimits.perHour)} in an hour and ${fall(coolingLimits.perDay)} in a day`,
    sentence: `Keep wet, or curing compound and cover, for ${wanted} days (${words}), above ${keep}.`,
  };
};
