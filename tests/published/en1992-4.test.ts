/**
 * EN 1992-4:2018. Formulas and constants from memory; the four numbers at the head reproduce by calculation, the rest
 * guards against slips. The US and SI forms of ACI 318 stand beside: 24 and 17 in lb, in, psi are 10 and 7 in SI.
 */
import { breakoutCoefficient } from "@floorworthy/engine/codes/aci318-19";
import {
  basicCone,
  basicEdge,
  cone,
  coneCoefficient,
  depthBetweenEdges,
  interaction,
  loadedLength,
  partialFactorConcrete,
  partialFactorSteelShear,
  partialFactorSteelTension,
  pryout,
  psiAngle,
  psiEccentricity,
  psiEdge,
  psiPressure,
  psiShellSpalling,
  psiSplittingThickness,
  psiThickness,
  pulloutOfHead,
  referenceConeArea,
  steelShear,
  steelTension,
} from "@floorworthy/engine/codes/en1992-4-2018";
import { units } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const near = (actual: number, expected: number, tolRel: number): void =>
  expect(Math.abs(actual / expected - 1), `${actual} against ${expected}`).toBeLessThanOrEqual(tolRel);

describe("breakout coefficients", () => {
  const toSI = units.lb.size / (Math.sqrt(units.psi.size) * units.in.size ** 1.5);
  test("ACI 318M prints 10 for 24 and 7 for 17", () => {
    near(breakoutCoefficient("cast-in") * toSI, 10, 0.05);
    near(breakoutCoefficient("post-installed") * toSI, 7, 0.0714);
  });
  test("N0Rk,c 12.7 √30 200^1.5 = 196.7476 kN headed, uncracked", () =>
    near(basicCone(coneCoefficient("headed", "uncracked"), 30, 200) / 1000, 196.74755398733674, 1e-6));
  test("N0Rk,c 7.7 √25 100^1.5 = 38.5 kN post-installed, cracked", () =>
    near(basicCone(coneCoefficient("post-installed", "cracked"), 25, 100) / 1000, 38.5, 1e-6));
  test("8.9 headed cracked, 11.0 post-installed uncracked", () =>
    expect([coneCoefficient("headed", "cracked"), coneCoefficient("post-installed", "uncracked")]).toEqual([8.9, 11]));
});

describe("7.2.1 tension", () => {
  test("ψs 0.9 at c 100, hef 100; never above 1", () => {
    near(psiEdge(100, 100), 0.9, 1e-6);
    expect(psiEdge(400, 100)).toBe(1);
  });
  test("ψec 0.83333 at e 30, hef 100", () => near(psiEccentricity(30, 100), 0.8333333333333334, 1e-6));
  test("ψre 0.5 + hef/200 where bars are dense", () =>
    expect([psiShellSpalling(60, "dense"), psiShellSpalling(120, "dense"), psiShellSpalling(60, "open")]).toEqual([
      0.8, 1, 1,
    ]));
  test("ψM 2 − z/(1.5 hef), at least 1", () => expect([psiPressure(75, 100), psiPressure(300, 100)]).toEqual([1.5, 1]));
  test("A0 = 9 hef², NRk,c the product", () => {
    expect(referenceConeArea(100)).toBe(90_000);
    near(cone(1000, 2, { psiS: 0.9, psiRe: 0.8, psiEc: 0.5, psiM: 1.5 }), 1080, 1e-12);
  });
  test("three edges shorten hef as in ACI 318", () =>
    expect([depthBetweenEdges(200, [90, 120, 150], 210), depthBetweenEdges(200, [90, 120], 210)]).toEqual([100, 200]));
  test("head k2 7.5 and 10.5", () =>
    expect([pulloutOfHead(100, 20, "cracked"), pulloutOfHead(100, 20, "uncracked")]).toEqual([15_000, 21_000]));
  test("ψh,sp (h/hmin)^(2/3) between its limits", () => {
    near(psiSplittingThickness(216, 125, 100, 1000), 1.44, 1e-12);
    expect(psiSplittingThickness(2000, 125, 100, 1000)).toBe(2);
    near(psiSplittingThickness(2000, 125, 66, 100), 1.44, 1e-12);
    expect(psiSplittingThickness(2000, 125, 10, 10)).toBe(1);
  });
  test("steel As fuk", () => expect(steelTension(84.3, 800)).toBe(67_440));
});

describe("7.2.2 shear", () => {
  test("steel 0.6 up to 500 MPa, 0.5 above", () =>
    expect([steelShear(100, 500), steelShear(100, 505), steelShear(100, 800)]).toEqual([30_000, 25_250, 40_000]));
  test("pry-out k8 NRk,c", () => expect(pryout(2, 10)).toBe(20));
  test("lf hef, at most 12 dnom; above 24 mm max(8 dnom, 300)", () =>
    expect([loadedLength(200, 12), loadedLength(100, 12), loadedLength(400, 30), loadedLength(400, 45)]).toEqual([
      144, 100, 300, 360,
    ]));
  test("lf: 24 mm is the last of the small ones", () =>
    expect([loadedLength(400, 24), loadedLength(400, 24.2)]).toEqual([288, 300]));
  test("V0Rk,c: exponents 0.1 at lf = dnom = c1, ratio 2.4 to 1.7", () => {
    near(basicEdge({ dnom: 100, lf: 100, c1: 100 }, 25, "cracked"), 1.7 * 100 ** 0.2 * 5 * 1000, 1e-12);
    near(
      basicEdge({ dnom: 16, lf: 64, c1: 256 }, 25, "cracked"),
      1.7 * 16 ** 0.05 * 64 ** (0.1 * 0.0625 ** 0.2) * 5 * 4096,
      1e-12,
    );
    const one = { dnom: 20, lf: 80, c1: 150 };
    near(basicEdge(one, 25, "uncracked") / basicEdge(one, 25, "cracked"), 2.4 / 1.7, 1e-12);
  });
  test("ψh √(1.5 c1/h); ψα 1 square to the edge, 2 along it", () => {
    expect([psiThickness(240, 160), psiThickness(50, 160)]).toEqual([1.5, 1]);
    near(psiAngle(0), 1, 1e-12);
    near(psiAngle(Math.PI / 2), 2, 1e-12);
  });
});

test("7.2.3: squares for steel, 1.5 for concrete", () =>
  expect([interaction("steel", 0.6, 0.8), interaction("concrete", 0.25, 0.25)]).toEqual([1, 0.25]));

test("partial factors: concrete 1.5 γinst; steel 1.5 in tension and 1.25 in shear for 8.8 bolts", () => {
  const factors = (["high", "normal", "low"] as const).map(partialFactorConcrete);
  [1.5, 1.8, 2.1].forEach((printed, i) => {
    near(factors[i]!, printed, 1e-12);
  });
  near(partialFactorSteelTension(640, 800), 1.5, 1e-12);
  near(partialFactorSteelTension(900, 1000), 1.4, 1e-12);
  near(partialFactorSteelShear(640, 800), 1.25, 1e-12);
  near(partialFactorSteelShear(240, 400), 1 / 0.6, 1e-12);
  near(partialFactorSteelShear(900, 1000), 1.5, 1e-12);
});
