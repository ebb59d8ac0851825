/** Estimated stiffnesses, the hand formula of the outer row, base rotation, and the effective area of any outline. */
import {
  anchorStiffness,
  type BasePlate,
  baseRotation,
  beddingModulus,
  effectiveArea,
  rowTension,
} from "@floorworthy/engine/contact";
import { type Polygon, polygonArea, polygonCentroid } from "@floorworthy/engine/geometry";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });

describe("estimates", () => {
  test("low < likely < high, cracked softer than uncracked, never stiffer than the bare bolt", () => {
    const [cracked, sound] = [anchorStiffness(215, 120, "cracked"), anchorStiffness(215, 120, "uncracked")];
    for (const { low, likely, high } of [cracked, sound]) {
      expect(low.value).toBeLessThan(likely.value);
      expect(likely.value).toBeLessThan(high.value);
      expect(high.value).toBeLessThan((200_000 * 215) / 120);
      expect(likely.basis).toContain("assumed");
    }
    expect(cracked.likely.value).toBeLessThan(sound.likely.value);
  });
  test("bedding: Ec over the slab's thickness where the slab is thinner than 1.275 √A, no softer for a thicker one", () => {
    expect(beddingModulus(25_000, 125, 500 * 450).likely.value).toBeCloseTo(200, 9);
    expect(beddingModulus(25_000, 5000, 400 * 400).likely.value).toBeCloseTo(25_000 / 510, 9);
  });
});

test("the hand formula: 106.5 kip-in, 5.65 kip, arms 8.5 and 16 in make 3.655 kip; nothing where the load holds the row", () => {
  expect(rowTension(5.65, 106.5, 8.5, 16).value).toBeCloseTo(3.6547, 4);
  expect(rowTension(5.65, 40, 8.5, 16).value).toBe(0);
});

const plate = (preload: number): BasePlate => ({
  outline: [
    { x: -250, y: -225 },
    { x: 250, y: -225 },
    { x: 250, y: 225 },
    { x: -250, y: 225 },
  ],
  anchors: [-190, 190].flatMap((x) => [-165, 165].map((y) => ({ id: `${x},${y}`, x, y, stiffness: 40_000, preload }))),
  bedding: 100,
});

describe("base rotation", () => {
  const load = (My: number) => ({ P: 25_000, Mx: 0, My, Vx: 0, Vy: 0 });
  test("in full contact the secant is k I plus the clamped anchors' share", () => {
    const found = able(baseRotation(plate(50_000), load(2e6)));
    const exact = (100 * 450 * 500 ** 3) / 12 + 4 * 40_000 * 190 ** 2;
    expect(found.stiffnessAboutY / exact).toBeCloseTo(1, 6);
    expect(found.aboutX).toBeCloseTo(0, 12);
  });
  test("the secant softens as the plate lifts, and preload stiffens it", () => {
    const at = (N0: number, My: number): number => able(baseRotation(plate(N0), load(My))).stiffnessAboutY;
    let before = Number.POSITIVE_INFINITY;
    for (const My of [1e6, 5e6, 1e7, 2e7, 3e7]) {
      expect(at(0, My)).toBeLessThanOrEqual(before * (1 + 1e-9));
      before = at(0, My);
      expect(at(20_000, My)).toBeGreaterThanOrEqual(at(0, My) * (1 - 1e-9));
    }
  });
});

describe("effective area", () => {
  const rectangle: Polygon = plate(0).outline;
  test("its centroid stands under the load, for any load on a rectangle, an L and a triangle", () => {
    const L: Polygon = [
      { x: 0, y: 0 },
      { x: 600, y: 0 },
      { x: 600, y: 200 },
      { x: 200, y: 200 },
      { x: 200, y: 600 },
      { x: 0, y: 600 },
    ];
    const triangle: Polygon = [
      { x: 0, y: 0 },
      { x: 500, y: 0 },
      { x: 100, y: 400 },
    ];
    fc.assert(
      fc.property(fc.constantFrom(rectangle, L, triangle), fc.nat(5), real(0, 0.9), (outline, corner, part) => {
        const [c, v] = [polygonCentroid(outline), outline[corner % outline.length]!];
        const load = { x: c.x + part * (v.x - c.x), y: c.y + part * (v.y - c.y) };
        const found = effectiveArea(outline, load);
        // toward the notch of an L no straight cut need exist; elsewhere there is always one
        if (isUnable(found)) return expect(outline).toBe(L);
        const centre = polygonCentroid(found.outline);
        expect(Math.hypot(centre.x - load.x, centre.y - load.y)).toBeLessThan(1e-3);
        expect(found.area).toBeLessThanOrEqual(polygonArea(outline) * (1 + 1e-9));
      }),
      { numRuns: 150 },
    );
  });
  test("a load near a corner is carried by a triangle of 4.5 times the rectangle to that corner (Highter & Anders, case I)", () => {
    // A' = ½ B1 L1 with B1 = 3(B/2 − eB), L1 = 3(L/2 − eL): the triangle whose centroid is the load; from memory
    const found = able(effectiveArea(rectangle, { x: 180, y: 160 }));
    expect(found.area).toBeCloseTo((9 / 2) * (250 - 180) * (225 - 160), 6);
  });
  test("off the plate there is none", () => {
    expect(isUnable(effectiveArea(rectangle, { x: 251, y: 0 }))).toBe(true);
  });
});
