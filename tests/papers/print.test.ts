import { dayAfter, printFeet, printLength, printStress, printTemperature, printVolume } from "@floorworthy/papers";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readFigure } from "./reading-back.ts";

test.each([
  [108, "4 1/4 in", "108 mm"],
  [152.4, "6 in", "152 mm"],
  [9.525, "3/8 in", "9.5 mm"],
  [0, "0 in", "0 mm"],
  [Number.NaN, "not known", "not known"],
])("%s mm is %s or %s", (mm, inches, metric) => {
  expect(printLength(mm, "inch-pound")).toBe(inches);
  expect(printLength(mm, "si")).toBe(metric);
});

test.each([
  [1689.1, `5'-6 1/2"`],
  [3048, `10'-0"`],
  [304.8 * 3 - 0.2, `3'-0"`],
  [215.9, `8 1/2"`],
])("%s mm is set out as %s", (mm, words) => {
  expect(printFeet(mm, "inch-pound")).toBe(words);
});

test("any distance reads back to half a sixteenth", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 10_000_000 }), (hundredths) => {
      const mm = hundredths / 100;
      expect(Math.abs(readFigure(printFeet(mm, "inch-pound")) - mm)).toBeLessThanOrEqual(25.4 / 32 + 1e-6);
    }),
  );
});

test("stress, volume, temperature, dates", () => {
  expect(printStress(27.579, "inch-pound")).toBe("4,000 psi");
  expect(printStress(27.579, "si")).toBe("27.6 MPa");
  expect(printVolume(1e9, "si")).toBe("1.00 m³");
  expect(printTemperature(10, "inch-pound")).toBe("50 °F");
  expect(dayAfter("2026-05-18", 28)).toBe("2026-06-15");
  expect(dayAfter("2024-02-28", 2)).toBe("2024-03-01");
  expect(dayAfter("soon", 2)).toBeUndefined();
});
