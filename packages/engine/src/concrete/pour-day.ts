/** Limits of temperature, setting and sawing, curing. Temperatures in °C, times in hours or days as named. */

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

/** A limit of the pour, with where it comes from. */
export interface PourLimit {
  readonly words: string;
  /** °C */
  readonly temperature: number;
  readonly source: string;
}

export const pourLimits = {
  coldWeather: {
    words: "cold weather begins: the air falls, or is expected to fall, below this while the concrete is protected",
    temperature: celsius(40),
    source: "ACI terminology; UFGS 03 30 00",
  },
  placingThinSection: {
    words: "coolest concrete when placed, sections thinner than 12 in (300 mm)",
    temperature: celsius(55),
    source: "ACI 306R-10/-16, from memory",
  },
  placingThickSection: {
    words: "coolest concrete when placed, sections 12 to 36 in (300 to 900 mm)",
    temperature: celsius(50),
    source: "ACI 306R-10/-16, from memory",
  },
  keepAbove: {
    words: "keep the air next to the concrete above this while it is protected",
    temperature: celsius(50),
    source: "UFGS 03 30 00",
  },
  hottestConcrete: {
    words: "hottest concrete at discharge",
    temperature: celsius(95),
    source: "ACI 305.1, from memory",
  },
  hotCare: {
    words: "hottest concrete at placing in many specifications; shade, fog and an early saw from here on",
    temperature: celsius(90),
    source: "city specifications; common practice, no source",
  },
} as const satisfies Record<string, PourLimit>;

/** Coolest concrete to place in a slab or pad of `thickness` mm. */
export const coolestPlacing = (thickness: number): PourLimit =>
  thickness < 300 ? pourLimits.placingThinSection : pourLimits.placingThickSection;

/** Cool slowly after protection: at most 5 °F in an hour and 50 °F in a day, as differences. UFGS 03 30 00. */
export const coolingLimits = { perHour: 5 / 1.8, perDay: 50 / 1.8 } as const;

/** What the temperatures of a pour break, worst first; empty when nothing. @param airLow - lowest air during protection */
export const brokenPourLimits = (concrete: number, airLow: number, thickness: number): readonly PourLimit[] => [
  ...(concrete > pourLimits.hottestConcrete.temperature ? [pourLimits.hottestConcrete] : []),
  ...(concrete < coolestPlacing(thickness).temperature ? [coolestPlacing(thickness)] : []),
  ...(airLow < pourLimits.coldWeather.temperature ? [pourLimits.coldWeather] : []),
  ...(concrete > pourLimits.hotCare.temperature && concrete <= pourLimits.hottestConcrete.temperature
    ? [pourLimits.hotCare]
    : []),
];

/**
 * Setting takes twice as long for each 20 °F colder and half as long for each 20 °F warmer than 73 °F; clipped to 40 to
 * 100 °F. Post-frame builders' article quoting ACI 305R/306R practice [setting-rule].
 */
export const settingTimeFactor = (temperature: number): number =>
  2 ** ((73 - Math.min(100, Math.max(40, temperature * 1.8 + 32))) / 20);

/** Hours from - to. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

const scaled = (window: Window, factor: number): Window => ({ from: window.from * factor, to: window.to * factor });

/**
 * Hours after mixing to first set: 4 to 6 at 73 °F without admixtures (common practice, no source), by the setting rule.
 */
export const settingWindow = (temperature: number): Window =>
  scaled({ from: 4, to: 6 }, settingTimeFactor(temperature));

/**
 * Hours after finishing in which to saw. Wet saw 4 to 12 h, early-entry saw 1 to 4 h at ordinary temperatures, in the
 * cold up to three days (Concrete Construction [concrete-construction]), stretched by the setting rule. The slab decides:
 * begin as soon as the edge of a trial cut does not ravel.
 */
export const sawWindow = (temperature: number, saw: "wet" | "early-entry"): Window =>
  scaled(saw === "wet" ? { from: 4, to: 12 } : { from: 1, to: 4 }, settingTimeFactor(temperature));

/** What binds the concrete, as far as curing cares. */
export type Binder =
  | "type-I"
  | "type-II"
  | "type-III"
  | "blended"
  | "silica-fume"
  | "up-to-25-percent-fly-ash-or-slag"
  | "over-25-percent-fly-ash-or-slag";

/**
 * Days of moist curing. UFGS 03 30 53 / 03 31 00 guide text [ufgs-033000]; type III 3 days: ACI 318-19 26.5.3, from
 * memory. All at 10 °C (50 °F) or more.
 */
export const curingDays = (binder: Binder): number =>
  ({
    "type-I": 7,
    "type-II": 14,
    "type-III": 3,
    blended: 7,
    "silica-fume": 7,
    "up-to-25-percent-fly-ash-or-slag": 14,
    "over-25-percent-fly-ash-or-slag": 21,
  })[binder];

/**
 * Resistance to wear after so many days of curing, over that after 28: 0.65 at 3 d, 0.80 at 7 d, 1 at 28 d, straight in
 * log time between; 3 days' worth below. Concrete Construction [concrete-construction].
 */
export const wearResistance = (days: number): number => {
  const points = [
    [3, 0.65],
    [7, 0.8],
    [28, 1],
  ] as const;
  if (days <= 3) return 0.65;
  if (days >= 28) return 1;
  const [[d0, w0], [d1, w1]] = days <= 7 ? [points[0], points[1]] : [points[1], points[2]];
  return w0 + ((w1 - w0) * Math.log(days / d0)) / Math.log(d1 / d0);
};
