import { toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";
import { findValues } from "../../packages/manuals/src/values/index.ts";

const inches = (n: number) => toBase(n, "in");

const one = (text: string) => {
  const [value, ...more] = findValues(text);
  expect(more).toEqual([]);
  return value!;
};

describe("fractions in every form are one number", () => {
  test.each(["4 1/4 in.", '4-1/4"', "4¼ in", "4 ¼ inches", "4 1⁄4″", "4.25 in", "4-1/4-inch", '4.25"', "4 1/4''"])(
    "%s",
    (text) => {
      expect(one(text).value).toBeCloseTo(inches(4.25), 6);
    },
  );
  test.each([
    ["12'-6 1/2\"", 150.5],
    ["12 ft 6 in.", 150],
    ["12 ft", 144],
    ["5'6\"", 66],
  ])("%s", (text, n) => {
    expect(one(text).value).toBeCloseTo(inches(n), 6);
  });
});

describe("units of strength, torque, weight and time", () => {
  test.each([
    ["3,000 psi", toBase(3000, "psi")],
    ["3 ksi", toBase(3, "ksi")],
    ["3000 pounds per square inch", toBase(3000, "psi")],
    ["3,000 lb/in²", toBase(3000, "psi")],
    ["25 N/mm2", 25],
    ["250 kg/cm²", 24.516625],
    ["C25/30", 25],
    ["85 ft. lbs.", toBase(85, "lb-ft")],
    ["85 foot-pounds", toBase(85, "lb-ft")],
    ["110 Nm", 110_000],
    ["11 kg·m", 107_873.15],
    ["9,000 lbs", toBase(9000, "lb")],
    ["3,5 t", toBase(3.5, "t")],
    ["4 000 kg", toBase(4000, "kg")],
    ["twenty-eight (28) days", 28],
    ["28-day", 28],
    ["2 weeks", 14],
  ])("%s", (text, value) => {
    expect(one(text).value).toBeCloseTo(value, 6);
  });
});

describe("ranges, sizes, slopes", () => {
  test.each(["85–110 ft-lb", "85 to 110 ft-lb", "between 85 and 110 ft-lb", "85 ft-lb to 110 ft-lb"])("%s", (text) => {
    const { low, high } = one(text);
    expect([low, high]).toEqual([toBase(85, "lb-ft"), toBase(110, "lb-ft")]);
  });
  test("110 ± 10 N·m", () => {
    expect(one("110 ± 10 N·m")).toMatchObject({ low: 100_000, high: 120_000 });
  });
  test.each(['18" x 15-1/2" x 3/4"', "18 x 15 1/2 x 3/4 in."])("%s", (text) => {
    expect(findValues(text).map(({ value }) => Number((value / 25.4).toFixed(9)))).toEqual([18, 15.5, 0.75]);
  });
  test("M16 x 140", () => {
    expect(findValues("M16 x 140").map(({ value }) => value)).toEqual([16, 140]);
  });
  test.each([
    ['1/8" per foot', 1 / 96],
    ["3 mm/m", 0.003],
    ["1/4 in. over 10 ft", 1 / 480],
    ["1:100", 0.01],
    ["0.5 %", 0.005],
  ])("%s", (text, rise) => {
    expect(one(text).value).toBeCloseTo(rise, 5);
  });
});

test("one value in two units is one value, and says so when the two disagree", () => {
  expect(one("6 in. (152 mm)").how).toEqual([]);
  expect(one("6 in. (160 mm)").how).toEqual(["units-disagree"]);
});

test("model names, dates and page numbers are no values", () => {
  expect(findValues("QZ-9A, rev. 3, 2024-05-06, page 7 of 12, tel. 555 0132")).toEqual([]);
});
