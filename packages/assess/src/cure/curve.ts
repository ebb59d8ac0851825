import { constantTemperature, type Gain, hardeningBand } from "@floorworthy/engine/concrete";
import type { Job } from "@floorworthy/job";
import { type CountName, countNames, countWords } from "./counts.ts";
import { type Potential, strengthOn } from "./potential.ts";
import type { Told } from "./told.ts";
import { type CureDate, constantTemperatures, printTemperature } from "./words.ts";

/** Strength against days by one way of counting: day after the pour, MPa. */
export interface CurveLine {
  readonly count: CountName;
  readonly words: string;
  readonly points: readonly { readonly day: number; readonly strength: number }[];
}

const POINTS = 80;
const LEAST = 28;
const MOST = 120;

/** Days the curve shows: past the maker's day and the cautious one. */
const spanOf = (maker: CureDate | undefined, cautious: CureDate | undefined): number => {
  const known = [maker?.day ?? 0, cautious?.day ?? 0].filter(Number.isFinite);
  return Math.min(MOST, Math.max(LEAST, ...known) * 1.15);
};

/** The cautious count at the cold end of the temperatures told, the usual one at the warm end, Arrhenius between. */
const endOf = { cautious: "low", usual: "high", arrhenius: "value" } as const satisfies Record<CountName, keyof Told>;

/** The three curves: a band between the first two, Arrhenius beside. */
export const curveOf = (
  story: Told,
  gain: Gain,
  potential: Potential,
  maker: CureDate | undefined,
  { cautious }: { readonly cautious: CureDate | undefined },
): readonly CurveLine[] => {
  const span = spanOf(maker, cautious);
  const days = Array.from({ length: POINTS + 1 }, (_, i) => (span * i) / POINTS);
  return countNames.map((count) => ({
    count,
    words: countWords[count],
    points: days.map((day) => ({
      day,
      strength: strengthOn(story[endOf[count]], day, hardeningBand[count], gain, potential),
    })),
  }));
};

/** The cautious curve at temperatures that never change, for a pour of which nobody has told any. */
export const constantCurves = (
  { units }: Pick<Job, "units">,
  gain: Gain,
  potential: Potential,
  maker: CureDate | undefined,
): readonly CurveLine[] => {
  const span = spanOf(maker, undefined);
  return constantTemperatures(units).map((temperature) => ({
    count: "cautious" as const,
    words: `always ${printTemperature(temperature, units)}`,
    points: Array.from({ length: POINTS + 1 }, (_, i) => {
      const day = (span * i) / POINTS;
      const story = constantTemperature(temperature);
      return { day, strength: strengthOn(story, day, hardeningBand.cautious, gain, potential) };
    }),
  }));
};
