/** Acceptance of new concrete against its specified strength f'c. Any one unit of strength throughout, but MPa for the steps. */

/** A rule with its percentage, kept both as computed and as rounded to the whole percent the limit is written in. */
export interface Acceptance {
  readonly rule: "mean" | "single";
  /** value over f'c, percent */
  readonly percent: number;
  /** limit, percent of f'c */
  readonly limit: number;
  readonly strict: "met" | "not-met";
  /** by the rounding of ASTM E29: 84.5 counts as 85 */
  readonly rounded: "met" | "not-met";
}

/**
 * Cores of new concrete: mean of at least three >= 85 % of f'c and none below 75 %.
 * @clause ACI 318-19, 26.12.6.1(e); rounding: ACI TCM-20 11.6.7 and ASTM E29
 */
export const coreAcceptance = (strengths: readonly number[], fc: number): readonly Acceptance[] => {
  const mean = strengths.reduce((sum, f) => sum + f, 0) / strengths.length;
  return [accept("mean", mean, fc, 85), accept("single", Math.min(...strengths), fc, 75)];
};

const accept = (rule: Acceptance["rule"], value: number, fc: number, limit: number): Acceptance => {
  const percent = (100 * value) / fc;
  return {
    rule,
    percent,
    limit,
    strict: percent >= limit - 1e-9 ? "met" : "not-met",
    rounded: Math.round(percent) >= limit ? "met" : "not-met",
  };
};

const step = 500 * 0.006894757293168361; // 500 psi in MPa

/**
 * Standard-cured cylinders (each test the mean of its two or three cylinders, in order of age, MPa): every mean of three
 * tests in a row at least f'c, and no test below f'c by more than 500 psi (f'c to 5000 psi) or 10 % (above).
 * @clause ACI 318-19, 26.12.3.1
 */
export const cylinderAcceptance = (
  tests: readonly number[],
  fc: number,
): {
  readonly threeInARow: "met" | "not-met" | "fewer-than-three";
  readonly single: "met" | "not-met";
  readonly singleLimit: number;
} => {
  const singleLimit = fc <= 10 * step ? fc - step : 0.9 * fc;
  const threes = tests.slice(2).map((t, i) => (t + tests[i]! + tests[i + 1]!) / 3);
  return {
    threeInARow:
      threes.length === 0 ? "fewer-than-three" : threes.every((t) => t >= fc * (1 - 1e-12)) ? "met" : "not-met",
    single: tests.every((t) => t >= singleLimit * (1 - 1e-12)) ? "met" : "not-met",
    singleLimit,
  };
};
