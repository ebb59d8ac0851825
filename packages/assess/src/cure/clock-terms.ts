import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import type { GainChoice } from "./gain.ts";
import { neededAge } from "./potential.ts";
import type { Subject } from "./subject.ts";

export const askTerm = (job: Job, ask: number): Term =>
  term("f", "compressive strength the maker asks", ask, "stress", job.units, {
    ...(job.lift.asks.strength.known ? { basis: basisWords(job.lift.asks.strength.basis) } : {}),
  });

export const strength28Term = (job: Job, { strength28 }: Subject, counted: number): Term => {
  const ordered = term("f'c", "28-day strength ordered", strength28.value, "stress", job.units, {
    basis: strength28.basis,
  });
  return counted < strength28.value * (1 - 1e-9)
    ? term("f'c", "28-day strength counted", counted, "stress", job.units, {
        basis: "standard-cured cylinders lie under the order",
        from: [ordered],
      })
    : ordered;
};

export const gainTerms = (
  job: Job,
  choice: GainChoice,
  ask: number | undefined,
  strength28: number,
  strengthTerm: Term,
): { needed: Term | undefined; beside: Term | undefined } => {
  if (ask === undefined) return { needed: undefined, beside: undefined };
  const of = (gain: GainChoice["gain"], words: string, rest: Partial<Term>): Term =>
    term("t", words, neededAge(ask, gain, { strength28 }), "days", job.units, rest);
  return {
    needed: of(choice.gain, "days of standard curing until the strength asked", {
      clause: choice.clause,
      formula: `${choice.formula} = f/f'c, solved for t`,
      basis: choice.words,
      from: [askTerm(job, ask), strengthTerm],
    }),
    beside: of(choice.beside.gain, `the same by ${choice.beside.words}; beside, not counted`, {
      clause: choice.beside.words,
      from: [askTerm(job, ask), strengthTerm],
    }),
  };
};
