import { equivalentAge, hardeningBand } from "@floorworthy/engine/concrete";
import type { Term } from "@floorworthy/engine/quantities";
import { fromBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { term } from "../facts/print.ts";
import {
  type CountName,
  countClause,
  countFormula,
  countNames,
  countWords,
  daysByCount,
  type Question,
} from "./counts.ts";
import type { GainChoice } from "./gain.ts";
import { meanOver } from "./pieces.ts";
import { type Potential, strengthOn } from "./potential.ts";
import type { Told } from "./told.ts";
import { type CureDate, cureDate, temperatureUnit } from "./words.ts";

/** One way of counting: what the concrete has had by today, and when the strength is there, at the temperatures as told. */
export interface CountAnswer {
  readonly count: CountName;
  readonly words: string;
  /** days of standard curing by today; undefined before the pour */
  readonly equivalentAge: Term | undefined;
  readonly strengthToday: Term | undefined;
  /** day after the pour; Infinity when never; undefined where the page asks no strength */
  readonly day: Term | undefined;
  readonly date: CureDate | undefined;
}

interface Asked {
  readonly job: Job;
  readonly choice: GainChoice;
  readonly story: Told;
  readonly question: Question | undefined;
  readonly potential: Potential;
  readonly age: number | undefined;
  readonly poured: string | undefined;
  readonly strength28: Term;
}

export const countAnswers = (asked: Asked): readonly CountAnswer[] => countNames.map((name) => answerBy(asked, name));

const answerBy = (asked: Asked, name: CountName): CountAnswer => {
  const { job, question, story, poured, age } = asked;
  const days = question ? daysByCount(story.value, question)[name] : undefined;
  const worth = age === undefined ? undefined : equivalentAgeTerm(asked, name, age);
  return {
    count: name,
    words: countWords[name],
    equivalentAge: worth,
    strengthToday: age === undefined || !worth ? undefined : strengthTerm(asked, name, age, worth),
    day:
      days === undefined
        ? undefined
        : term("d", `day the strength asked is there: ${countWords[name]}`, days, "days", job.units, {
            clause: countClause[name],
            formula: "first day on which the days of standard curing reach those needed",
            ...(question!.potential.field ? { basis: "the curve goes through the field-cured cylinder" } : {}),
          }),
    date: days === undefined ? undefined : cureDate(days, poured),
  };
};

const equivalentAgeTerm = ({ job, story }: Asked, name: CountName, age: number): Term =>
  term(
    "te",
    `days of standard curing by today: ${countWords[name]}`,
    equivalentAge(story.value, age, hardeningBand[name]),
    "days",
    job.units,
    {
      formula: countFormula[name],
      clause: countClause[name],
      from: [
        term("t", "age today", age, "days", job.units),
        ...(age > 0
          ? [
              {
                symbol: "T",
                words: "mean temperature so far (the sum runs over the whole story)",
                value: inUnit(meanOver(story.value, 0, age), job.units),
                unit: temperatureUnit(job.units),
              },
            ]
          : []),
      ],
    },
  );

const inUnit = (celsius: number, units: Job["units"]): number => fromBase(celsius, temperatureUnit(units));

const strengthTerm = (
  { job, choice, story, potential, strength28 }: Asked,
  name: CountName,
  age: number,
  worth: Term,
): Term =>
  term(
    "f(t)",
    `strength today: ${countWords[name]}`,
    strengthOn(story.value, age, hardeningBand[name], choice.gain, potential),
    "stress",
    job.units,
    {
      clause: choice.clause,
      formula: `f'c × ${choice.formula.replaceAll("t", "te")}`,
      from: [worth, strength28],
      ...(potential.field && age >= potential.field.age ? { basis: "through the field-cured cylinder" } : {}),
    },
  );
