import { capital, type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { daysBetween } from "../facts/calendar.ts";
import { stopsOf } from "../stops/stops.ts";
import { askTerm, gainTerms, strength28Term } from "./clock-terms.ts";
import { warningsFor } from "./clock-warnings.ts";
import { type CountAnswer, countAnswers } from "./count-answers.ts";
import type { Question } from "./counts.ts";
import { type CurveLine, constantCurves, curveOf } from "./curve.ts";
import { type CylinderFinding, readCylinders } from "./cylinders.ts";
import { type Drilling, drillingOf } from "./drilling.ts";
import { gainFor } from "./gain.ts";
import { constantRows, type HeatEnough, type HeatRow, heatEnough, heatRows } from "./heat.ts";
import type { LogReading } from "./readings.ts";
import { type StrengthDates, strengthDates } from "./strength-dates.ts";
import { type Subject, subjectOf } from "./subject.ts";
import { type Told, toldTemperatures } from "./told.ts";
import { type CureDate, cureDate } from "./words.ts";

/** When the fresh concrete may be drilled, and why. Plain data; days are counted from the pour. */
export interface CureClock {
  readonly title: string;
  readonly units: Job["units"];
  readonly today: string;
  /** what the clock runs for, e.g. "left pad and right pad" */
  readonly concrete: string;
  readonly poured: string | undefined;
  /**
   * `planned`: the day lies ahead; `gone-by`: it is over and the job still says to be poured; `unknown`: nobody has named it,
   * days are counted without dates
   */
  readonly pour: "planned" | "gone-by" | "poured" | "unknown";
  /** days since the pour; undefined before it and where nobody has said that it was made */
  readonly age: number | undefined;
  /** the strength the maker's page asks before drilling */
  readonly ask: Term | undefined;
  /** 28-day strength counted */
  readonly strength28: Term;
  readonly gain: { readonly words: string; readonly needed: Term | undefined; readonly beside: Term | undefined };
  readonly told: Told["state"];
  /** the three ways of counting at the temperatures as told; empty where none were told or nothing is asked */
  readonly counts: readonly CountAnswer[];
  /** the end of the maker's days */
  readonly maker: CureDate | undefined;
  readonly strength: StrengthDates;
  readonly drilling: Drilling;
  /** the answer in a sentence or two */
  readonly sentence: string;
  readonly heat: readonly HeatRow[];
  readonly heatEnough: readonly HeatEnough[];
  readonly cylinders: readonly CylinderFinding[];
  /** how gaps in the story were filled, and what is not counted */
  readonly notes: readonly string[];
  readonly warnings: readonly string[];
  /** for a chart: the three counts; where no temperatures were told, the cautious count at some that never change */
  readonly curve: readonly CurveLine[];
}

export interface ClockOptions {
  /** a logger's readings, which count before anything typed */
  readonly log?: readonly LogReading[];
  /** `word`: the dates alone, without the tables of warmth and the curves */
  readonly detail?: "whole" | "word";
}

const PLACE = "cure clock";

/** The clock for one job on one day, YYYY-MM-DD. Unable under a stop and where no fresh concrete is in question. */
export const cureClock = (job: Job, today: string, options: ClockOptions = {}): CureClock | Unable => {
  const stop = stopsOf(job)[0];
  if (stop) return unable(PLACE, `No day for drilling is named: ${stop.reason} ${stop.next}`.trim());
  return runClock(job, today, options);
};

/** Nobody waits for concrete of this age. */
const LONG_PAST = 365;

/** The same without a look at the stops, for a caller that has looked. */
export const runClock = (
  job: Job,
  today: string,
  { log = [], detail = "whole" }: ClockOptions = {},
): CureClock | Unable => {
  const subject = subjectOf(job);
  const { poured } = subject;
  const since = poured === undefined ? subject.ageDays : daysBetween(poured, today);
  if (since !== undefined && since > LONG_PAST)
    return unable(
      PLACE,
      subject.stands === "to-come" && poured !== undefined
        ? goneBy(poured)
        : `${capital(subject.words)}: ${Math.floor(since)} days old. There is nothing to wait for.`,
    );
  if (poured === undefined && subject.ageDays === undefined && job.floor.state === "standing" && !hasFreshConcrete(job))
    return unable(PLACE, "No fresh concrete is in this job, and nobody has said when the floor was poured.");
  return told(job, today, subject, since, toldTemperatures(job, poured, log), detail);
};

/** A plan is no pour: nothing may be counted from a day that went by unsaid. */
const goneBy = (planned: string): string =>
  `The day planned for the pour, ${planned}, has gone by and the job still says to be poured: write that it stands, or a new day.`;

const pourOf = ({ poured, stands }: Subject, since: number | undefined): CureClock["pour"] =>
  poured === undefined
    ? "unknown"
    : (since ?? 0) < 0
      ? "planned"
      : since && stands === "to-come"
        ? "gone-by"
        : "poured";

const past = ({ earliest }: Drilling, today: string): boolean => earliest?.date !== undefined && earliest.date <= today;

const hasFreshConcrete = ({ floor, pour }: Job): boolean =>
  pour !== undefined || floor.zones.some(({ state }) => state === "proposed");

const told = (
  job: Job,
  today: string,
  subject: Subject,
  since: number | undefined,
  story: Told,
  detail: "whole" | "word",
): CureClock => {
  const { asks } = job.lift;
  const { poured } = subject;
  const choice = gainFor(job);
  const age = since === undefined || since < 0 ? undefined : since;
  const ask = asks.strength.known ? asks.strength.high : undefined;
  const { potential, findings } = readCylinders(job, subject, choice.gain, ask, age);
  const question: Question | undefined = ask === undefined ? undefined : { gain: choice.gain, potential, ask };
  const maker = asks.days.known ? cureDate(asks.days.high, poured) : undefined;
  const strength = strengthDates(story, question, poured);
  const setting = question && {
    job,
    told: story,
    question,
    poured,
    now: Math.max(0, Math.floor(age ?? 0)),
    maker: maker?.day ?? 0,
  };
  const strength28 = strength28Term(job, subject, potential.strength28);
  const waits = story.state === "told" && strength.state !== "shown";
  const drilling = drillingOf(job, maker, strength, ask);
  const pour = pourOf(subject, since);
  return {
    title: job.title,
    units: job.units,
    today,
    concrete: subject.words,
    poured,
    pour,
    age: pour === "gone-by" ? undefined : age,
    ask: ask === undefined ? undefined : askTerm(job, ask),
    strength28,
    gain: { words: choice.words, ...gainTerms(job, choice, ask, potential.strength28, strength28) },
    told: story.state,
    counts:
      story.state === "told" ? countAnswers({ job, choice, story, question, potential, age, poured, strength28 }) : [],
    maker,
    strength,
    drilling,
    sentence:
      pour === "gone-by"
        ? `${goneBy(poured!)} If it was poured that day: ${drilling.sentence}`
        : drilling.sentence + (past(drilling, today) ? " That day is past." : ""),
    heat:
      !setting || detail === "word" || strength.state === "shown"
        ? []
        : waits
          ? heatRows(setting)
          : constantRows(setting),
    heatEnough: waits && setting ? heatEnough(setting) : [],
    cylinders: findings,
    notes: story.notes,
    warnings: warningsFor(job, story, choice, potential.strength28, poured, question),
    curve:
      detail === "word"
        ? []
        : story.state === "told"
          ? curveOf(story, choice.gain, potential, maker, strength)
          : strength.state === "not-known"
            ? constantCurves(job, choice.gain, potential, maker)
            : [],
  };
};
