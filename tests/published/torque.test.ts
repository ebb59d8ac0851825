/**
 * Torque, threads and relaxation against printed values.
 *
 * Sources
 * - J.A. Speck, Mechanical Fastening, Joining, and Assembly, 2nd ed., p. 85 (read): D 0.190 in, F 1275 lb.
 * - Public worked example (read): M12, property class 8.8, 70 % of proof. Left out: 45 kN at K 0.15 (45.6 by the formula).
 * - Fastener data sheet (read): wrench extension.
 * - G. Senkiw, ACI SP-130 (1992) pp. 47-60 (read): 60 % and 40 % after 90 days. The line is calibrated to them, so these
 *   two points pass by construction; the points between are derived from the model, no data.
 * - ACI 355.2-04 categories (read in an ACI presentation on Appendix D).
 * - Stress areas: M12 84.3 mm² read in the worked example; the others ASME B1.1 and ISO 898-1, from memory.
 */
import {
  anchorCategory,
  coarseThread,
  nutTravel,
  preloadFrom,
  preloadSpan,
  relaxationPerDecade,
  retainedPreload,
  retainedSpan,
  settingWithExtension,
  stressArea,
  torqueFor,
  torqueWithExtension,
} from "@floorworthy/engine/bolts";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const near = (value: number, printed: number, half: number): void =>
  expect(Math.abs(value - printed), `${value} against ${printed}`).toBeLessThanOrEqual(half * 1.0001);

describe("Speck, p. 85: torque for 1275 lb in a 0.190 in screw", () => {
  test.each([
    [0.3, 72.7],
    [0.25, 60.6],
    [0.2, 48.5],
    [0.15, 36.3],
    [0.1, 24.2],
  ] as const)("K %f: %f lb-in", (K, printed) =>
    near(fromBase(torqueFor(toBase(1275, "lb"), toBase(0.19, "in"), K), "lb-in"), printed, 0.05),
  );
});

describe("M12, class 8.8, 70 % of proof", () => {
  const preload = 0.7 * 580 * 84.3;
  test("preload 34.2 kN", () => near(preload / 1000, 34.2, 0.05));
  test("torque at K 0.20: 82 N m", () => near(torqueFor(preload, 12, 0.2) / 1000, 82, 0.5));
  test("82 N m at K 0.30: 23 kN", () => near(preloadFrom(82_000, 12, 0.3) / 1000, 23, 0.5));
});

describe("wrench extension", () => {
  test("500 mm wrench, 150 mm extension, set to 100 N m: 130 N m", () =>
    near(torqueWithExtension(100, 500, 150), 130, 0.01));
  test("and back", () => near(settingWithExtension(130, 500, 150), 100, 0.01));
  test("1 lb-ft is 1.36 N m, 1 N m is 0.737 lb-ft", () => {
    near(toBase(1, "lb-ft") / 1000, 1.36, 0.005);
    near(fromBase(1000, "lb-ft"), 0.737, 0.0006); // 0.73756, printed cut off, not rounded
  });
});

describe("tensile stress areas", () => {
  test.each([
    ["M10", 58.0, 0.05],
    ["M12", 84.3, 0.05],
    ["M16", 157, 0.5],
    ["M20", 245, 0.5],
    ["M24", 353, 0.5],
  ] as const)("%s: %f mm²", (name, printed, half) =>
    near(stressArea(coarseThread(Number(name.slice(1)))!), printed, half),
  );
  test.each([
    ["3/8", 0.375, 0.0775, 0.00005],
    ["1/2", 0.5, 0.1419, 0.00005],
    ["5/8", 0.625, 0.226, 0.0005],
    ["3/4", 0.75, 0.334, 0.0005],
    ["7/8", 0.875, 0.462, 0.0005],
    ["1", 1, 0.606, 0.0005],
  ] as const)("%s UNC, %f in: %f in²", (_, inches, printed, half) =>
    near(fromBase(stressArea(coarseThread(inches * 25.4)!), "in²"), printed, half),
  );
  test("a quarter turn of a 3/4-10 nut is 0.025 in", () =>
    near(fromBase(nutTravel(Math.PI / 2, coarseThread(19.05)!.pitch), "in"), 0.025, 1e-9));
  test("no thread for an odd size", () => expect(coarseThread(17)).toBeUndefined());
});

describe("Senkiw 1992, and the line through it (derived)", () => {
  test("90 d: 60 % sleeve, 40 % lead caulking, by construction", () => {
    near(retainedPreload(90, relaxationPerDecade.sleeve), 0.6, 1e-9);
    near(retainedPreload(90, relaxationPerDecade.leadCaulking), 0.4, 1e-9);
  });
  test("slope 0.07824 a decade", () => near(relaxationPerDecade.sleeve, 0.07824, 5e-6));
  test.each([
    ["1 h", 1 / 24, 0.8609],
    ["1 d", 1, 0.7529],
    ["7 d", 7, 0.6868],
    ["30 d", 30, 0.6373],
    ["1 y", 365, 0.5524],
    ["5 y", 5 * 365, 0.4977],
  ] as const)("%s: the model's %f", (_, days, value) =>
    near(retainedPreload(days, relaxationPerDecade.sleeve), value, 0.0001),
  );
  test("fact of the trade: set to 100 to 120 lb-ft, 40 to 50 found after 18 months lies in the span", () => {
    const { low, high } = retainedSpan(548);
    expect(40 / 120).toBeGreaterThan(low);
    expect(50 / 100).toBeLessThan(high);
  });
});

test("ACI 355.2-04: categories", () =>
  expect([95, 80, 79, 70, 69, 60, 59].map(anchorCategory)).toEqual([1, 1, 2, 2, 3, 3, "unqualified"]));

test("a torque makes a span of preload, the rusty thread the least", () => {
  const rusty = preloadSpan(toBase(110, "lb-ft"), 19.05, "gritty-or-rusty");
  const waxed = preloadSpan(toBase(110, "lb-ft"), 19.05, "wax-or-ptfe");
  expect(rusty.low).toBeLessThan(rusty.high);
  expect(rusty.high).toBeLessThan(waxed.low);
});
