import { coolestPlacing, type PourLimit, pourLimits } from "@floorworthy/engine/concrete";
import { fromBase, type Term } from "@floorworthy/engine/quantities";
import type { Job, PourWeather, Quantity } from "@floorworthy/job";
import { temperatureUnit } from "../cure/words.ts";
import { weatherTerm } from "./weather.ts";

/** A limit of heat or cold against the weather. */
export interface LimitAnswer {
  readonly id: "hottest" | "hot-care" | "coolest" | "cold-weather";
  readonly words: string;
  readonly limit: Term;
  readonly found: Term | undefined;
  readonly state: "kept" | "broken" | "not-known";
  /** what to do when it is broken */
  readonly next: string;
}

const answer = (
  job: Job,
  id: LimitAnswer["id"],
  limit: PourLimit,
  part: keyof PourWeather,
  fact: Quantity,
  broken: (value: number) => boolean,
  next: string,
): LimitAnswer => {
  const unit = temperatureUnit(job.units);
  return {
    id,
    words: limit.words,
    limit: { symbol: "T", words: limit.words, value: fromBase(limit.temperature, unit), unit, clause: limit.source },
    found: weatherTerm(job, part, fact),
    state: !fact.known ? "not-known" : broken(fact.value) ? "broken" : "kept",
    next,
  };
};

/** Hot and cold limits; `thickness` of the thinnest concrete poured, mm. */
export const limitsOf = (job: Job, { air, concrete }: PourWeather, thickness: number): readonly LimitAnswer[] => {
  const coolest = coolestPlacing(thickness);
  const { hottestConcrete, hotCare, coldWeather } = pourLimits;
  return [
    answer(
      job,
      "hottest",
      hottestConcrete,
      "concrete",
      concrete,
      (t) => t > hottestConcrete.temperature,
      "Send the load back or have it iced: hot concrete sets in the chute and cracks.",
    ),
    answer(
      job,
      "hot-care",
      hotCare,
      "concrete",
      concrete,
      (t) => t > hotCare.temperature,
      "Shade, wet base and forms, fog, small loads, more hands, and the saw ready early.",
    ),
    answer(
      job,
      "coolest",
      coolest,
      "concrete",
      concrete,
      (t) => t < coolest.temperature,
      "Ask the plant for warm water; concrete that starts cold gains for days next to nothing.",
    ),
    answer(
      job,
      "cold-weather",
      coldWeather,
      "air",
      air,
      (t) => t < coldWeather.temperature,
      "Never on frozen ground. Blankets or a heated tent ready before the truck comes; vent heaters, their fumes weaken the surface.",
    ),
  ];
};
