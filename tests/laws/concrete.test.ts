/** Laws of evaporation, cores, shrinkage and strength classes. */
import {
  alternateStrength,
  brokenPourLimits,
  type Core,
  characteristicInPlaceEn13791,
  curingDays,
  cylinderFromCube,
  earlyFrost,
  evaporationMenzel,
  evaporationUnoCustomary,
  evaporationUnoMetric,
  inPlaceStrength,
  judgeEvaporation,
  notionalShrinkageMc90,
  sawWindow,
  settingWindow,
  shrinkageTimeAci209,
  shrinkageTimeMc90,
  strengthClasses,
  strengthClassNamed,
  strengthClassReached,
  toleranceFactorStrength,
  ultimateShrinkageAci209,
} from "@floorworthy/engine/concrete";
import { isUnable } from "@floorworthy/engine/quantities";
import { describeSample } from "@floorworthy/engine/statistics";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const known = <T>(value: T): Exclude<T, { unable: true }> => {
  if (isUnable(value)) throw new Error(value.reason);
  return value as Exclude<T, { unable: true }>;
};

describe("evaporation", () => {
  const air = fc.record({
    concrete: number(5, 40),
    air: number(0, 40),
    humidity: number(0.05, 0.95),
    wind: number(0, 12),
  });
  test("never negative; more wind, drier air or warmer concrete never dry it less; all three formulas", () =>
    fc.assert(
      fc.property(air, number(0, 5), number(0, 0.9), number(0, 10), (pour, wind, drier, warmer) => {
        for (const rate of [evaporationMenzel, evaporationUnoMetric, evaporationUnoCustomary]) {
          const now = rate(pour);
          expect(now).toBeGreaterThanOrEqual(0);
          expect(rate({ ...pour, wind: pour.wind + wind })).toBeGreaterThanOrEqual(now - 1e-12);
          expect(rate({ ...pour, humidity: pour.humidity * (1 - drier) })).toBeGreaterThanOrEqual(now - 1e-12);
          expect(rate({ ...pour, concrete: pour.concrete + warmer })).toBeGreaterThanOrEqual(now - 1e-12);
        }
      }),
    ));
  test("hot, dry and windy asks to act; cool, moist and still asks for nothing", () => {
    expect(judgeEvaporation({ concrete: 32, air: 32, humidity: 0.2, wind: 7 }).drying).toBe("act");
    expect(judgeEvaporation({ concrete: 15, air: 15, humidity: 0.8, wind: 0.5 }).drying).toBe("slow");
  });
});

describe("pour day", () => {
  test("windows open before they close, and colder is later", () =>
    fc.assert(
      fc.property(number(-5, 45), number(0, 20), (temperature, colder) => {
        for (const window of [
          (t: number) => sawWindow(t, "wet"),
          (t: number) => sawWindow(t, "early-entry"),
          settingWindow,
        ]) {
          expect(window(temperature).from).toBeLessThan(window(temperature).to);
          expect(window(temperature - colder).to).toBeGreaterThanOrEqual(window(temperature).to - 1e-12);
        }
      }),
    ));
  test("a mild day breaks nothing; frost at night and a hot truck are told", () => {
    expect(brokenPourLimits(18, 10, 150)).toEqual([]);
    expect(brokenPourLimits(18, -3, 150).length).toBe(1);
    expect(brokenPourLimits(36, 25, 150).length).toBe(1);
    expect(brokenPourLimits(11, 10, 150).length).toBe(1);
    expect(brokenPourLimits(11, 10, 400).length).toBe(0);
  });
  test("fly ash cures longest, high-early cement shortest", () => {
    expect(curingDays("over-25-percent-fly-ash-or-slag")).toBe(21);
    expect(curingDays("type-III")).toBe(3);
  });
  test("no temperatures, no frost", () => expect(earlyFrost([], 30, { rule: "en-1992", cement: "N" })).toBeUndefined());
});

describe("cores", () => {
  const core = fc.record({
    strength: number(8, 60),
    slenderness: number(1, 2.2),
    diameter: number(50, 160),
    moisture: fc.constantFrom("as-received", "soaked", "air-dried"),
  });
  const cores = fc
    .array(core, { minLength: 3, maxLength: 12 })
    .map((list) => list.map(({ slenderness, ...rest }): Core => ({ ...rest, length: slenderness * rest.diameter })));
  test("the equivalent strength is below the mean in place, and falls with confidence", () =>
    fc.assert(
      fc.property(cores, (list) => {
        const place = known(inPlaceStrength(list));
        const at = (confidence: number): number[] => [
          known(toleranceFactorStrength(place.sample, place.factorSpread, confidence)).strength,
          known(alternateStrength(place.sample, place.factorSpread, confidence, "many-batches")).strength,
        ];
        const [low, high] = [at(0.75), at(0.95)];
        for (const i of [0, 1]) {
          expect(low[i]!).toBeLessThan(place.sample.mean);
          expect(high[i]!).toBeLessThanOrEqual(low[i]!);
          expect(high[i]!).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 60 },
    ));
  test("EN 13791: never above the mean, nor above the lowest core + 4 MPa; more cores alike, no less", () =>
    fc.assert(
      fc.property(fc.array(number(10, 60), { minLength: 8, maxLength: 20 }), (values) => {
        const found = known(characteristicInPlaceEn13791(describeSample(values)));
        expect(found.strength).toBeLessThan(describeSample(values).mean);
        expect(found.strength).toBeLessThanOrEqual(Math.min(...values) + 4);
        const doubled = known(characteristicInPlaceEn13791(describeSample([...values, ...values])));
        expect(doubled.strength).toBeGreaterThanOrEqual(found.strength - 1e-9);
      }),
    ));
  test("a core shorter than its diameter, or none, gives no answer", () => {
    expect(isUnable(inPlaceStrength([]))).toBe(true);
    expect(isUnable(inPlaceStrength([{ strength: 30, length: 80, diameter: 100, moisture: "soaked" }]))).toBe(true);
  });
});

describe("strength classes", () => {
  test("cube to cylinder passes through every class and rises with the cube", () => {
    for (const { fck, fckCube } of strengthClasses) expect(cylinderFromCube(fckCube)).toBeCloseTo(fck, 9);
    for (let cube = 4; cube < 120; cube++) expect(cylinderFromCube(cube + 1)).toBeGreaterThan(cylinderFromCube(cube));
  });
  test("named and reached", () => {
    expect(strengthClassNamed(" c25/30 ")?.fck).toBe(25);
    expect(strengthClassNamed("C25")?.fckCube).toBe(30);
    expect(strengthClassNamed("C27/33")).toBeUndefined();
    expect(strengthClassReached(24.9)?.name).toBe("C20/25");
    expect(strengthClassReached(5)).toBeUndefined();
  });
});

describe("shrinkage", () => {
  test("grows with time, dries less in damp air and in thick slabs", () =>
    fc.assert(
      fc.property(number(0, 2000), number(1, 500), number(40, 300), number(0.4, 0.95), (age, more, thick, humidity) => {
        const mix = { humidity, volumeToSurface: thick, slump: 100, fines: 40, cement: 330, air: 2, cured: 7 };
        expect(shrinkageTimeAci209(age + more, 7)).toBeGreaterThanOrEqual(shrinkageTimeAci209(age, 7));
        expect(shrinkageTimeMc90(age + more, 7, thick)).toBeGreaterThanOrEqual(shrinkageTimeMc90(age, 7, thick));
        expect(shrinkageTimeMc90(age + 8, 7, thick + more)).toBeLessThan(shrinkageTimeMc90(age + 8, 7, thick));
        expect(ultimateShrinkageAci209({ ...mix, humidity: humidity + 0.04 })).toBeLessThanOrEqual(
          ultimateShrinkageAci209(mix),
        );
        expect(notionalShrinkageMc90(33, humidity + 0.03, "normal")).toBeLessThan(
          notionalShrinkageMc90(33, humidity, "normal"),
        );
      }),
    ));
});
