import { describe, expect, test } from "vitest";
import { shown, shownLength } from "../../apps/web/src/quantities/shown.ts";
import { understood } from "../../apps/web/src/quantities/understood.ts";

describe("numbers as the page shows them", () => {
  test.each([
    [3655.4, "lb", "inch-pound", "3,655 lb"],
    [3655.4, "lb", "si", "16.26 kN"],
    [120, "lb-ft", "inch-pound", "120 lb-ft"],
    [25_132, "N", "inch-pound", "5,650 lb"],
    [25_132, "N", "si", "25.13 kN"],
    [0.625, "", "si", "0.625"],
    [41, "d", "inch-pound", "41 d"],
    [Number.NaN, "lb", "si", "not worked out kN"],
  ] as const)("%d %s in %s is %s", (value, unit, units, words) => expect(shown(value, unit, units)).toBe(words));

  test.each([
    [812.8, "inch-pound", "2'-8\""],
    [114.3, "inch-pound", '4 1/2"'],
    [3200.4, "si", "3,200"],
  ] as const)("%d mm on the plan in %s is %s", (mm, units, words) => expect(shownLength(mm, units)).toBe(words));

  test.each([
    ["4 1/2 in", "mm", "4 1/2 in = 114.3 mm"],
    ["114 mm", "mm", "114 mm = 4.488 in"],
    ["5'-6 1/2\"", "mm", "5'-6 1/2\" = 1,689 mm"],
    ["unknown", "MPa", "not known"],
    ["", "MPa", "not known"],
  ] as const)("%s is understood as %s", (written, unit, read) => expect(understood(written, unit)).toEqual({ read }));

  test("a number-field's favourite mistake is told, not made", () =>
    expect(understood("4 1/2", "mm")).toEqual({ mistake: expect.stringContaining("no unit") }));
});
