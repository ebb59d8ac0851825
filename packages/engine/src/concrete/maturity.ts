import type { TemperatureStory } from "./temperature-story.ts";

/** Reference temperature of a standard cured cylinder, °C: 73 °F. @clause ASTM C31 (73.5 ± 3.5 °F) */
export const standardTemperature = (73 - 32) / 1.8;

/** Gas constant, J/(mol K), CODATA 2018. */
export const gasConstant = 8.314462618;

/** Speed of hardening at a temperature, as a choice that can be handed on. */
export type Hardening =
  /** linear above the datum: 0 °C is the cautious, -10 °C the usual end of the band */
  | { readonly rule: "nurse-saul"; readonly datum: number; readonly reference: number }
  /** exponential; Q = activation energy over the gas constant, K: 4000 (MC90, EN 1992), 5000 (ASTM C1074 default) */
  | { readonly rule: "arrhenius"; readonly Q: number; readonly reference: number }
  /** activation energy that grows in the cold */
  | { readonly rule: "freiesleben-hansen-pedersen"; readonly reference: number };

/**
 * Days of standard curing that one day at `temperature` is worth.
 * Nurse-Saul (T - T0)/(Tr - T0), never below 0 [nurse-saul]; Arrhenius exp{-Q[1/(273.15+T) - 1/(273.15+Tr)]},
 * ASTM C1074 [astm-c1074]; the third with E = 33.5 kJ/mol + 1.47 (20 - T) below 20 °C [fhp]. No hardening is counted
 * below -10 °C by any of them.
 */
export const hardeningRate = (temperature: number, hardening: Hardening): number => {
  if (temperature <= -10) return 0;
  if (hardening.rule === "nurse-saul")
    return Math.max(0, temperature - hardening.datum) / (hardening.reference - hardening.datum);
  const Q = hardening.rule === "arrhenius" ? hardening.Q : activationEnergy(temperature) / gasConstant;
  return Math.exp(-Q * (1 / (273.15 + temperature) - 1 / (273.15 + hardening.reference)));
};

/** Activation energy in the cold, J/mol. Freiesleben Hansen & Pedersen 1977 [fhp], from memory. */
export const activationEnergy = (temperature: number): number => 33_500 + 1470 * Math.max(0, 20 - temperature);

/**
 * `ΔtT` factor of EN 1992-1-1: exp{-[4000/(273 + T) - 13.65]}, 20 °C reference, as printed (0.998 at 20 °C).
 * @clause EN 1992-1-1:2004, Annex B, Eq. B.10
 */
export const temperatureFactorEn1992 = (temperature: number): number => Math.exp(-(4000 / (273 + temperature) - 13.65));

/** `M` = Σ (T - T0) Δt from the pour to `age`, °C·days, days below the datum counting nothing. @clause ASTM C1074, Eq. 1 */
export const maturity = (story: TemperatureStory, age: number, datum: number): number =>
  accumulate(story, age, (temperature) => Math.max(0, temperature - datum));

/** Days of standard curing worth the story up to `age`. */
export const equivalentAge = (story: TemperatureStory, age: number, hardening: Hardening): number =>
  accumulate(story, age, (temperature) => hardeningRate(temperature, hardening));

/** The day on which the story has given `needed` days of standard curing; Infinity when it never does. */
export const dayOfEquivalentAge = (story: TemperatureStory, needed: number, hardening: Hardening): number => {
  let left = needed;
  let start = 0;
  for (const { until, temperature } of story) {
    const rate = hardeningRate(temperature, hardening);
    if (rate * (until - start) >= left) return start + (left === 0 ? 0 : left / rate);
    left -= rate * (until - start);
    start = until;
  }
  return Number.POSITIVE_INFINITY;
};

const accumulate = (story: TemperatureStory, age: number, rate: (temperature: number) => number): number => {
  let sum = 0;
  let start = 0;
  for (const { until, temperature } of story) {
    if (start >= age) break;
    sum += rate(temperature) * (Math.min(until, age) - start);
    start = until;
  }
  return sum;
};
