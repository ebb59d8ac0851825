/** 26.12, acceptance of concrete by its strength tests: psi. */

/**
 * Standard-cured cylinders: whether no single test is too low and every run of three averages f'c.
 *
 * @clause ACI 318-19, 26.12.3.1 (b)
 * @param tests - strength tests in order of casting, each the mean of two 6 × 12 or three 4 × 8 cylinders, psi
 * @param fc - specified strength, psi
 * @returns the tests' least, the least average of three in a row (undefined below three tests), and the verdict
 * @throws RangeError when there is no test
 */
export const cylinderAcceptance = (tests: readonly number[], fc: number): CylinderAcceptance => {
  if (tests.length === 0) throw new RangeError("cylinderAcceptance: tests is empty, at least 1 is needed");
  const least = Math.min(...tests);
  const runs = tests.slice(2).map((third, i) => (tests[i]! + tests[i + 1]! + third) / 3);
  const leastAverage = runs.length === 0 ? undefined : Math.min(...runs);
  const leastAllowed = fc <= 5000 ? fc - 500 : 0.9 * fc;
  const complies = least >= leastAllowed && (leastAverage === undefined || leastAverage >= fc);
  return { least, leastAllowed, leastAverage, verdict: complies ? "complies" : "does not comply" };
};

export interface CylinderAcceptance {
  readonly least: number;
  readonly leastAllowed: number;
  readonly leastAverage: number | undefined;
  readonly verdict: "complies" | "does not comply";
}

/**
 * Cores of a doubtful place: average at least 85 % of f'c and none below 75 %. The limits are whole percentages, so the
 * ratio may be rounded to one (ASTM E29); both readings are given.
 *
 * @clause ACI 318-19, 26.12.6.1 (e)
 * @param cores - core strengths, psi; the clause asks for three
 * @param fc - specified strength, psi
 * @returns average and least in % of f'c, and the verdict strictly and with whole percentages
 * @throws RangeError when there is no core
 */
export const coreAcceptance = (cores: readonly number[], fc: number): CoreAcceptance => {
  if (cores.length === 0) throw new RangeError("coreAcceptance: cores is empty, at least 1 is needed");
  const averagePercent = (100 * cores.reduce((sum, core) => sum + core, 0)) / cores.length / fc;
  const leastPercent = (100 * Math.min(...cores)) / fc;
  const verdict = (average: number, least: number) => (average >= 85 && least >= 75 ? "complies" : "does not comply");
  return {
    averagePercent,
    leastPercent,
    strict: verdict(averagePercent, leastPercent),
    rounded: verdict(Math.round(averagePercent), Math.round(leastPercent)),
  };
};

export interface CoreAcceptance {
  readonly averagePercent: number;
  readonly leastPercent: number;
  readonly strict: "complies" | "does not comply";
  readonly rounded: "complies" | "does not comply";
}
