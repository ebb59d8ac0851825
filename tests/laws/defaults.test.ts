import { fromBase, units } from "@floorworthy/engine/quantities";
import { assumed, type Default, defaults, presumptiveBearing, thicknessAllowance } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const all: readonly (readonly [string, Default])[] = [
  ...Object.entries(defaults),
  ...Object.entries(thicknessAllowance),
  ...Object.entries(presumptiveBearing),
];

test.each(all)("%s has a reason, a source and a range around its value", (_, given) => {
  const { value, low = value, high = value, why, source, unit } = given;
  expect(why.length > 20 || why.includes(" ")).toBe(true);
  expect(source).toMatch(/no source|from memory|statics/);
  expect(unit in units).toBe(true);
  expect([low <= value, value <= high]).toEqual([true, true]);
  const fact = assumed(given);
  expect([fromBase(fact.value, unit), fromBase(fact.low, unit)]).toEqual([
    expect.closeTo(value, 9),
    expect.closeTo(low, 9),
  ]);
  expect(fact.basis).toEqual({ kind: "assumed", why });
});

describe("International Residential Code, Table R401.4.1, presumptive load-bearing values (from memory)", () => {
  test.each([
    ["rock", 4000],
    ["gravel", 3000],
    ["sand", 2000],
    ["silt", 1500],
    ["clay", 1500],
  ] as const)("%s %d psf", (soil, psf) => {
    expect([presumptiveBearing[soil].value, presumptiveBearing[soil].unit]).toEqual([psf, "psf"]);
  });
});

test("a slab called four inches that nobody measured counts 3 1/4 in (common practice, no source)", () => {
  expect(4 - defaults.unmeasuredThicknessAllowance.value).toBe(3.25);
});
