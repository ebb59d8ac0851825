import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { ClockOptions } from "../cure/clock.ts";
import { whenFrost, whenRain } from "./advice.ts";
import { type Curing, curingOf } from "./curing.ts";
import { type Evaporation, evaporationOf } from "./evaporation.ts";
import { type LimitAnswer, limitsOf } from "./limits.ts";
import { type Weather, weatherOf } from "./weather.ts";
import { type PourWindows, windowsOf } from "./windows.ts";

/** What pour day asks for. Plain data. */
export interface PourDay {
  readonly evaporation: Evaporation | undefined;
  /** what is not known of the weather for the rate */
  readonly missing: readonly string[];
  readonly limits: readonly LimitAnswer[];
  readonly windows: PourWindows;
  readonly curing: Curing;
  readonly rain: readonly string[];
  readonly frost: readonly string[];
  /** what must be said first, most serious first; empty where nothing is against pouring */
  readonly warnings: readonly string[];
}

const thinnest = ({ floor }: Job): number => {
  const known = [floor.thickness, ...floor.zones.map(({ thickness }) => thickness)].flatMap((t) =>
    t.known ? [t.low] : [],
  );
  return known.length > 0 ? Math.min(...known) : 100;
};

const brokenWords = ({ id, found, limit, next }: LimitAnswer): string => {
  const print = (term: Term | undefined): string => (term ? `${Math.round(term.value)} ${term.unit}` : "");
  const what = id === "cold-weather" ? "Air" : "Concrete";
  return `${what} of ${print(found)} is ${id.startsWith("hot") ? "over" : "under"} ${print(limit)}. ${next}`;
};

/** Evaporation, limits of heat and cold, set and saw windows, curing, and what to do when the weather turns. */
export const pourDay = (job: Job, given: Weather = {}, { log = [] }: ClockOptions = {}): PourDay => {
  const weather = weatherOf(job, given);
  const rate = evaporationOf(job, weather);
  const evaporation = "missing" in rate ? undefined : rate;
  const limits = limitsOf(job, weather, thinnest(job));
  const broken = limits.filter(({ state }) => state === "broken");
  return {
    evaporation,
    missing: "missing" in rate ? rate.missing : [],
    limits,
    windows: windowsOf(job, weather),
    curing: curingOf(job, log),
    rain: whenRain,
    frost: whenFrost,
    warnings: [
      ...broken
        .filter(({ id }) => id !== "hot-care" || !broken.some((limit) => limit.id === "hottest"))
        .map(brokenWords),
      ...(evaporation && evaporation.drying !== "slow" ? [evaporation.sentence] : []),
    ],
  };
};
