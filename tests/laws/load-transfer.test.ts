/**
 * What crosses a joint. Published: the regression of joint stiffness on deflection ratio (Crovetti 1994, from memory), the
 * law that both sides of a joint share the free edge's deflection (Ioannides & Korovesis, TRR 1286, 1990, LT-01), beams on
 * springs (Hetényi 1946), TR34's 15 % for aggregate interlock (quoted by a concrete glossary).
 */
import type { Floor } from "@floorworthy/engine/plates";
import { isUnable } from "@floorworthy/engine/quantities";
import {
  dowelAtFace,
  dowelStiffness,
  dowelSupport,
  edgeExact,
  interlockSpring,
  ratioOfSpring,
  semiInfinite,
  shareOfSpring,
  springForRatio,
  springForShare,
  stiffnessRadius,
} from "@floorworthy/engine/slabs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { corners, plainFloor, solveOne, spread, square } from "../plates/setups.ts";

const slab = { E: 28_000, nu: 0.15, h: 125, k: 0.027 };
const kl = slab.k * stiffnessRadius(slab);
const E = 200_000;

describe("springs along a joint", () => {
  test.each([0.1, 0.3, 1, 3, 10, 30])("g = %d: within 0.06 of the published regression", (g) => {
    const published = 1 / (1 + 1.2 * g ** -0.849);
    // the regression was drawn for a load of some size, ours is the limit of a point: both say how much that matters
    expect(Math.abs(ratioOfSpring(slab, g * kl) - published)).toBeLessThan(0.06);
  });

  test.each([0.15, 1, 8])("g = %d: the plate with the same springs shows the same ratio and share", (g) => {
    const half = 4500;
    const patch = { x0: 0, x1: 4, y0: -40, y1: 40 };
    const floor = plainFloor(square(half), {
      thickness: slab.h,
      joints: [{ axis: "x", at: 0, transfer: { kind: "springs", shear: g * kl, rotation: 0 } }],
    });
    const result = solveOne(floor, [spread(corners(patch), 10_000)], { focus: [patch] });
    const [loaded, unloaded] = [result.deflectionAt({ x: 0, y: 0 }), result.deflectionAt({ x: -1e-9, y: 0 })];
    expect(Math.abs(unloaded / loaded / ratioOfSpring(slab, g * kl) - 1)).toBeLessThan(0.03);
    const free = edgeExact(slab, 10_000, 20, "semicircle").deflection;
    expect(Math.abs((loaded + unloaded) / free - 1)).toBeLessThan(0.02);
    // the springs' force is what the ground pushes up with on the other side
    let passed = 0;
    const n = 90;
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++)
        passed +=
          slab.k *
          result.deflectionAt({ x: -((i + 0.5) * half) / n, y: -half + ((j + 0.5) * 2 * half) / n }) *
          ((half * 2 * half) / (n * n));
    expect(Math.abs(passed / 10_000 / shareOfSpring(slab, g * kl) - 1)).toBeLessThan(0.02);
  });

  test("share and ratio turn back into the spring; more spring hands more across, half at most", () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (x) => {
        const spring = kl * 10 ** x;
        const share = shareOfSpring(slab, spring);
        expect(springForShare(slab, share) / spring).toBeCloseTo(1, 6);
        expect(share).toBeLessThan(0.5);
        expect(shareOfSpring(slab, 1.1 * spring)).toBeGreaterThan(share);
      }),
    );
    const spring = springForRatio(slab, 0.7);
    if (isUnable(spring)) throw new Error(spring.reason);
    expect(ratioOfSpring(slab, spring)).toBeCloseTo(0.7, 6);
    expect(isUnable(springForRatio(slab, 1))).toBe(true);
  });

  test("TR34: 15 % across a tight crack; here none beyond 0.9 mm, where the standard says to fill it", () => {
    expect(shareOfSpring(slab, interlockSpring(slab, 0.9))).toBeCloseTo(0.15, 9);
    expect(interlockSpring(slab, 1)).toBe(0);
  });
});

describe("dowels", () => {
  const dowel = { diameter: 19, opening: 6, support: dowelSupport.high, E };
  test("the face's deflection is Hetényi's half-endless beam with the moment zero at mid gap", () => {
    const EI = (E * Math.PI * 19 ** 4) / 64;
    const beam = { EI, K: dowel.support * 19 };
    const at = semiInfinite(beam, 1000, -(1000 * 6) / 2, 0);
    const other = semiInfinite(beam, 1000, (1000 * 6) / 2, 0);
    const y = Math.max(at.y, other.y);
    expect(dowelAtFace(dowel, 1000) / y).toBeCloseTo(1, 9);
    const slope = Math.max(Math.abs(at.slope), Math.abs(other.slope));
    const step = 2 * y + 6 * slope + (1000 * 6 ** 3) / (12 * EI) + (1000 * 6) / (0.9 * (E / 2.6) * (Math.PI / 4) * 361);
    expect(dowelStiffness(dowel) / (1000 / step)).toBeCloseTo(1, 9);
  });

  test("a closed joint is two faces one after the other; wider joints and softer sockets hand less across", () => {
    const closed = { ...dowel, opening: 0 };
    expect(dowelStiffness(closed) * dowelAtFace(closed, 1)).toBeCloseTo(0.5, 9);
    expect(dowelStiffness({ ...dowel, opening: 12 })).toBeLessThan(dowelStiffness(dowel));
    expect(dowelStiffness({ ...dowel, support: dowelSupport.low })).toBeLessThan(dowelStiffness(dowel));
  });
});

test("a joint that hands something across lies between an open one and none at all", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 900, noNaN: true }),
      fc.double({ min: -1.5, max: 1.5, noNaN: true }),
      (d, x) => {
        const patch = { x0: d, x1: d + 250, y0: -230, y1: 230 };
        const stress = (joints: Floor["joints"]): number =>
          solveOne(
            plainFloor(square(4000), { thickness: slab.h, unitWeight: 23.56e-6, joints }),
            [spread(corners(patch), 30_000)],
            { focus: [patch], support: "pushes-only" },
          ).governing.stressBottomAveraged.value;
        const springs = (shear: number): Floor["joints"] => [
          { axis: "x", at: 0, transfer: { kind: "springs", shear, rotation: 0 } },
        ];
        const [open, whole] = [stress(springs(0)), stress([])];
        const between = stress(springs(kl * 10 ** x));
        expect(between).toBeLessThan(1.005 * Math.max(open, whole));
        // an open joint is the worst, save that between half an l and 1.5 l away it can flatter by a little
        expect(whole).toBeLessThan(1.09 * open);
      },
    ),
    { numRuns: 12 },
  );
});
