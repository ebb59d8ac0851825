import type { Choice, Job, KnownChoice, KnownQuantity } from "@floorworthy/job";
import type { Assessment, MissingFact, Outcome, Stop } from "./assessment.ts";
import { factsOf } from "./facts/facts.ts";

type Judge = (job: Job) => Pick<Assessment, "outcome">;

interface Question {
  readonly id: string;
  readonly what: string;
  readonly how: string;
  /** US, 2020s, common practice, no source */
  readonly cost: string;
  /** whether the answer is got by looking and asking, or by a hole in the slab */
  readonly got: "looking" | "drilling";
  readonly open: (job: Job) => boolean;
  readonly worst: (job: Job) => Job;
  readonly best: (job: Job) => Job;
}

const PSI = 0.006894757293168361;
const IN = 25.4;

const chosen = <T extends string>(value: T): KnownChoice<T> => ({
  known: true,
  value,
  basis: { kind: "assumed", why: "to see what it would change" },
});
const amount = (value: number, written: string): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  written,
  basis: { kind: "measured", how: "to see what it would change" },
});

const floorChoice = <K extends "postTension" | "heat" | "kind" | "below">(
  id: string,
  key: K,
  words: Pick<Question, "what" | "how" | "cost">,
  worst: string,
  best: string,
  open: (job: Job) => boolean,
): Question => ({
  id,
  ...words,
  got: "looking",
  open,
  worst: (job) => ({ ...job, floor: { ...job.floor, [key]: chosen(worst) } }),
  best: (job) => ({ ...job, floor: { ...job.floor, [key]: chosen(best) } }),
});

const unknownChoice = (choice: Choice<string>): boolean => !choice.known;
const isStanding = (job: Job): boolean => job.floor.state === "standing";

/** Cheapest first. */
const questions: readonly Question[] = [
  floorChoice(
    "post-tension",
    "postTension",
    {
      what: "whether the slab is post-tensioned",
      how: "look for a stamp or sign at the door and for grouted pockets along the slab's edge; ask for the drawings",
      cost: "$0, ten minutes",
    },
    "suspected",
    "none-shown",
    (job) => isStanding(job) && unknownChoice(job.floor.postTension),
  ),
  floorChoice(
    "heat",
    "heat",
    {
      what: "whether there are heating tubes in the slab",
      how: "look for a manifold or a thermostat; ask who was there at the pour",
      cost: "$0, ten minutes",
    },
    "not-located",
    "none",
    (job) => isStanding(job) && unknownChoice(job.floor.heat),
  ),
  floorChoice(
    "below",
    "below",
    {
      what: "what lies below the slab",
      how: "walk round the house and look for a door or a space below",
      cost: "$0, ten minutes",
    },
    "space",
    "ground",
    (job) => isStanding(job) && unknownChoice(job.floor.below) && unknownChoice(job.floor.kind),
  ),
  {
    id: "thickness",
    what: "thickness of the slab at each base",
    how: "drill four small holes just outside the corners of each base, more than 2 ft from slab edges, and hook the underside; never where tendons are possible",
    cost: "$0 to $150, an hour",
    got: "drilling",
    open: (job) =>
      isStanding(job) && factsOf(job).thickness.some((under) => under.shown === "unknown" || under.shown === "named"),
    worst: (job) => withThickness(job, -0.75 * IN),
    best: (job) => withThickness(job, 0.5 * IN),
  },
  {
    id: "strength",
    what: "strength of the concrete",
    how: "delivery tickets with cylinder reports if they exist; otherwise three cores tested and judged by ACI 214.4R",
    cost: "$0 for papers, $600 to $1,500 for cores",
    got: "drilling",
    open: (job) => isStanding(job) && factsOf(job).strength.some((found) => found.shown === undefined),
    worst: (job) => withStrength(job, 2000 * PSI),
    best: (job) => withStrength(job, 4000 * PSI),
  },
];

/** @returns the same job with the slab measured at every base: the named thickness (or 4 in) changed by `by` mm */
const withThickness = (job: Job, by: number): Job => {
  const named = job.floor.thickness.known ? job.floor.thickness.value : 4 * IN;
  const reading = (near: "left" | "right") => ({
    at: undefined,
    near,
    thickness: amount(named + by + IN / 4, "?"),
    method: "drill" as const,
    end: "through" as const,
    under: { known: false } as const,
    place: "slab" as const,
    note: undefined,
  });
  return { ...job, floor: { ...job.floor, readings: [...job.floor.readings, reading("left"), reading("right")] } };
};

const withStrength = (job: Job, fc: number): Job => {
  const test = { strength: amount(fc, "?"), ageDays: 28, cured: "standard" as const };
  return {
    ...job,
    floor: {
      ...job.floor,
      strength: { ...job.floor.strength, specified: { known: false }, cylinders: [test], cores: [] },
    },
  };
};

/**
 * The open questions of a job, each with the outcome at its worst and its best answer. Where a stop stands, no hole is
 * proposed; where tendons or tubes are not ruled out yet, that comes before any hole.
 */
export const missingFacts = (job: Job, stops: readonly Stop[], judge: Judge): MissingFact[] =>
  questions
    .filter((question) => question.open(job) && !(question.got === "drilling" && stops.length > 0))
    .map(({ id, what, how, cost, got, worst, best }) => {
      const outcomes: readonly [Outcome, Outcome] = [judge(worst(job)).outcome, judge(best(job)).outcome];
      return {
        id,
        what,
        how: got === "drilling" && !mayDrill(job) ? `no hole before tendons and tubes are ruled out; then ${how}` : how,
        cost,
        worst: outcomes[0],
        best: outcomes[1],
        flips: outcomes[0] === outcomes[1] ? "keeps" : "flips",
      };
    });

const mayDrill = ({ floor }: Job): boolean =>
  floor.postTension.known &&
  floor.postTension.value === "none-shown" &&
  floor.heat.known &&
  floor.heat.value !== "not-located";
