/**
 * Pads against printed footings and exact solutions. McCormac J.C. & Brown R.H., Design of Reinforced Concrete, 9th ed.
 * (ACI 318-11), Examples 12.1, 12.8 (read in the source). Biaxial no-tension values: exact polygon solution confirmed by
 * a fibre model, the problem of Teng 1962 and of Özmen 2011 (derived, not printed).
 * Dowels: Friberg 1940; the group of five bars from lecture slides on rigid pavements that were read in extract.
 */

import type { Polygon } from "@floorworthy/engine/geometry";
import {
  dowelBearingAllowed,
  dowelShares,
  groundPressure,
  sectionDemand,
  separatePadChecks,
} from "@floorworthy/engine/pads";
import { fromBase, isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { beamLambda, dowelAtFace, presumptiveSoils, semiInfinite } from "@floorworthy/engine/slabs";
import { describe, expect, test } from "vitest";

const rectangle = (B: number, L: number): Polygon => [
  { x: -B / 2, y: -L / 2 },
  { x: B / 2, y: -L / 2 },
  { x: B / 2, y: L / 2 },
  { x: -B / 2, y: L / 2 },
];
const able = <T>(value: T | Unable): T => {
  if (isUnable(value)) throw new Error(value.reason);
  return value;
};

describe("rectangle, no tension: qmax BL/P and share in contact", () => {
  test.each([
    [0.1, 0.1, 2.2045336386442207, 0.985321738615371],
    [0.2, 0.1, 2.993344069463448, 0.8373789369105379],
    [0.2, 0.2, 4.137286107350887, 0.6884612672707996],
    [0.25, 0.25, 6, 0.5],
    [0.3, 0.3, 9.375, 0.32],
    [0.3, 0.1, 4.492055434643124, 0.5650159907624395],
    [0.3, 0, 10 / 3, 0.6],
    [0.35, 0.05, 5.154266769168049, 0.4432998683435464],
  ])("e = (%s B, %s L): %s, %s", (ex, ey, q, share) => {
    const [B, L] = [1700, 900];
    const found = able(groundPressure(rectangle(B, L), 1000, { x: ex * B, y: ey * L }));
    expect((found.largest * B * L) / 1000 / q).toBeCloseTo(1, 5);
    expect(found.share / share).toBeCloseTo(1, 5);
  });
});

describe("McCormac & Brown Example 12.8: P = 30 k/ft, M = 39 ft-k/ft, ksf", () => {
  test.each([
    [9, 6.22, 0.44],
    [14, 3.34, 0.95],
  ])("%s ft wide: %s and %s", (width, max, min) => {
    const found = able(groundPressure(rectangle(width, 1), 30, { x: 39 / 30, y: 0 }));
    expect(Math.abs(found.largest - max)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(found.q0 - (found.qx * width) / 2 - min)).toBeLessThanOrEqual(0.005);
  });
});

describe("McCormac & Brown Example 12.1: wall footing 10 ft wide, qu = 4.80 ksf, 12-in wall", () => {
  const pressure = able(groundPressure(rectangle(10, 1), 48, { x: 0, y: 0 }));
  const beyond = (x: number) => sectionDemand(rectangle(10, 1), pressure, 0, { nx: -1, ny: 0, c: -x });
  test("Vu at d = 8.5 in: 18.2 k; at 16.5 in: 15.0 k", () => {
    expect(beyond(0.5 + 8.5 / 12).V).toBeCloseTo(18.2, 1);
    expect(Math.abs(beyond(0.5 + 16.5 / 12).V - 15)).toBeLessThanOrEqual(0.05);
  });
  test("Mu at the face of the wall: 48.6 ft-k", () => expect(Math.abs(beyond(0.5).M - 48.6)).toBeLessThanOrEqual(0.05));
});

describe("separate pads under a free-standing column (statics by hand: e = M/(P + W), q = 2N/3B(B/2 − e))", () => {
  const [P, M] = [toBase(5650, "lb"), toBase(185, "kip-in")];
  const pad = (size: number, thickness: number) => ({
    outline: rectangle(toBase(size, "in"), toBase(size, "in")),
    thickness: toBase(thickness, "in"),
    unitWeight: toBase(150, "pcf"),
  });
  const ground = {
    bearing: presumptiveSoils["clay or silt"].bearing,
    sliding: presumptiveSoils["clay or silt"].sliding,
    overturningFactor: 1.5,
    slidingFactor: 1.5,
  };
  const action = { at: { x: 0, y: 0 }, reaction: { P, Mx: 0, My: M, Vx: 0, Vy: 0 } };
  const checks = (size: number, thickness: number) => separatePadChecks(pad(size, thickness), [action], ground);
  const psf = (size: number, thickness: number) => {
    const check = checks(size, thickness).find((c) => c.id === "pad-ground-pressure");
    return check ? fromBase(check.demand.value, "psf") : Number.POSITIVE_INFINITY;
  };
  test("48 × 48 × 6 overturns; 48 × 48 × 12 stands on a knife's edge; 48 × 48 × 24 and 72 × 72 × 12 hold", () => {
    expect(psf(48, 6)).toBe(Number.POSITIVE_INFINITY);
    expect(psf(48, 12)).toBeGreaterThan(14000);
    expect(psf(48, 24)).toBeCloseTo((2 * 10450) / (3 * 4 * (2 - 185 / 12 / 10.45)), -1);
    expect(psf(72, 12)).toBeCloseTo(770, -1);
    expect(psf(60, 12)).toBeCloseTo(1460, -1);
  });
  test("overturning factors: 48 × 48 × 12 has 1.04, 72 × 72 × 12 has 2.16", () => {
    const factor = (size: number, thickness: number) => {
      const check = checks(size, thickness).find((c) => c.id === "pad-overturning")!;
      return 1.5 / check.ratio;
    };
    expect(factor(48, 12)).toBeCloseTo(((5650 + 2400) * 24) / 185000, 6);
    expect(factor(72, 12)).toBeCloseTo(((5650 + 5400) * 36) / 185000, 6);
  });
});

describe("dowels", () => {
  const inch = 25.4;
  const dowel = { diameter: inch, E: toBase(29e6, "psi"), support: toBase(1.5e6, "pci"), opening: 0.2 * inch };
  test("Friberg's formula is the semi-infinite beam under P and −Pz/2 (Hetenyi 1946)", () => {
    const beam = { EI: (dowel.E * Math.PI * dowel.diameter ** 4) / 64, K: dowel.support * dowel.diameter };
    const P = 5000;
    const y = semiInfinite(beam, P, (-P * dowel.opening) / 2, 0).y;
    expect(dowelAtFace(dowel, P) / y).toBeCloseTo(1, 12);
    expect(beamLambda(beam)).toBeGreaterThan(0);
  });
  test("allowable bearing f'c (4 − d)/3: 3,250 psi for 3/4 in and 3,000 psi; 3,000 psi for 1 in", () => {
    expect(dowelBearingAllowed(3000, 0.75 * inch)).toBeCloseTo(3250, 6);
    expect(dowelBearingAllowed(3000, inch)).toBeCloseTo(3000, 6);
  });
  test("load over the first of five bars 12 in apart, reach 60 in: 1 + 0.8 + 0.6 + 0.4 + 0.2 = 3.0 of the first", () => {
    const shares = dowelShares(
      [0, 12, 24, 36, 48, 60].map((x) => x * inch),
      0,
      60 * inch,
    );
    expect(4050 * shares[0]!).toBeCloseTo(1350, 9);
    expect(shares.reduce((s, v) => s + v, 0)).toBeCloseTo(1, 12);
    expect(shares[5]).toBe(0);
  });
});
