import { polygonArea, type Rect } from "@floorworthy/engine/geometry";
import { inscribedRects, type Pad, padOutlines } from "@floorworthy/engine/pads";
import fc from "fast-check";
import { expect, test } from "vitest";

const area = (rects: readonly Rect[]): number => rects.reduce((s, r) => s + (r.x1 - r.x0) * (r.y1 - r.y0), 0);
const circles = (radius: number, waist: number, gap: number): Pad => ({
  plan: {
    shape: "joined-circles",
    columns: [
      { x: 0, y: 0 },
      { x: gap, y: 0 },
    ],
    radius,
    waist,
  },
  thickness: 300,
  slab: 100,
  sides: { kind: "vertical" },
});

test("a rectangle comes back as itself", () => {
  const outline = [
    { x: 10, y: 20 },
    { x: 110, y: 20 },
    { x: 110, y: 70 },
    { x: 10, y: 70 },
  ];
  const [only, ...more] = inscribedRects(outline);
  expect(more).toEqual([]);
  expect(only!.x0).toBe(10);
  expect(only!.x1).toBe(110);
  expect(only!.y0).toBeCloseTo(20, 9);
  expect(only!.y1).toBeCloseTo(70, 9);
});

test("bands lie inside the outline, cover most of it, and more bands cover more", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 500, max: 1200, noNaN: true }),
      fc.double({ min: 200, max: 1200, noNaN: true }),
      fc.double({ min: 2500, max: 4000, noNaN: true }),
      (radius, waist, gap) => {
        const [outline] = padOutlines(circles(radius, waist, gap), "full", 5);
        const [few, many] = [inscribedRects(outline!, 4), inscribedRects(outline!, 7)];
        expect(area(many)).toBeLessThanOrEqual(polygonArea(outline!) * (1 + 1e-9));
        expect(area(many)).toBeGreaterThanOrEqual(area(few) - 1e-6);
        expect(area(many)).toBeGreaterThan(0.7 * polygonArea(outline!));
        const inside = (x: number, y: number): boolean => {
          const near = Math.min(Math.hypot(x, y), Math.hypot(x - gap, y));
          return (
            near <= radius * (1 + 1e-5) || (Math.abs(y) <= Math.min(waist / 2, radius) * (1 + 1e-5) && x > 0 && x < gap)
          );
        };
        for (const { x0, x1, y0, y1 } of many)
          for (const x of [x0, x1]) for (const y of [y0, y1]) expect(inside(x, y)).toBe(true);
      },
    ),
    { numRuns: 100 },
  );
});
