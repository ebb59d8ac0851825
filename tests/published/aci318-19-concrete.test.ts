/**
 * ACI 318-19, chapters 5, 19, 21, 22 and 26: equations from memory, which reproduce the numbers by calculation.
 * Core acceptance: Concrete Q&A, Concrete International 42(12), 2020, p. 80 (read).
 */
import {
  coreAcceptance,
  cylinderAcceptance,
  elasticModulus,
  elasticModulusByWeight,
  flexuralStrengthTension,
  modulusOfRupture,
  oneWayShear,
  phi,
  phiTensionControlled,
  requiredStrength,
  sizeEffect,
  twoWayShearStress,
} from "@floorworthy/engine/codes/aci318-19";
import { describe, expect, test } from "vitest";

const near = (actual: number, printed: number, tolRel: number): void =>
  expect(Math.abs(actual / printed - 1), `${actual} against ${printed}`).toBeLessThanOrEqual(tolRel);

describe("19.2 at f'c 4000 psi", () => {
  test("fr 474 psi", () => near(modulusOfRupture(4000), 474, 0.00106));
  test("Ec 3605 ksi", () => near(elasticModulus(4000) / 1000, 3605, 0.000139));
  test("5 √f'c 316 psi of plain concrete in flexure", () => near(flexuralStrengthTension(4000, 1), 316, 0.00159));
  test("Ec by weight: at 144 pcf 33 × 144^1.5 = 57,024 √f'c", () =>
    near(elasticModulusByWeight(4000, 144), 57_024 * Math.sqrt(4000), 1e-9));
});

describe("22.5 and 22.6: size effect", () => {
  test("λs 1 at d 6 and 10 in, 0.7254762501 at 28 in", () => {
    expect([sizeEffect(6), sizeEffect(10)]).toEqual([1, 1]);
    near(sizeEffect(28), 0.7254762501100116, 1e-6);
  });
  test("two-way: 4, 2 + 4/β and 2 + αs d/bo, each times λs √f'c", () => {
    const d = 10;
    near(twoWayShearStress(2500, { bo: 100, d, beta: 1, position: "interior" }), 200, 1e-12);
    near(twoWayShearStress(2500, { bo: 100, d, beta: 4, position: "interior" }), 150, 1e-12);
    near(twoWayShearStress(2500, { bo: 400, d, beta: 1, position: "corner" }), 125, 1e-12);
    near(twoWayShearStress(2500, { bo: 200, d: 28, beta: 1, position: "interior" }), 200 * 0.7254762501100116, 1e-6);
    near(twoWayShearStress(14_400, { bo: 100, d, beta: 1, position: "interior" }), 400, 1e-12);
  });
  test("one-way: 8 λs ρ^(1/3) √f'c bw d, at most 5 √f'c bw d", () => {
    near(oneWayShear(2500, { bw: 12, d: 10, rhoW: 0.001 }), 0.8 * 50 * 120, 1e-12);
    near(oneWayShear(2500, { bw: 12, d: 10, rhoW: 0.512 }), 5 * 50 * 120, 1e-12);
  });
});

test("21.2: φ 0.75 shear, 0.65 bearing, 0.60 plain concrete, 0.90 tension-controlled", () =>
  expect([phi.shear, phi.bearing, phi.plain, phiTensionControlled]).toEqual([0.75, 0.65, 0.6, 0.9]));

test("5.3.1: 1.2 D + 1.6 L, or 1.4 D where there is little live load", () =>
  expect([requiredStrength(10, 10), requiredStrength(10, 0)]).toEqual([28, 14]));

describe("26.12: acceptance", () => {
  test("cores 4940, 4970, 5370 psi for f'c 6000: 84.9 %, complies once rounded to a whole percent", () => {
    const { averagePercent, leastPercent, strict, rounded } = coreAcceptance([4940, 4970, 5370], 6000);
    expect(Math.abs((averagePercent / 100) * 6000 - 5090)).toBeLessThanOrEqual(5);
    expect(leastPercent).toBeCloseTo(82.3, 1);
    expect([strict, rounded]).toEqual(["does not comply", "complies"]);
  });
  test("published from the rounded average 5090: 84.8 %", () =>
    expect(coreAcceptance([5090], 6000).averagePercent).toBeCloseTo(84.8, 1));
  test("one core below 75 % fails the place, whatever the average", () =>
    expect(coreAcceptance([3000, 4000, 4000], 4050).rounded).toBe("does not comply"));
  test("cylinders: none below f'c − 500 psi up to 5000 psi (a trade journal quoting ACI 318)", () => {
    expect(cylinderAcceptance([3500, 4300, 4300], 4000).verdict).toBe("complies");
    expect(cylinderAcceptance([3499, 4400, 4400], 4000).verdict).toBe("does not comply");
    expect(cylinderAcceptance([5000, 4500, 5500], 5000).verdict).toBe("complies");
  });
  test("one core at 74 % of f'c fails where 75 % complies", () =>
    expect([coreAcceptance([3000, 4000, 4000], 4000).strict, coreAcceptance([2960, 4000, 4000], 4000).strict]).toEqual([
      "complies",
      "does not comply",
    ]));
  test("cylinders: f'c 5050 psi is above 5000, so 0.90 f'c = 4545 psi counts, not 4550", () =>
    expect(cylinderAcceptance([4547], 5050).verdict).toBe("complies"));
  test("cylinders: none below 0.90 f'c above 5000 psi", () =>
    expect([cylinderAcceptance([5400], 6000).verdict, cylinderAcceptance([5399], 6000).verdict]).toEqual([
      "complies",
      "does not comply",
    ]));
  test("cylinders: every three in a row average f'c", () => {
    const result = cylinderAcceptance([5000, 3900, 3900, 3900, 5000], 4000);
    expect([result.leastAverage, result.verdict]).toEqual([3900, "does not comply"]);
  });
  test("no test at all is a bug of the caller", () => {
    expect(() => cylinderAcceptance([], 4000)).toThrow(RangeError);
    expect(() => coreAcceptance([], 4000)).toThrow(RangeError);
  });
});
