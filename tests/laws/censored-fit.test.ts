/**
 * Readings that only bound their value: the fit finds known populations again, its bound holds as often as it claims,
 * and without open readings it is the tolerance bound exactly.
 */
import { chiSquareQuantile, createGenerator, type Generator, normalQuantile } from "@floorworthy/engine/numerics";
import { isUnable } from "@floorworthy/engine/quantities";
import {
  boundFromLowerLimits,
  type CensoredFit,
  fitCensored,
  lowerFractileBound,
  lowerToleranceBound,
  moreReadings,
  type Reading,
  type SpreadPrior,
  slabSurveys,
} from "@floorworthy/engine/statistics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const known = <T>(value: T): Exclude<T, { unable: true }> => {
  if (isUnable(value)) throw new Error(value.reason);
  return value as Exclude<T, { unable: true }>;
};
const normal = (next: Generator): number => normalQuantile((Math.floor(next() * 2 ** 32) + 0.5) / 2 ** 32);
const exact = (values: readonly number[]): Reading[] => values.map((value) => ({ kind: "exact", value }));
const claim = (confidence: number) => ({ content: 0.9, confidence });

type Sight = (value: number) => Reading;
const sights: Record<string, Sight> = {
  "bit mark at +0.5": (v) => (v > 0.5 ? { kind: "at-least", value: 0.5 } : { kind: "exact", value: v }),
  "bit mark at -0.25": (v) => (v > -0.25 ? { kind: "at-least", value: -0.25 } : { kind: "exact", value: v }),
  "dropped before -0.5": (v) => (v < -0.5 ? { kind: "at-most", value: -0.5 } : { kind: "exact", value: v }),
  "read to the half": (v) => ({ kind: "between", low: Math.floor(v * 2) / 2, high: Math.floor(v * 2) / 2 + 0.5 }),
  "every reading exact": (v) => ({ kind: "exact", value: v }),
};

/** Part of the trials in which the bound lies below the true fractile; sets that show no spread are told, not counted. */
const coverage = (
  trials: number,
  n: number,
  confidence: number,
  sight: Sight,
  seed: number,
  spreadOf = () => 1,
  prior?: SpreadPrior,
) => {
  const next = createGenerator(seed);
  let [held, answered] = [0, 0];
  for (let i = 0; i < trials; i++) {
    const spread = spreadOf();
    const fit = fitCensored(
      Array.from({ length: n }, () => sight(spread * normal(next))),
      prior,
    );
    if (isUnable(fit)) continue;
    answered++;
    if (lowerFractileBound(fit, claim(confidence)) <= -spread * normalQuantile(0.9)) held++;
  }
  return { held: held / answered, answered };
};

describe("coverage of the lower bound, 2,000 trials", () => {
  test.each([
    ["bit mark at +0.5", 8, 0.75],
    ["bit mark at +0.5", 4, 0.95],
    ["bit mark at -0.25", 6, 0.9],
    ["read to the half", 6, 0.75],
  ] as const)("%s, %i readings, confidence %f: at least that", (sight, n, confidence) => {
    const { held, answered } = coverage(2000, n, confidence, sights[sight]!, 17);
    expect(held).toBeGreaterThanOrEqual(confidence);
    expect(answered).toBeGreaterThan(1850);
  });
  test("spread drawn from the surveys, three readings each, with their prior: at least 90 %", () => {
    const next = createGenerator(4);
    const spread = (): number =>
      slabSurveys.spread * Math.sqrt(slabSurveys.freedom / chiSquareQuantile(next(), slabSurveys.freedom));
    const { held } = coverage(2000, 3, 0.9, sights["every reading exact"]!, 23, spread, slabSurveys);
    expect(held).toBeGreaterThanOrEqual(0.9 - 2 * Math.sqrt((0.9 * 0.1) / 2000)); // exact by theory: two standard errors
  });
});

describe("the fit", () => {
  test("finds mean and spread of 4,000 half-hidden values to four standard errors", () => {
    const next = createGenerator(8);
    for (const sight of Object.values(sights)) {
      const fit = known(fitCensored(Array.from({ length: 4000 }, () => sight(normal(next)))));
      expect(Math.abs(fit.mean)).toBeLessThan(4 / Math.sqrt(fit.worth));
      expect(Math.abs(fit.spread - 1)).toBeLessThan(4 / Math.sqrt(fit.worth));
    }
  });
  const values = fc
    .array(fc.double({ min: 60, max: 200, noNaN: true }), { minLength: 2, maxLength: 12 })
    .filter((v) => Math.max(...v) - Math.min(...v) > 1);
  test("with exact readings only, the bound is the tolerance bound", () =>
    fc.assert(
      fc.property(values, fc.constantFrom(0.75, 0.9, 0.95), (v, confidence) => {
        const fit = known(fitCensored(exact(v)));
        const direct = known(lowerToleranceBound(v, claim(confidence)));
        expect(fit.worth).toBeCloseTo(v.length, 9);
        expect(fit.spread / direct.sample.spread).toBeCloseTo(1, 7);
        expect(Math.abs(lowerFractileBound(fit, claim(confidence)) - direct.bound)).toBeLessThan(
          1e-5 * (1 + direct.factor * direct.sample.spread),
        );
      }),
      { numRuns: 60 },
    ));
  test("shifts and scales with its readings; a wider bracket is worth less", () =>
    fc.assert(
      fc.property(
        values,
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (v, a, b) => {
          const mixed = (f: (x: number) => number): Reading[] => [
            ...exact(v.map(f)),
            { kind: "at-least", value: f(v[0]!) },
          ];
          const [one, two] = [known(fitCensored(mixed((x) => x))), known(fitCensored(mixed((x) => a * x + b)))];
          expect(two.mean).toBeCloseTo(a * one.mean + b, 4);
          expect(two.spread).toBeCloseTo(a * one.spread, 4);
          expect(one.worth).toBeLessThan(v.length + 1);
          expect(one.worth).toBeGreaterThanOrEqual(v.length - 1e-9);
        },
      ),
      { numRuns: 60 },
    ));
  test("an open reading is not thrown away: at-least raises the mean, at-most lowers it", () => {
    const v = exact([100, 105, 98, 102]);
    const mean = known(fitCensored(v)).mean;
    expect(known(fitCensored([...v, { kind: "at-least", value: 106 }])).mean).toBeGreaterThan(mean);
    expect(known(fitCensored([...v, { kind: "at-most", value: 97 }])).mean).toBeLessThan(mean);
  });
  test("sets that cannot answer say so", () => {
    expect(
      isUnable(
        fitCensored([
          { kind: "at-least", value: 100 },
          { kind: "at-least", value: 90 },
        ]),
      ),
    ).toBe(true);
    expect(isUnable(fitCensored([{ kind: "at-most", value: 100 }], slabSurveys))).toBe(true);
    expect(isUnable(fitCensored(exact([100, 100, 100])))).toBe(true);
    expect(isUnable(fitCensored(exact([100])))).toBe(true);
    expect(isUnable(fitCensored([]))).toBe(true);
  });
  test("one reading and the surveys: mean less the spread of the surveys, times the factor", () => {
    const fit: CensoredFit = known(fitCensored(exact([100]), slabSurveys));
    expect(fit.mean).toBeCloseTo(100, 9);
    expect(fit.spread).toBeCloseTo(slabSurveys.spread, 6);
    expect(lowerFractileBound(fit, claim(0.75))).toBeLessThan(100 - 1.28 * slabSurveys.spread);
  });
});

describe("only lower limits", () => {
  test("four holes still in concrete at 100: the bound is what it claims at a spread of 10 (2,000 trials at the boundary)", () => {
    const bound = boundFromLowerLimits([100, 100, 100, 100], 10, claim(0.9));
    const mean = bound + 10 * normalQuantile(0.9);
    const next = createGenerator(2);
    let passes = 0;
    for (let i = 0; i < 2000; i++) if ([1, 2, 3, 4].every(() => mean + 10 * normal(next) >= 100)) passes++;
    expect(passes / 2000).toBeLessThan(0.1 + 3 * Math.sqrt((0.1 * 0.9) / 2000));
  });
});

describe("how many more readings", () => {
  const fit = known(fitCensored(exact([110, 108, 112, 109])));
  test("the number said is enough, and one fewer is not", () => {
    const answer = moreReadings(fit, 104.9, claim(0.9));
    expect(answer.kind).toBe("more");
    if (answer.kind !== "more") return;
    const bound = (more: number): number => {
      const n = 4 + more;
      const values = Array.from({ length: n }, (_, i) => (i % 2 === 0 ? 1 : -1));
      const scale = fit.spread / Math.sqrt((n - (n % 2 ? 1 / n : 0)) / (n - 1));
      const mean = n % 2 ? scale / n : 0;
      return known(
        lowerToleranceBound(
          values.map((v) => fit.mean - mean + scale * v),
          claim(0.9),
        ),
      ).bound;
    };
    expect(bound(answer.count)).toBeGreaterThanOrEqual(104.9 - 1e-6);
    expect(bound(answer.count - 1)).toBeLessThan(104.9);
  });
  test("shown already, and not likely whatever is drilled", () => {
    expect(moreReadings(fit, 100, claim(0.75)).kind).toBe("shown");
    expect(moreReadings(fit, 109, claim(0.9)).kind).toBe("not-likely");
  });
});
