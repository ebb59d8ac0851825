import type { Job } from "@floorworthy/job";
import type { MissingFact, Outcome, Settling, Stop } from "./assessment.ts";
import { byAsking } from "./missing/by-asking.ts";
import { byDrilling } from "./missing/by-drilling.ts";
import { byLooking } from "./missing/by-looking.ts";
import type { Question } from "./missing/question.ts";
import { settlingSet } from "./missing/settle.ts";

type Judge = (job: Job) => { readonly outcome: Outcome };

/** Cheapest first. */
const questions: readonly Question[] = [...byLooking, ...byAsking, ...byDrilling];

/**
 * The open questions of a job, each with the outcome at its worst and its best answer, and the cheapest set that settles
 * it. Where a stop stands only what bears on stops is asked, and no hole is proposed; where tendons or tubes are not ruled out yet, that comes before any hole.
 */
export const missingFacts = (
  job: Job,
  stops: readonly Stop[],
  judge: Judge,
): { readonly facts: readonly MissingFact[]; readonly settling: Settling | undefined } => {
  const asked = stops.length > 0 ? byLooking.filter(({ id }) => id !== "top") : questions;
  const open = asked.filter((question) => question.open(job));
  const outcomeOf = (changed: Job): Outcome => judge(changed).outcome;
  return {
    facts: open.map((question) => factOf(job, question, outcomeOf)),
    settling: settlingSet(job, open, outcomeOf),
  };
};

const factOf = (job: Job, question: Question, outcomeOf: (job: Job) => Outcome): MissingFact => {
  const { id, what, how, cost, costClass, risk } = question;
  const [worst, best] = [outcomeOf(question.worst(job)), outcomeOf(question.best(job))];
  return {
    id,
    what,
    how: risk !== "none" && !mayDrill(job) ? `no hole before tendons and tubes are ruled out; then ${how}` : how,
    cost,
    worst,
    best,
    flips: worst === best ? "keeps" : "flips",
    costClass,
    risk,
  };
};

const mayDrill = ({ floor }: Job): boolean =>
  floor.postTension.known &&
  floor.postTension.value === "none-shown" &&
  floor.heat.known &&
  floor.heat.value !== "not-located" &&
  !(floor.utilities.known && floor.utilities.value === "not-located");
