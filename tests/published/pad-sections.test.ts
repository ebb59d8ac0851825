/**
 * McCormac J.C. & Brown R.H., Design of Reinforced Concrete, 9th ed. (2013, ACI 318-11), Example 12.10: plain wall footing,
 * read in the source. UFC 3-320-06A Table 3-2, wall loads on slabs: the table is in collapse-and-wall-loads.test.ts; here
 * the strip it stands for carries a pad's edge. Dowels: Huang Y.H., Pavement Analysis and Design, 2nd ed., ch. 4 (allowable
 * bearing, from memory); the spring of a row follows from Friberg's deflection by definition.
 */
import { groundPressure, keyHold, padSectionChecks, sectionStrength } from "@floorworthy/engine/pads";
import { fromBase, isUnable, toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const inch = (n: number): number => toBase(n, "in");
const psi = (n: number): number => toBase(n, "psi");

describe("Example 12.10: 5.5 ft wide, 24 in thick (22 in count), f'c 3000 psi, per foot of wall", () => {
  const section = { thickness: inch(24), fc: psi(3000) };
  test("φMn 159,058 lb-in", () => {
    expect(Math.abs(fromBase(sectionStrength(section, inch(12)).M.value, "lb-in") / 159_058 - 1)).toBeLessThanOrEqual(
      1e-5,
    );
  });
  test("Mu 11.04 ft-k at the face of the wall: service 6.9 ft-k times 1.6 by our load factor", () => {
    // the book factors D and L apart (qu 4.36 ksf); a live pressure of 4.36/1.6 ksf gives the same Mu
    const q = toBase((4.36 / 1.6) * 1000, "psf");
    const [B, L] = [inch(66), inch(12)];
    const outline = [
      { x: 0, y: 0 },
      { x: B, y: 0 },
      { x: B, y: L },
      { x: 0, y: L },
    ];
    const pressure = groundPressure(outline, q * B * L, { x: B / 2, y: L / 2 });
    if (isUnable(pressure)) throw new Error(pressure.reason);
    const wall = { x0: inch(27), x1: inch(39), y0: 0, y1: L };
    const [bending] = padSectionChecks(outline, pressure, section, 0, wall);
    expect(Math.abs(fromBase(bending!.demand.value, "lb-in") / 12_000 / 11.04 - 1)).toBeLessThanOrEqual(0.000453);
    expect(bending!.ratio).toBeCloseTo(11.04 / 13.25, 2);
  });
});

test("bars: 0.9 As fy (d − a/2), by hand: #4 at 12 in, fy 60 ksi, d 8.25 in, f'c 4000 psi, 12 in wide", () => {
  const steel = { area: toBase(0.2, "in²") / inch(12), fy: psi(60_000), depth: inch(8.25) };
  const a = (0.2 * 60_000) / (0.85 * 4000 * 12);
  const byHand = 0.9 * 0.2 * 60_000 * (8.25 - a / 2);
  const found = sectionStrength({ thickness: inch(9), fc: psi(4000), steel }, inch(12)).M;
  expect(fromBase(found.value, "lb-in")).toBeCloseTo(byHand, 0);
});

test("the key: the edge of a strip lifted by q bends it to its cracking moment, by hand", () => {
  // 3 in of 2,000 psi: w = 150 pcf × 3 in = 37.5 psf, m = 7.5√2000 × 9/6 / 1.4
  const hold = keyHold({ h: inch(3), fr: psi(7.5 * Math.sqrt(2000)), unitWeight: toBase(150, "pcf") }, 1.4);
  const byHand = Math.sqrt(2 * (37.5 / 144) * ((7.5 * Math.sqrt(2000) * 9) / 6 / 1.4));
  expect(fromBase(hold.value, "lb/in")).toBeCloseTo(byHand, 6);
});
