import { toBase } from "@floorworthy/engine/quantities";
import type { Job, Zone } from "@floorworthy/job";
import { ageOf } from "../facts/age.ts";
import { basisWords } from "../facts/known.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { placedBases } from "../layout.ts";

/** The concrete the clock runs for. MPa, dates YYYY-MM-DD. */
export interface Subject {
  /** e.g. "left pad and right pad" */
  readonly words: string;
  readonly poured: string | undefined;
  /** `to-come`: the job says that it is still to be poured, and keeps nothing that only comes with a pour */
  readonly stands: "there" | "to-come";
  /** age in days on the job's date where no day of the pour is known */
  readonly ageDays: number | undefined;
  /** 28-day strength ordered */
  readonly strength28: { readonly value: number; readonly basis: string };
  /** is it the slab itself, so that the floor's own cylinders speak for it */
  readonly whole: "slab" | "part";
}

const ORDINARY = toBase(4000, "psi");

/** The ordered strength of the concrete under the bases, the lowest where there are several; 4,000 psi where nobody says. */
const orderedStrength = (job: Job, zones: readonly Zone[]): Subject["strength28"] => {
  const own = zones.flatMap(({ strength, name }) =>
    strength.known ? [{ value: strength.low, basis: `${name}: ${basisWords(strength.basis)}` }] : [],
  );
  const { specified } = job.floor.strength;
  const said = [
    ...own,
    ...(own.length === 0 && job.pour?.strength.known
      ? [{ value: job.pour.strength.low, basis: `the job's pour: ${basisWords(job.pour.strength.basis)}` }]
      : []),
    ...(own.length === 0 && !job.pour?.strength.known && specified.known && zones.every(castWith)
      ? [{ value: specified.low, basis: `the floor's specification: ${basisWords(specified.basis)}` }]
      : []),
  ];
  return (
    said.toSorted((a, b) => a.value - b.value)[0] ?? {
      value: ORDINARY,
      basis:
        "assumed: nobody has said what was ordered; 4,000 psi is the trade's usual mix (common practice, no source)",
    }
  );
};

const castWith = ({ tied }: Zone): boolean => tied.known && tied.value === "cast-with";

/** What was, or is to be, poured under the bases. */
export const subjectOf = (job: Job): Subject => {
  const under = placedBases(job).map((base) => zoneUnder(job, base));
  const zones = [...new Set(under.filter((zone) => zone !== undefined))];
  const { poured, days } = ageOf(job, under.length > 0 ? under : [undefined]);
  const ownPour = zones.filter((zone) => zone.kind !== "slab" && !castWith(zone));
  return {
    words: ownPour.length > 0 ? list(ownPour.map(({ name }) => name || "the pad")) : "the slab",
    poured: poured ?? job.pour?.date,
    stands: saysToBePoured(job, zones) && !showsPour(job) ? "to-come" : "there",
    ageDays: poured === undefined ? days : undefined,
    strength28: orderedStrength(job, zones),
    whole: ownPour.length > 0 ? "part" : "slab",
  };
};

const saysToBePoured = ({ floor }: Job, zones: readonly Zone[]): boolean =>
  floor.state === "to-be-poured" || zones.some(({ state }) => state === "proposed");

/** Trucks, cylinders and temperatures by the day are written down only once it has been poured. */
const showsPour = ({ pour }: Job): boolean =>
  [pour?.tickets, pour?.cylinders, pour?.days].some((kept) => kept !== undefined && kept.length > 0);

const list = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
