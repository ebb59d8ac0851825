/**
 * Exact thin-plate values on springs, found by two independent calculations (Kelvin functions against a Hankel integral;
 * Fourier integral of the free-edge half-plate against Westergaard's 1948 formulas). Derived, not printed anywhere.
 * Theory: Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, ch. 8; Westergaard 1926 and 1948.
 */

import {
  cornerDeflection,
  cornerStress,
  edgeDeflection,
  edgeExact,
  edgeStress,
  interiorExact,
  interiorStress,
  type SlabOnGround,
} from "@floorworthy/engine/slabs";
import { describe, expect, test } from "vitest";

/** l = D = k = 1 */
const unit: SlabOnGround = { E: 12 * (1 - 0.15 ** 2), nu: 0.15, h: 1, k: 1 };
/** lb, in, psi: a consistent set */
const huang: SlabOnGround = { E: 4e6, nu: 0.15, h: 10, k: 100 };
const within = (value: number, target: number, relative: number) =>
  expect(Math.abs(value / target - 1)).toBeLessThanOrEqual(relative);

describe("infinite plate under a uniform circle", () => {
  test.each([
    [0.05, 0.12478306457231876, 0.3305405799853707],
    [0.1, 0.12427010678132079, 0.26717504726633634],
    [0.2, 0.12263123864512733, 0.20400945087098374],
    [0.3, 0.12039337186690857, 0.16734394956276621],
    [0.5, 0.11471904002368882, 0.12197137012845294],
    [1, 0.09721060066471167, 0.06449362552996145],
  ])("a/l = %s: w k l²/P = %s, M/P = %s", (a, w, M) => {
    const exact = interiorExact(unit, 1, a);
    within(exact.deflection, w, 1e-6);
    within(exact.moment, M, 1e-6);
  });
  test("the slab of Huang's examples: 0.0066990 in and 142.03 psi, which the ordinary theory nearly meets", () => {
    const exact = interiorExact(huang, 10000, 6);
    within(exact.deflection, 0.0066990192534677915, 1e-6);
    within(exact.stress, 142.028331052773, 1e-6);
    within(interiorStress(huang, 10000, 6, "ordinary"), 142.0287388188881, 1e-6);
  });
});

describe("half-plate loaded at its free edge", () => {
  test.each([
    ["circle", 0.05, 0.6961388954304412, 0.4137858865310399],
    ["semicircle", 0.05, 0.7851186795914015, 0.42367932673442843],
    ["circle", 0.1, 0.5395239285222282, 0.39649810135562785],
    ["semicircle", 0.1, 0.6260067904434927, 0.41568812346403355],
    ["circle", 0.25, 0.34025364103189026, 0.34723795892708215],
    ["semicircle", 0.25, 0.41940912919641393, 0.3911098226989781],
    ["circle", 0.5, 0.20281592454748337, 0.27490722445326393],
    ["semicircle", 0.5, 0.27018225926577466, 0.3500095906171661],
  ] as const)("%s, a/l = %s: M/P = %s, w k l²/P = %s", (patch, a, M, w) => {
    const exact = edgeExact(unit, 1, a, patch);
    within(exact.moment, M, 1e-4);
    within(exact.deflection, w, 1e-4);
  });
  test("the slab of Huang's examples: 279.32 psi and 0.020745 in (circle), 330.03 psi and 0.022162 in (semicircle)", () => {
    const [circle, semi] = [edgeExact(huang, 10000, 6, "circle"), edgeExact(huang, 10000, 6, "semicircle")];
    within(circle.stress, 279.31606688169035, 5e-5);
    within(circle.deflection, 0.020745319901188972, 5e-5);
    within(semi.stress, 330.0315149954783, 5e-5);
    within(semi.deflection, 0.022162354093354562, 5e-5);
  });
  test.each([
    [0.15, 0.43143802051999813],
    [0, 0.40824829046386135],
    [0.2, 0.4406399924441432],
  ])("ν = %s: point load on the edge, w k l²/P = %s, as the limit of a small semicircle", (nu, w) => {
    const slab = { ...unit, nu, E: 12 * (1 - nu * nu) };
    within(edgeExact(slab, 1, 1e-5, "semicircle").deflection, w, 1e-4);
  });
  test("1926: 0.4327 P/kl²; the constant printed for 1948 is 0.431", () => {
    within(edgeDeflection(unit, 1, 0, "1926"), 0.43274318789169486, 1e-9);
    within(edgeDeflection(unit, 1, 0, "1948-circle"), 0.431, 0.00117);
  });
  test("Westergaard 1948 stresses stand within 0.05 % at a/l = 0.14 and 1.3 % at 0.5", () => {
    for (const [theory, patch] of [
      ["1948-circle", "circle"],
      ["1948-semicircle", "semicircle"],
    ] as const) {
      within(edgeStress(huang, 10000, 6, theory), edgeExact(huang, 10000, 6, patch).stress, 5e-4);
      within(edgeStress(unit, 1, 0.5, theory), edgeExact(unit, 1, 0.5, patch).stress, 0.013);
    }
  });
});

test("Westergaard 1948 deflections stand within 0.1 % at a/l = 0.05 and 1.5 % at 0.25", () => {
  for (const [theory, patch] of [
    ["1948-circle", "circle"],
    ["1948-semicircle", "semicircle"],
  ] as const) {
    within(edgeDeflection(unit, 1, 0.05, theory), edgeExact(unit, 1, 0.05, patch).deflection, 1e-3);
    within(edgeDeflection(unit, 1, 0.25, theory), edgeExact(unit, 1, 0.25, patch).deflection, 0.015);
  }
});

test("corner: our formula's point load 1.205 stands 0.6 % below the exact 1.2122; its stress 2.3 % below 194.79 psi", () => {
  within(cornerDeflection(unit, 1, 0), 1.2121971775589855, 0.0061);
  within(cornerStress(huang, 10000, 6), 194.78669254851116, 0.0235);
});
