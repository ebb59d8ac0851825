/** Laws of the cure clock, and the two cold floors worked by hand. */
import {
  ageForRatio,
  cautiousDay,
  constantTemperature,
  dailyExtremes,
  dailyMeans,
  dayOfStrengthBand,
  earlyFrost,
  equivalentAge,
  equivalentAgeBand,
  type Gain,
  hardeningBand,
  heated,
  loggedTemperatures,
  maturity,
  monthlyMeans,
  strengthFromFieldCylinder,
  strengthRatio,
  strengthRatioBand,
  temperatureOn,
  untilDay,
} from "@floorworthy/engine/concrete";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
const typeI: Gain = { rule: "aci-209", cement: "type-I", cure: "moist" };
const gain = fc.constantFrom<Gain>(
  typeI,
  { rule: "aci-209", cement: "type-III", cure: "moist" },
  { rule: "en-1992", cement: "N" },
  { rule: "en-1992", cement: "S" },
);
const days = fc.array(fc.double({ min: -8, max: 35, noNaN: true }), { minLength: 1, maxLength: 40 });
const story = days.map((means) => dailyMeans(means.map((mean, i) => ({ until: i + 1, mean }))));
const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe("worked by hand", () => {
  test("shop at 55 °F for 7 d, then 38 °F: 3.9 (0 °C) to 4.9 (-10 °C) days' worth; 75 % needs 8.3; 30 and 9 days more", () => {
    const cold = untilDay(7, constantTemperature(celsius(55)), constantTemperature(celsius(38)));
    const worth = equivalentAgeBand(cold, 7);
    expect(worth.cautious).toBeCloseTo(3.93, 2);
    expect(worth.usual).toBeCloseTo(4.86, 2);
    expect(ageForRatio(0.75, typeI)).toBeCloseTo(8.28, 2);
    const when = dayOfStrengthBand(cold, 0.75, typeI);
    expect(when.cautious).toBeCloseTo(7 + 29.7, 1);
    expect(when.usual).toBeCloseTo(7 + 8.4, 1);
    expect(cautiousDay(dayOfStrengthBand(heated(cold, 7, 15, celsius(55)), 0.75, typeI))).toBeLessThan(15);
  });
  test("nine days at 42 °F: 37 to 56 % of a 4,000 psi mix; day 18 to 34; heater to 60 °F from day 9: day 14 to 18", () => {
    const cold = constantTemperature(celsius(42));
    const ratios = strengthRatioBand(cold, 9, typeI);
    expect(ratios.cautious).toBeCloseTo(0.374, 2);
    expect(ratios.usual).toBeCloseTo(0.56, 2);
    const when = dayOfStrengthBand(cold, 0.75, typeI);
    expect([Math.ceil(when.usual), Math.ceil(when.cautious)]).toEqual([18, 34]);
    const warmed = dayOfStrengthBand(heated(cold, 9, Number.POSITIVE_INFINITY, celsius(60)), 0.75, typeI);
    expect([Math.floor(warmed.usual), Math.ceil(warmed.cautious)]).toEqual([14, 18]);
  });
  test.each([
    [40, 43, 19],
    [45, 26, 16],
    [50, 19, 14],
    [55, 15, 12],
    [60, 12, 11],
    [73, 8, 8],
  ] as const)(
    "three quarters at a constant %i °F: day %i (0 °C) and %i (-10 °C), to the day",
    (fahrenheit, cautious, usual) => {
      const when = dayOfStrengthBand(constantTemperature(celsius(fahrenheit)), 0.75, typeI);
      expect(Math.abs(when.cautious - cautious)).toBeLessThan(1);
      expect(Math.abs(when.usual - usual)).toBeLessThan(1);
    },
  );
});

describe("laws", () => {
  test("strength never falls with age, and the age for a ratio undoes the ratio", () =>
    fc.assert(
      fc.property(gain, number(0.5, 400), number(0, 200), (g, age, more) => {
        expect(strengthRatio(age + more, g)).toBeGreaterThanOrEqual(strengthRatio(age, g) - 1e-12);
        expect(ageForRatio(strengthRatio(age, g), g) / age).toBeCloseTo(1, 6);
      }),
    ));
  test("warmer is never later; the cautious count is the later one below 22.8 °C", () =>
    fc.assert(
      fc.property(days, number(0, 10), number(0.2, 0.95), gain, (means, warmer, ratio, g) => {
        const of = (add: number) =>
          dailyMeans(means.map((mean, i) => ({ until: i + 1, mean: Math.min(mean + add, 22.7) })));
        const now = dayOfStrengthBand(of(0), ratio, g);
        const then = dayOfStrengthBand(of(warmer), ratio, g);
        for (const key of ["cautious", "usual", "arrhenius"] as const) expect(then[key]).toBeLessThanOrEqual(now[key]);
        expect(now.cautious).toBeGreaterThanOrEqual(now.usual);
      }),
    ));
  test("on the day found the strength is exactly what was asked", () =>
    fc.assert(
      fc.property(story, number(0.2, 0.95), gain, (s, ratio, g) => {
        const when = dayOfStrengthBand(s, ratio, g).usual;
        fc.pre(Number.isFinite(when));
        expect(strengthRatio(equivalentAge(s, when, hardeningBand.usual), g)).toBeCloseTo(ratio, 9);
      }),
    ));
  test("a longer heater is never later; a heater changes nothing outside its days", () =>
    fc.assert(
      fc.property(
        story,
        number(0, 10),
        number(0.1, 10),
        number(0, 20),
        number(10, 25),
        (s, from, long, longer, warm) => {
          const short = heated(s, from, from + long, warm);
          const extended = heated(s, from, from + long + longer, warm);
          expect(dayOfStrengthBand(extended, 0.75, typeI).cautious).toBeLessThanOrEqual(
            dayOfStrengthBand(short, 0.75, typeI).cautious + 1e-9,
          );
          expect(temperatureOn(short, from + long + 1e-6)).toBe(temperatureOn(s, from + long + 1e-6));
          expect(temperatureOn(short, from + long / 2)).toBeGreaterThanOrEqual(warm);
        },
      ),
    ));
  test("a constant temperature is the same story however it is told", () =>
    fc.assert(
      fc.property(number(1, 30), number(1, 60), (t, age) => {
        const told = [
          constantTemperature(t),
          dailyExtremes([{ low: t, high: t }]),
          loggedTemperatures([
            { day: 0.3, temperature: t },
            { day: 9.7, temperature: t },
          ]),
          monthlyMeans(
            Array.from({ length: 12 }, () => t),
            100,
          ),
          untilDay(3, constantTemperature(t), constantTemperature(t)),
        ];
        for (const s of told) expect(maturity(s, age, -10)).toBeCloseTo((t + 10) * age, 6);
      }),
    ));
  test("a night of frost counts nothing for itself: daily extremes give no less than their mean", () =>
    fc.assert(
      fc.property(number(-10, 10), number(0, 15), (low, range) => {
        const told = dailyExtremes([{ low, high: low + range }]);
        expect(maturity(told, 1, 0)).toBeGreaterThanOrEqual(Math.max(0, low + range / 2) - 1e-9);
        expect(maturity(told, 1, -99)).toBeCloseTo(low + range / 2 + 99, 9);
      }),
    ));
  test("frozen for ever is never strong, and frost before 3.5 MPa is told", () => {
    expect(dayOfStrengthBand(constantTemperature(-12), 0.75, typeI).usual).toBe(Number.POSITIVE_INFINITY);
    expect(earlyFrost(untilDay(0.5, constantTemperature(15), constantTemperature(-2)), 27.6, typeI)).toBe(0.5);
    expect(earlyFrost(untilDay(5, constantTemperature(15), constantTemperature(-2)), 27.6, typeI)).toBeUndefined();
  });
  test("monthly means pass through the middle of each month and wrap round the year", () => {
    const means = [0, 1, 5, 10, 15, 20, 22, 21, 17, 11, 6, 2];
    const s = monthlyMeans(means, 0);
    expect(temperatureOn(s, (6.5 / 12) * 365.25)).toBeCloseTo(22, 0);
    expect(temperatureOn(s, 0.2)).toBeCloseTo(1, 0);
    expect(temperatureOn(monthlyMeans(means, 364), 1)).toBeCloseTo(temperatureOn(s, 0.2), 0);
  });
  test("a field cylinder that agrees with the usual count speaks for the design strength", () => {
    const s = constantTemperature(10);
    const measured = 27.6 * strengthRatioBand(s, 14, typeI).usual;
    const { low, high } = strengthFromFieldCylinder(measured, s, 14, typeI);
    expect(low).toBeLessThanOrEqual(27.6 + 1e-9);
    expect(high).toBeGreaterThanOrEqual(27.6 + 1);
  });
});
