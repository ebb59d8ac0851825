/**
 * Distribution functions against jstat, a general-purpose reference library, and against their own inverses.
 * jstat's own accuracy (about 5e-9 for the incomplete functions, 2e-8 for t near 0, 1e-6 for noncentral t) sets the tolerances.
 */
import {
  chiSquareCdf,
  chiSquareQuantile,
  incompleteBeta,
  incompleteGamma,
  logGamma,
  noncentralTCdf,
  noncentralTQuantile,
  normalCdf,
  normalQuantile,
  studentCdf,
  studentQuantile,
} from "@floorworthy/engine/numerics";
import fc from "fast-check";
// @ts-expect-error jstat ships no types
import jstatModule from "jstat";
import { erf, gamma } from "mathjs";
import { describe, expect, test } from "vitest";

const { jStat } = jstatModule;
const probability = fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true });
const freedom = fc.integer({ min: 1, max: 120 });

describe("against jstat and mathjs", () => {
  test("log gamma", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 150, noNaN: true }),
        (x) => Math.abs(logGamma(x) - Math.log(gamma(x))) <= 1e-11 * Math.max(1, Math.abs(logGamma(x))),
      ),
    ));
  test("normal distribution", () =>
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (z) => {
        expect(normalCdf(z)).toBeCloseTo(0.5 * (1 + erf(z / Math.SQRT2)), 12);
      }),
    ));
  test("incomplete gamma", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 120, noNaN: true }),
        (a, x) => {
          expect(incompleteGamma(a, x).lower).toBeCloseTo(jStat.lowRegGamma(a, x), 8);
        },
      ),
    ));
  test("incomplete beta", () =>
    fc.assert(
      fc.property(
        probability,
        fc.double({ min: 0.3, max: 60, noNaN: true }),
        fc.double({ min: 0.3, max: 60, noNaN: true }),
        (x, a, b) => {
          expect(incompleteBeta(x, a, b)).toBeCloseTo(jStat.ibeta(x, a, b), 7);
        },
      ),
    ));
  test("Student's t and chi-square", () =>
    fc.assert(
      fc.property(fc.double({ min: -8, max: 8, noNaN: true }), freedom, (t, v) => {
        expect(studentCdf(t, v)).toBeCloseTo(jStat.studentt.cdf(t, v), 7);
        expect(chiSquareCdf(Math.abs(t) * v, v)).toBeCloseTo(jStat.chisquare.cdf(Math.abs(t) * v, v), 7);
      }),
    ));
  test("noncentral t", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 0, max: 6, noNaN: true }),
        (t, v, delta) => {
          expect(noncentralTCdf(t, v, delta)).toBeCloseTo(jStat.noncentralt.cdf(t, v, delta), 6);
        },
      ),
      { numRuns: 60 },
    ));
});

describe("quantiles undo the distribution", () => {
  test("normal, Student's t, chi-square", () =>
    fc.assert(
      fc.property(probability, freedom, (p, v) => {
        expect(normalCdf(normalQuantile(p))).toBeCloseTo(p, 13);
        expect(studentCdf(studentQuantile(p, v), v) / p).toBeCloseTo(1, 10);
        expect(chiSquareCdf(chiSquareQuantile(p, v), v) / p).toBeCloseTo(1, 10);
      }),
    ));
  test("noncentral t", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        freedom,
        fc.double({ min: -3, max: 15, noNaN: true }),
        (p, v, delta) => {
          expect(noncentralTCdf(noncentralTQuantile(p, v, delta), v, delta)).toBeCloseTo(p, 9);
        },
      ),
      { numRuns: 25 },
    ));
});
