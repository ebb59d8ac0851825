import { loadCases, toPlan } from "@floorworthy/engine/frames";
import { isUnable, type Term } from "@floorworthy/engine/quantities";
import { assumed, type Default, defaults, type Job, type Quantity } from "@floorworthy/job";
import type { Assessment, CaseReactions } from "../assessment.ts";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { liftTurn } from "../layout.ts";
import type { ReferralLoads } from "./referral-pack.ts";

/**
 * Loads of the lift on its bases. Where the margin was computed, its cases; under a stop, statics alone: a load is a fact
 * of the lift, and no strength of this floor is set against it.
 */
export const loadsOf = (job: Job, { margin }: Assessment): ReferralLoads => {
  const weights = weightsOf(job);
  if (margin.cases.length > 0) {
    return {
      from: job.lift.reactions.length > 0 ? "the maker's reactions" : "computed beside the maker's page",
      words: "Loads on each base, service level, not factored.",
      assumed: [],
      cases: margin.cases,
      weights,
    };
  }
  if (job.lift.reactions.length > 0) return makers(job, weights);
  return statics(job, weights);
};

const weightsOf = ({ lift, units, vehicles }: Job): readonly Term[] => {
  const weight = (symbol: string, words: string, fact: Quantity): readonly Term[] =>
    fact.known ? [term(symbol, words, fact.high, "force", units, { basis: basisWords(fact.basis) })] : [];
  return [
    ...weight("W", "rated load of the lift", lift.rated),
    ...weight("W_c", "one column with carriage and arms", lift.columnWeight),
    ...vehicles.flatMap(({ name, weight: w }, i) => weight(`W_${i + 1}`, name, w)),
  ];
};

const none = (words: string, weights: readonly Term[]): ReferralLoads => ({
  from: "not computed",
  words,
  assumed: [],
  cases: [],
  weights,
});

const makers = (job: Job, weights: readonly Term[]): ReferralLoads => ({
  from: "the maker's reactions",
  words: "Loads on each base as the maker states them; what the sheet leaves out counts as none.",
  assumed: [],
  cases: job.lift.reactions.map(({ name, P, Min, Mfa, Vu, Vv }) => {
    const value = (fact: Quantity): number => (fact.known ? fact.high : 0);
    const load = {
      P: value(P),
      inwardMoment: value(Min),
      foreAftMoment: value(Mfa),
      inwardShear: value(Vu),
      foreAftShear: value(Vv),
      twist: 0,
    };
    const terms = [term("P", "vertical load on the base", load.P, "force", job.units, { basis: "the maker's sheet" })];
    return {
      name,
      counted: "counted",
      bases: (["left", "right"] as const).map((side) => ({ side, ...toPlan(load, side, liftTurn(job)), terms })),
    };
  }),
  weights,
});

/** What statics needs and the job does not say; its stand-in goes on the list. */
const statics = (job: Job, weights: readonly Term[]): ReferralLoads => {
  const { lift } = job;
  if (lift.kind !== "two-post")
    return none("Loads of this kind of lift are to be had from its maker, in writing.", weights);
  if (!lift.rated.known || !lift.spacing.known)
    return none("Rated load or column spacing is not known: the maker states the loads, in writing.", weights);
  const taken: string[] = [];
  const stand = (words: string, given: Default): number => {
    taken.push(`${words}: ${given.value} ${given.unit}`.trim());
    return assumed(given).value;
  };
  const of = (fact: Quantity, words: string, given: Default): number => (fact.known ? fact.high : stand(words, given));
  const rated = lift.rated.high;
  const half = lift.spacing.value / 2;
  const reach = (fact: Quantity, words: string, given: Default): number =>
    fact.known ? fact.high : half - stand(`pads of ${words} from the vehicle's middle`, given);
  const tied = lift.top.known && lift.top.value === "overhead-tied" && lift.tieHeight.known;
  if (!lift.top.known) taken.push("top of the lift: free-standing, the worse");
  if (lift.top.known && lift.top.value === "overhead-tied" && !lift.tieHeight.known)
    taken.push("height of the beam is not known: taken as free-standing, the worse");
  const tieHeight = lift.tieHeight.known ? lift.tieHeight.value : Number.POSITIVE_INFINITY;
  const columnWeight = lift.columnWeight.known
    ? lift.columnWeight.high
    : stand("one column, of the rated load", defaults.columnWeightShare) * rated;
  const pads = [
    {
      kind: "car",
      reach: reach(lift.reachCar, "cars", defaults.padsFromMiddleCar),
      padSpacing: of(lift.padSpacing, "pad spacing of cars", defaults.padSpacingCar),
    },
    {
      kind: "frame-truck",
      reach: reach(lift.reachTruck, "frame trucks", defaults.padsFromMiddleTruck),
      padSpacing: of(lift.padSpacing, "pad spacing of frame trucks", defaults.padSpacingTruck),
    },
  ] as const;
  const cases = loadCases(
    {
      top: tied ? "overhead-tied" : "free-standing",
      spacing: lift.spacing.value,
      ...(tied ? { tieHeight } : {}),
      columnWeight,
      reach: pads[0].reach,
      baseStiffness: "rigid",
    },
    {
      weight: rated,
      dynamicFactor: of(job.choices.dynamicFactor, "shock factor", defaults.dynamicFactor),
      pads,
      pickUpHeight: of(lift.pickupHeight, "carriage at pick-up", defaults.pickupHeight),
      fullRise: Math.min(of(lift.fullHeight, "carriage at full rise", defaults.fullHeight), tieHeight),
      unevenShare: of(job.choices.uneven, "share of the heavier column", defaults.unevenShare),
      workForce: of(job.choices.workForce, "push of hands at work", defaults.workForce),
    },
  );
  if (isUnable(cases)) return none(`Not computed: ${cases.reason}`, weights);
  return {
    from: "statics of the lift",
    words: "Loads on each base by statics, service level, not factored; no strength of this floor is set against them.",
    assumed: taken,
    cases: cases.map((c): CaseReactions => {
      const side = (s: "left" | "right") => ({
        side: s,
        ...toPlan(c[s], s, liftTurn(job)),
        terms: Object.values(c.terms[s]),
      });
      return {
        name: c.name,
        counted: c.standing === "information" ? "information" : "counted",
        bases: [side("left"), side("right")],
      };
    }),
    weights,
  };
};
