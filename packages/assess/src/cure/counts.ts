import { type Band, cautiousDay, type Gain, hardeningBand, type TemperatureStory } from "@floorworthy/engine/concrete";
import { dayReached, type Potential } from "./potential.ts";
import type { Told } from "./told.ts";

export type CountName = keyof Band;

export const countNames: readonly CountName[] = ["cautious", "usual", "arrhenius"];

export const countWords: Readonly<Record<CountName, string>> = {
  cautious: "Nurse-Saul, datum 0 °C (32 °F)",
  usual: "Nurse-Saul, datum −10 °C (14 °F)",
  arrhenius: "Arrhenius, Q 5000 K",
};

export const countClause: Readonly<Record<CountName, string>> = {
  cautious: "ASTM C1074 Eq. 1; reference 73 °F",
  usual: "ASTM C1074 Eq. 1; reference 73 °F",
  arrhenius: "ASTM C1074 Eq. 3; reference 73 °F",
};

export const countFormula: Readonly<Record<CountName, string>> = {
  cautious: "Σ max(0, T − T0)/(Tr − T0) Δt",
  usual: "Σ max(0, T − T0)/(Tr − T0) Δt",
  arrhenius: "Σ exp{−Q [1/(273 + T) − 1/(273 + Tr)]} Δt",
};

/** The question every row of heat answers again. */
export interface Question {
  readonly gain: Gain;
  readonly potential: Potential;
  /** MPa */
  readonly ask: number;
}

/** The day by each count. */
export const daysByCount = (story: TemperatureStory, { gain, potential, ask }: Question): Band => {
  const of = (name: CountName): number => dayReached(story, hardeningBand[name], gain, potential, ask);
  return { cautious: of("cautious"), usual: of("usual"), arrhenius: of("arrhenius") };
};

/** Earliest and latest day the strength is to be expected: over the counts and over the range of the temperatures. */
export const strengthSpan = (
  { low, value, high }: Pick<Told, "low" | "value" | "high">,
  question: Question,
): { readonly from: number; readonly cautious: number } => {
  const all = [low, value, high].map((story) => daysByCount(story, question));
  return {
    from: Math.min(...all.flatMap((days) => [days.cautious, days.usual, days.arrhenius])),
    cautious: Math.max(...all.map(cautiousDay)),
  };
};
