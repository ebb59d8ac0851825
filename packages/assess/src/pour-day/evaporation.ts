import {
  type Drying,
  evaporationLimits,
  evaporationMenzel,
  evaporationUnoCustomary,
  evaporationUnoMetric,
  judgeEvaporation,
  type PourAir,
} from "@floorworthy/engine/concrete";
import { fromBase, type Term, type Unit } from "@floorworthy/engine/quantities";
import type { Job, PourWeather } from "@floorworthy/job";
import { weatherTerm, weatherWords } from "./weather.ts";

/** Water leaving the fresh surface against what fresh concrete bears. */
export interface Evaporation {
  /** the largest of the formulas */
  readonly rate: Term;
  /** what ±40 % of measured against charted evaporation leaves */
  readonly low: Term;
  readonly high: Term;
  readonly methods: readonly Term[];
  readonly care: Term;
  readonly act: Term;
  readonly drying: Drying;
  readonly sentence: string;
}

const sentences: Readonly<Record<Drying, string>> = {
  slow: "Drying is slow: finish and cure as usual.",
  care: "Drying asks for care: fog or an evaporation retarder at hand, a wind break where it blows, curing at once.",
  act: "Drying is too fast: wind breaks, shade, fog and cool concrete before the truck comes, or pour in the evening or on another day.",
};

const rateUnit = ({ units }: Job): Unit => (units === "si" ? "kg/m²/h" : "lb/ft²/h");

const parts = ["concrete", "air", "humidity", "wind"] as const satisfies readonly (keyof PourWeather)[];

/** The rate by Menzel and by both forms of Uno, or what is missing for it. */
export const evaporationOf = (
  job: Job,
  weather: PourWeather,
): Evaporation | { readonly missing: readonly string[] } => {
  const { concrete, air, humidity, wind } = weather;
  if (!concrete.known || !air.known || !humidity.known || !wind.known)
    return { missing: parts.filter((part) => !weather[part].known).map(weatherWords) };
  const pour: PourAir = {
    concrete: concrete.value,
    air: air.value,
    humidity: Math.min(1, humidity.value),
    wind: wind.value,
  };
  const unit = rateUnit(job);
  const inputs = parts.flatMap((part) => weatherTerm(job, part, weather[part]) ?? []);
  const of = (words: string, rate: number, rest: Partial<Term>): Term => ({
    symbol: "E",
    words,
    value: fromBase(rate, unit),
    unit,
    ...rest,
  });
  const methods = [
    of("by Menzel", evaporationMenzel(pour), {
      clause: "Menzel 1954, chart of ACI 305R",
      formula: "0.44 (e0 − r ea)(0.253 + 0.096 V), psi and mph",
      from: inputs,
    }),
    of("by Uno, metric form", evaporationUnoMetric(pour), {
      clause: "Uno 1998",
      formula: "5 ([Tc + 18]^2.5 − r [Ta + 18]^2.5)(V + 4) × 10⁻⁶, °C and km/h",
      from: inputs,
    }),
    of("by Uno, inch-pound form", evaporationUnoCustomary(pour), {
      clause: "Uno 1998",
      formula: "(Tc^2.5 − r Ta^2.5)(1 + 0.4 V) × 10⁻⁶, °F and mph",
      from: inputs,
    }),
  ];
  const { rate, low, high, drying } = judgeEvaporation(pour);
  const uncertain = { clause: "Hover 2020: measured lies within about 40 % of the chart" };
  const limit = { clause: "UFGS 03 30 00; FHWA-HRT-05-038" };
  return {
    rate: of("water leaving the surface, the largest of three formulas", rate, { from: methods }),
    low: of("at least", low, uncertain),
    high: of("at most", high, uncertain),
    methods,
    care: of("take care from", evaporationLimits.care, limit),
    act: of("act from", evaporationLimits.act, limit),
    drying,
    sentence: sentences[drying],
  };
};
