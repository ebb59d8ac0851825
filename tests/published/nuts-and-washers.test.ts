/*
 * [asme-b18.2.2] ASME B18.2.2, hex nuts, thickness H max and min: rows as printed on two fastener data sheets
 *   ("Finished hex nuts ANSI/ASME B18.2.2", H basic, max, min).
 * [asme-b18.21.1] ASME B18.21.1-2009 (R2016), type A plain washers: Machinery's Handbook, 31st ed., pp. 1694-1695, Tables
 *   1a and 1b, thickness max.
 * [iso-4032] ISO 4032, hexagon nuts style 1, m max: as printed in BS EN ISO 4032:2001, Tables 1 and 2.
 * ISO 7089 washers: from memory, not checked here.
 */
import { coarseThread, nutAndWasher, threads } from "@floorworthy/engine/bolts";
import { describe, expect, test } from "vitest";

const inch = 25.4;

describe("hex nuts, ASME B18.2.2: size, H max, H min", () => {
  test.each([
    ["3/8", 0.375, 0.337, 0.32],
    ["1/2", 0.5, 0.448, 0.427],
    ["9/16", 0.5625, 0.496, 0.473],
    ["5/8", 0.625, 0.559, 0.535],
    ["3/4", 0.75, 0.665, 0.617],
    ["7/8", 0.875, 0.776, 0.724],
    ["1", 1, 0.887, 0.831],
  ])("%s in", (_, size, most, least) => {
    const { nut } = nutAndWasher(size * inch)!;
    expect(nut).toBeCloseTo(most * inch, 9);
    expect(nut).toBeGreaterThan(least * inch);
  });
});

describe("type A washers, wide series, ASME B18.21.1: size, thickness max", () => {
  test.each([
    ["3/8", 0.375, 0.104],
    ["1/2", 0.5, 0.132],
    ["9/16", 0.5625, 0.132],
    ["5/8", 0.625, 0.16],
    ["3/4", 0.75, 0.177],
  ])("%s in", (_, size, most) => expect(nutAndWasher(size * inch)!.washer).toBeCloseTo(most * inch, 9));
});

describe("hexagon nuts, ISO 4032: size, m max", () => {
  test.each([
    [10, 8.4],
    [12, 10.8],
    [14, 12.8],
    [16, 14.8],
    [20, 18],
    [22, 19.4],
    [24, 21.5],
  ])("M%d", (size, most) => expect(nutAndWasher(size)!.nut).toBe(most));
});

test("every thread of the table has its nut; other sizes have none", () => {
  for (const { diameter } of threads) {
    const parts = nutAndWasher(diameter)!;
    expect(parts.nut).toBeGreaterThan(0.75 * diameter);
    expect(parts.nut).toBeLessThan(1.05 * diameter);
    expect(coarseThread(diameter)).toBeDefined();
  }
  expect(nutAndWasher(18.3)).toBeUndefined();
});
