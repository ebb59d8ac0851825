import { fromBase, type Term, type Unit } from "@floorworthy/engine/quantities";
import type { Job, PourWeather, Quantity } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";

/** What a person says of the weather; a part left out is taken from the job. */
export type Weather = Partial<PourWeather>;

const none: Quantity = { known: false };

const first = (...facts: readonly (Quantity | undefined)[]): Quantity => facts.find((fact) => fact?.known) ?? none;

/** The weather given, completed by the job's. */
export const weatherOf = ({ pour }: Job, given: Weather = {}): PourWeather => ({
  air: first(given.air, pour?.weather?.air),
  humidity: first(given.humidity, pour?.weather?.humidity),
  wind: first(given.wind, pour?.weather?.wind),
  concrete: first(given.concrete, pour?.weather?.concrete),
});

const symbols = {
  air: ["Ta", "air in the shade"],
  humidity: ["r", "relative humidity"],
  wind: ["V", "wind just above the slab"],
  concrete: ["Tc", "concrete as placed"],
} as const;

const unitsOf = ({ units }: Job): Readonly<Record<keyof PourWeather, Unit>> =>
  units === "si"
    ? { air: "°C", humidity: "%", wind: "km/h", concrete: "°C" }
    : { air: "°F", humidity: "%", wind: "mph", concrete: "°F" };

/** A part of the weather as a term in the job's units. */
export const weatherTerm = (job: Job, part: keyof PourWeather, fact: Quantity): Term | undefined => {
  if (!fact.known) return undefined;
  const unit = unitsOf(job)[part];
  const [symbol, words] = symbols[part];
  return { symbol, words, value: fromBase(fact.value, unit), unit, basis: basisWords(fact.basis) };
};

export const weatherWords = (part: keyof PourWeather): string => symbols[part][1];
