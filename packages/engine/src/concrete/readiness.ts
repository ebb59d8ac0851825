import { dayOfEquivalentAge, equivalentAge, type Hardening, standardTemperature } from "./maturity.ts";
import { ageForRatio, type Gain, strengthRatio } from "./strength-with-age.ts";
import { type TemperatureStory, temperatureOn } from "./temperature-story.ts";

/** The two ends of Nurse and Saul's datum temperature, and Arrhenius beside them. */
export const hardeningBand: Readonly<Record<"cautious" | "usual" | "arrhenius", Hardening>> = {
  cautious: { rule: "nurse-saul", datum: 0, reference: standardTemperature },
  usual: { rule: "nurse-saul", datum: -10, reference: standardTemperature },
  arrhenius: { rule: "arrhenius", Q: 5000, reference: standardTemperature },
};

/** One number by each of the three ways of counting. */
export interface Band {
  readonly cautious: number;
  readonly usual: number;
  readonly arrhenius: number;
}

const band = (of: (hardening: Hardening) => number): Band => ({
  cautious: of(hardeningBand.cautious),
  usual: of(hardeningBand.usual),
  arrhenius: of(hardeningBand.arrhenius),
});

/** Days of standard curing that the concrete has had by `age`. Above 22.8 °C the datum of 0 °C gives the larger number. */
export const equivalentAgeBand = (story: TemperatureStory, age: number): Band =>
  band((hardening) => equivalentAge(story, age, hardening));

/** Part of the 28-day strength reached by `age`. */
export const strengthRatioBand = (story: TemperatureStory, age: number, gain: Gain): Band =>
  band((hardening) => strengthRatio(equivalentAge(story, age, hardening), gain));

/** The days on which a part of the 28-day strength is reached; Infinity when never. */
export const dayOfStrengthBand = (story: TemperatureStory, ratio: number, gain: Gain): Band =>
  band((hardening) => dayOfEquivalentAge(story, ageForRatio(ratio, gain), hardening));

/** The latest day of the band: the one to plan by. */
export const cautiousDay = (days: Band): number => Math.max(days.cautious, days.usual, days.arrhenius);

/** The lowest strength of the band: the one to judge by. */
export const cautiousRatio = (ratios: Band): number => Math.min(ratios.cautious, ratios.usual, ratios.arrhenius);

/**
 * The 28-day strength that a cylinder kept beside the slab speaks for, MPa: its strength over the ratio the slab has
 * by the band. The lower end belongs to the count that had credited most.
 */
export const strengthFromFieldCylinder = (
  measured: number,
  story: TemperatureStory,
  age: number,
  gain: Gain,
): { readonly low: number; readonly high: number } => {
  const ratios = Object.values(strengthRatioBand(story, age, gain)) as number[];
  return { low: measured / Math.max(...ratios), high: measured / Math.min(...ratios) };
};

/**
 * The first day of frost (concrete at or below 0 °C) before a strength of 3.5 MPa (500 psi) by the cautious count, or
 * undefined. Concrete frozen before that is damaged for good: ACI 306R [aci-306r], from memory.
 * @param strength28 - 28-day strength, MPa
 */
export const earlyFrost = (story: TemperatureStory, strength28: number, gain: Gain): number | undefined => {
  const safe = dayOfEquivalentAge(story, ageForRatio(3.5 / strength28, gain), hardeningBand.cautious);
  let start = 0;
  for (const { until } of story) {
    if (start >= safe) return undefined;
    if (temperatureOn(story, start) <= 0) return start;
    start = until;
  }
  return undefined;
};
