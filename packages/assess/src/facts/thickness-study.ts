import { isUnable, type Term, unable } from "@floorworthy/engine/quantities";
import {
  boundFactor,
  boundFromLowerLimits,
  type CensoredFit,
  type Claim,
  fitCensored,
  lowerFractileBound,
  moreReadings,
  noSpreadPrior,
  type Reading,
  type SpreadPrior,
  slabSurveys,
} from "@floorworthy/engine/statistics";
import type { Job, Quantity } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { placedBases } from "../layout.ts";
import { levelsAmong } from "./levels.ts";
import { shown, term } from "./print.ts";
import { type CountedReading, middleReadings, readingsAt } from "./readings.ts";
import type { LevelChange, ThicknessGroup, ThicknessStudy } from "./survey-answer.ts";
import { toleranceTerms } from "./thickness-order.ts";

/** As for an ordinary structure in ACI 214.4R: nine tenths of the concrete, said with a confidence of three quarters. */
const CLAIM: Claim = { content: 0.9, confidence: 0.75 };

/** @returns per base and for the slab: sample, spread, one-sided lower bound, and how many more holes would settle it */
export const thicknessStudy = (job: Job): ThicknessStudy => {
  const bases = placedBases(job).map((base) => ({ base, ...readingsAt(job, base) }));
  const asked = job.lift.asks.thickness;
  const between = bases[0] ? middleReadings(job, bases[0].base) : [];
  const all = [...new Map([...bases.flatMap(({ valid }) => valid), ...between].map((r) => [r.reading, r])).values()];
  const groups = sameReadings(bases).map(({ name, valid }) =>
    groupOf(job, name, valid, levelsAmong(job, valid), asked),
  );
  const slab =
    all.length > 0 && bases.length > 1 && !(groups[0]?.name === EVERY && groups[0].count === all.length)
      ? [groupOf(job, "slab", all, levelsAmong(job, all), asked)]
      : [];
  return {
    groups: [...groups, ...slab],
    refused: [...new Set(bases.flatMap(({ refused }) => refused))],
    order: toleranceTerms(job, all),
  };
};

interface AtBase {
  readonly base: PlacedBase;
  readonly valid: readonly CountedReading[];
}

const EVERY = "every base";

/** Two bases are named each; of more, those that rest on the same readings are said once. */
const sameReadings = (bases: readonly AtBase[]): readonly { name: string; valid: AtBase["valid"] }[] => {
  const told = bases.filter(({ valid }) => valid.length > 0);
  if (bases.length <= 2) return told.map(({ base, valid }) => ({ name: `${base.side} base`, valid }));
  const sets: { sides: string[]; valid: AtBase["valid"] }[] = [];
  for (const { base, valid } of told) {
    const known = sets.find((set) => alike(set.valid, valid));
    if (known) known.sides.push(base.side);
    else sets.push({ sides: [base.side], valid });
  }
  return sets.map(({ sides, valid }) => ({
    name: sides.length === bases.length ? EVERY : sides.map((side) => `${side} base`).join(", "),
    valid,
  }));
};

const alike = (a: AtBase["valid"], b: AtBase["valid"]): boolean =>
  a.length === b.length && a.every(({ reading }, i) => reading === b[i]!.reading);

const groupOf = (
  job: Job,
  name: string,
  readings: readonly CountedReading[],
  levels: LevelChange | undefined,
  asked: Quantity,
): ThicknessGroup => {
  const open = readings.filter(({ reading }) => reading.end !== "through").length;
  const common = { name, count: readings.length, open, levels };
  const nothing = { ...common, terms: [], bound: undefined, more: undefined };
  if (levels) return { ...nothing, unable: unable(name, `${levels.words}: no mean or bound is formed over both`) };
  const values = readings.map(asReading);
  if (values.every((v) => v.kind === "at-least")) return { ...nothing, ...onlyAtLeast(job, name, values) };
  const prior = priorFor(values);
  const fit = fitCensored(values, prior);
  if (isUnable(fit)) return { ...nothing, unable: fit };
  const lower = lowerFractileBound(fit, CLAIM);
  if (!Number.isFinite(lower))
    return { ...nothing, unable: unable(name, "the readings are too uncertain to bound the thickness") };
  const terms = fitTerms(job, name, fit, Math.max(0, lower));
  return { ...common, terms, bound: terms.at(-1), unable: undefined, more: moreWords(job, fit, asked) };
};

/** As read, without any layer; the error of the method is part of the spread. */
const asReading = ({ reading, low, high }: CountedReading): Reading =>
  reading.end === "still-concrete"
    ? { kind: "at-least", value: low }
    : reading.end === "dropped"
      ? { kind: "at-most", value: high }
      : high > low
        ? { kind: "between", low, high }
        : { kind: "exact", value: low };

/** Fewer than three full readings, or readings all alike, show no spread: that of surveys of whole floors stands in. */
const priorFor = (readings: readonly Reading[]): SpreadPrior => {
  const full = readings.flatMap((r) =>
    r.kind === "exact" ? [r.value] : r.kind === "between" ? [(r.low + r.high) / 2] : [],
  );
  return full.length >= 3 && Math.max(...full) - Math.min(...full) > 1 ? noSpreadPrior : slabSurveys;
};

const onlyAtLeast = ({ units }: Job, name: string, values: readonly Reading[]) => {
  const limits = values.flatMap((v) => (v.kind === "at-least" ? [v.value] : []));
  const bound = term(
    "L",
    `lower bound at the ${name}: 90 % of the concrete is thicker, said with 75 % confidence`,
    boundFromLowerLimits(limits, slabSurveys.spread, CLAIM),
    "length",
    units,
    {
      formula: "c + s [Φ⁻¹((1 − 0.75)^(1/n)) − z₀.₉]",
      basis: "every hole ended in concrete, none shows where it stops; spread as in surveys of cored floors",
      clause: "Gustaferro 1989, in ASCC Position Statement 9; Owen 1958",
    },
  );
  return { terms: [bound], bound, unable: undefined };
};

const fitTerms = ({ units }: Job, name: string, fit: CensoredFit, lower: number): Term[] => {
  const mean = term(
    "t̄",
    `mean at the ${name}; for information, never compared with the maker's minimum`,
    fit.mean,
    "length",
    units,
    {
      formula: "maximum likelihood over full and open readings",
      clause: "Burridge 1981",
    },
  );
  const spread = term("s", "spread (standard deviation)", fit.spread, "length", units, {
    basis:
      fit.prior.freedom > 0
        ? "too few full readings to show it: leaning on the spread of cored floors, 0.47 to 0.90 in"
        : "of these readings",
    ...(fit.prior.freedom > 0 ? { clause: "Gustaferro 1989, in ASCC Position Statement 9" } : {}),
  });
  const k = term(
    "k",
    `one-sided tolerance factor, worth of ${Math.round(fit.worth * 10) / 10} full readings`,
    boundFactor(fit.worth, fit.prior.freedom, CLAIM),
    "plain",
    units,
    { clause: "Owen 1958; Natrella 1963", formula: "t′(0.75; n − 1, z₀.₉ √n)/√n" },
  );
  const bound = term(
    "L",
    `lower bound at the ${name}: 90 % of the concrete is thicker, said with 75 % confidence`,
    lower,
    "length",
    units,
    {
      formula: "t̄ − k s; with open readings by profile likelihood",
      clause: "Owen 1958; Natrella 1963",
      from: [mean, spread, k],
    },
  );
  return [mean, spread, bound];
};

const moreWords = ({ units }: Job, fit: CensoredFit, asked: Quantity): string | undefined => {
  if (!asked.known) return undefined;
  const limit = shown(asked.high, "length", units);
  const found = moreReadings(fit, asked.high, CLAIM);
  switch (found.kind) {
    case "shown":
      return `the lower bound reaches the ${limit} the maker asks`;
    case "more":
      return `${found.count} more hole${found.count === 1 ? "" : "s"} like these would bring the lower bound to the ${limit} the maker asks`;
    case "not-likely":
      return `more holes are not likely to bring the lower bound to the ${limit} the maker asks`;
  }
};
