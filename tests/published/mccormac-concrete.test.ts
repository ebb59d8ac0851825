/**
 * McCormac J.C. & Brown R.H., Design of Reinforced Concrete, 9th ed. (2013, ACI 318-11), Examples 12.1, 12.2, 12.3 and
 * 12.10: read in the source. One-way and two-way shear by the 2011 rule; plain concrete and bearing did not change.
 */
import { oneWayShear, twoWayShear } from "@floorworthy/engine/codes/aci318-11";
import {
  bearing,
  flexuralStrengthCompression,
  flexuralStrengthTension,
  phi,
  plainBearing,
  plainOneWayShear,
  plainTwoWayShear,
  requiredStrength,
  thicknessAgainstSoil,
} from "@floorworthy/engine/codes/aci318-19";
import { describe, expect, test } from "vitest";

const near = (actual: number, printed: number, tolRel: number): void =>
  expect(Math.abs(actual / printed - 1), `${actual} against ${printed}`).toBeLessThanOrEqual(tolRel);

describe("Example 12.1: wall footing 10 ft wide, 12-in wall, D 20, L 15 k/ft, f'c 3000 psi", () => {
  const qu = requiredStrength(20, 15) / 10;
  const Vu = (d: number): number => (5 - 0.5 - d / 12) * qu;
  const depthNeeded = (V: number): number => (V * 1000) / (phi.shear * oneWayShear(3000, 12, 1));
  test("qu 4.80 ksf", () => near(qu, 4.8, 0.00105));
  test("Vu 18.20 k at d 8.5 in, needing d 18.46 in", () => {
    near(Vu(8.5), 18.2, 0.000275);
    near(depthNeeded(Vu(8.5)), 18.46, 0.000271);
  });
  test("Vu 15.0 k at d 16.5 in, needing d 15.21 in", () => {
    near(Vu(16.5), 15, 0.00334);
    near(depthNeeded(Vu(16.5)), 15.21, 0.000329);
  });
  test("Mu 48.6 ft-k", () => near((qu * 4.5 ** 2) / 2, 48.6, 0.00103));
});

describe("Example 12.2: 9 × 9 ft footing, 16-in column, PD 200, PL 160 k, f'c 3000 psi, d 19.5 in", () => {
  const qu = requiredStrength(200, 160) / 81;
  const bo = 4 * (16 + 19.5);
  const Vu2 = (81 - (35.5 / 12) ** 2) * 6.12; // with the printed qu
  const perInch = (alphaS: number, d: number): number =>
    (phi.shear * twoWayShear(3000, { bo, d, beta: 1, alphaS })) / d;
  test("qu 6.12 ksf", () => near(qu, 6.12, 0.000817));
  test("bo 142 in", () => near(bo, 142, 0.00353));
  test("Vu2 442.09 k (the printed expression lacks the square of 2.96 ft; its value does not)", () =>
    near(Vu2, 442.09, 0.0004));
  test("φ 4 √f'c: d 18.95 in", () => near(442_090 / perInch(40, 19.5), 18.95, 0.000264));
  test("αs form: d 10.12 in", () =>
    near(442_090 / (phi.shear * ((40 * 19.5) / bo + 2) * Math.sqrt(3000) * bo), 10.12, 0.001));
  test("the αs form governs where the perimeter is long", () =>
    near(
      twoWayShear(3000, { bo: 600, d: 19.5, beta: 1, alphaS: 40 }),
      ((40 * 19.5) / 600 + 2) * Math.sqrt(3000) * 600 * 19.5,
      1e-12,
    ));
  test("2 + 4/β governs under a long column, from memory", () =>
    near(twoWayShear(3000, { bo: 100, d: 19.5, beta: 4, alphaS: 40 }), 3 * Math.sqrt(3000) * 100 * 19.5, 1e-12));
  test("Vu1 121.62 k with the printed 2.208 ft", () => near(9 * 2.208 * 6.12, 121.62, 4.12e-5));
  test("one-way: d 13.71 in", () => near(121_620 / (phi.shear * oneWayShear(3000, 108, 1)), 13.71, 0.000365));
  test("Mu 404 ft-k with the printed 3.83 ft", () => near((9 * 3.83 ** 2 * 6.12) / 2, 404, 0.00124));
});

describe("Example 12.3: bearing of a 16 × 16 in column, f'c 4000 psi, on a 9 × 9 ft footing, f'c 3000 psi", () => {
  const [A1, A2] = [16 * 16, 108 * 108];
  test("column 566 k", () => near((phi.bearing * bearing(4000, A1)) / 1000, 566, 0.000884));
  test("√(A2/A1) 6.75 before the cap", () => near(Math.sqrt(A2 / A1), 6.75, 0.003));
  test("footing 848.6 k, capped at 2", () => near((phi.bearing * bearing(3000, A1, A2)) / 1000, 848.6, 5.9e-5));
});

describe("Example 12.10: plain wall footing 5.5 ft wide, 24 in thick, D 12, L 6 k/ft, f'c 3000 psi", () => {
  const qu = requiredStrength(12, 6) / 5.5;
  const h = thicknessAgainstSoil(24);
  const S = (12 * h ** 2) / 6;
  const Mn = phi.plain * flexuralStrengthTension(3000, S);
  test("qu 4.36 ksf", () => near(qu, 4.36, 0.00115));
  test("Mu 11.04 ft-k with the printed qu", () => near((4.36 * 2.25 ** 2) / 2, 11.04, 0.000453));
  test("S 968 in³: 22 in of 24 count", () => near(S, 968, 0.000517));
  test("φ 5 √f'c S 159,058 lb-in", () => near(Mn, 159_058, 1e-5));
  test("φMn 13.25 ft-k", () => near(Mn / 12_000, 13.25, 0.000378));
  test("Vu 1.82 k", () => near((2.25 - 22 / 12) * qu, 1.82, 0.00275));
  test("φVn 11,568 lb", () => near(phi.plain * plainOneWayShear(3000, 12, h), 11_568, 0.0002));
});

describe("ACI 318-19 chapter 14, from memory", () => {
  test("two-way (1 + 2/β) 4/3 √f'c bo h, at most 2.66 √f'c bo h", () => {
    near(plainTwoWayShear(2500, 40, 10, 4), 2 * 50 * 400, 1e-12);
    near(plainTwoWayShear(2500, 40, 10, 1), 2.66 * 50 * 400, 1e-12);
  });
  test("compression face 0.85 f'c Sm", () => near(flexuralStrengthCompression(3000, 100), 255_000, 1e-12));
  test("bearing 0.85 f'c A1, raised up to twice", () => {
    near(plainBearing(3000, 100), 255_000, 1e-12);
    near(plainBearing(3000, 100, 225), 1.5 * 255_000, 1e-12);
    near(plainBearing(3000, 100, 900), 2 * 255_000, 1e-12);
  });
  test("thickness against soil never falls below 0", () => expect(thicknessAgainstSoil(1)).toBe(0));
});
