/** Volume by formula against volume by integration, and shapes against each other. */

import {
  distanceToPolygon,
  distanceToSegment,
  pointInPolygon,
  polygonArea,
  unionArea,
  unionOutline,
} from "@floorworthy/engine/geometry";
import { type Pad, type PadPlan, type PadSides, padOutlines, padRects, padVolume } from "@floorworthy/engine/pads";
import { fromBase, isUnable, toBase } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const [inch, foot] = [toBase(1, "in"), toBase(1, "ft")];
const volume = (pad: Pad) => {
  const result = padVolume(pad);
  if (isUnable(result)) throw new Error(result.reason);
  return { net: result.net.value, gross: result.gross.value, area: result.area.value };
};
const yards = (mm3: number) => fromBase(mm3, "yd³");
const columns = (spacing: number, turn = 0) =>
  [
    { x: 1000, y: 2000 },
    { x: 1000 + spacing * Math.cos(turn), y: 2000 + spacing * Math.sin(turn) },
  ] as const;

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plans: fc.Arbitrary<PadPlan> = fc.oneof(
  fc.record({
    shape: fc.constant("rectangles" as const),
    columns: fc.constant(columns(3000, 0.3)),
    along: number(600, 3400),
    across: number(600, 2000),
  }),
  fc.record({ radius: number(400, 1800), share: number(0.1, 1) }).map(({ radius, share }) => ({
    shape: "joined-circles" as const,
    columns: columns(3000, 0.7),
    radius,
    waist: 2 * radius * share,
  })),
  fc.record({
    shape: fc.constant("strip" as const),
    columns: fc.constant(columns(3200)),
    width: number(600, 1800),
    beyond: number(300, 900),
  }),
);
const sides: fc.Arbitrary<PadSides> = fc.oneof(
  fc.constant({ kind: "vertical" as const }),
  fc.record({ kind: fc.constant("sloped" as const), run: number(0.2, 2), corner: fc.constant("rounded" as const) }),
  fc.record({
    kind: fc.constant("undercut" as const),
    reach: number(20, 200),
    corner: fc.constant("rounded" as const),
  }),
);

/** Distance from a point to the plan itself, from the definition of the shape. */
const distanceToPlan = (plan: PadPlan, x: number, y: number): number => {
  if (plan.shape !== "joined-circles")
    return Math.min(
      ...padOutlines({ plan, thickness: 1, slab: 0, sides: { kind: "vertical" } }, "full").map((ring) =>
        distanceToPolygon({ x, y }, ring),
      ),
    );
  const [a, b] = plan.columns;
  const p = { x, y };
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const along = ((x - a.x) * (b.x - a.x) + (y - a.y) * (b.y - a.y)) / length;
  const across = Math.abs(((x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x)) / length);
  const circle = Math.min(Math.hypot(x - a.x, y - a.y), Math.hypot(x - b.x, y - b.y)) - plan.radius;
  const band = along >= 0 && along <= length ? across - plan.waist / 2 : distanceToSegment(p, { a, b });
  return Math.max(0, Math.min(circle, band));
};

describe("volume by formula = volume by integration (R₂ low-discrepancy points)", () => {
  test("any plan, any sides", () =>
    fc.assert(
      fc.property(plans, sides, number(80, 200), number(40, 300), (plan, side, slab, below) => {
        const pad: Pad = { plan, slab, thickness: slab + below, sides: side };
        const reach = side.kind === "sloped" ? side.run * below : side.kind === "undercut" ? side.reach : 0;
        const rings = padOutlines({ ...pad, sides: { kind: "vertical" } }, "full");
        const xs = rings.flat().map((p) => p.x);
        const ys = rings.flat().map((p) => p.y);
        const box = {
          x0: Math.min(...xs) - reach - 5,
          x1: Math.max(...xs) + reach + 5,
          y0: Math.min(...ys) - reach - 5,
          y1: Math.max(...ys) + reach + 5,
        };
        const n = 120_000;
        let total = 0;
        for (let i = 1; i <= n; i++) {
          const x = box.x0 + (box.x1 - box.x0) * ((0.7548776662466927 * i) % 1);
          const y = box.y0 + (box.y1 - box.y0) * ((0.5698402909980532 * i) % 1);
          const d = distanceToPlan(plan, x, y);
          if (side.kind === "sloped") total += Math.max(0, below - d / side.run);
          else if (d <= reach) total += below;
        }
        const net = (total / n) * (box.x1 - box.x0) * (box.y1 - box.y0);
        expect(Math.abs(volume(pad).net / net - 1)).toBeLessThan(0.004);
      }),
      { numRuns: 40 },
    ));
  test("mitred rectangle: the prismoidal formula is exact", () =>
    fc.assert(
      fc.property(number(600, 2000), number(600, 2000), number(0.2, 2), number(50, 300), (a, b, run, D) => {
        const plan: PadPlan = { shape: "rectangles", columns: [{ x: 0, y: 0 }], along: a, across: b };
        const at = (s: number) => (a + 2 * s) * (b + 2 * s);
        const prismoid = (D / 6) * (at(0) + 4 * at((run * D) / 2) + at(run * D));
        const pad: Pad = { plan, slab: 100, thickness: 100 + D, sides: { kind: "sloped", run, corner: "mitred" } };
        expect(volume(pad).net / prismoid).toBeCloseTo(1, 12);
        expect((volume(pad).gross - volume(pad).net) / (100 * at(run * D))).toBeCloseTo(1, 12);
      }),
    ));
});

describe("shapes against each other", () => {
  test("the outline's area tends to the exact area as the chords close in", () =>
    fc.assert(
      fc.property(plans, (plan) => {
        const pad: Pad = { plan, slab: 100, thickness: 300, sides: { kind: "vertical" } };
        const rings = padOutlines(pad, "full", 0.01);
        const drawn = rings.length > 1 ? unionArea(rings) : polygonArea(rings[0]!);
        expect(volume(pad).area / drawn).toBeCloseTo(1, 3);
        expect(drawn).toBeLessThanOrEqual(volume(pad).area * (1 + 1e-9));
      }),
    ));
  test("a grown outline has the area of the grown plan, for corners mitred and rounded", () =>
    fc.assert(
      fc.property(
        plans,
        fc.constantFrom("mitred" as const, "rounded" as const),
        number(0.5, 1.5),
        (plan, corner, run) => {
          const pad: Pad = { plan, slab: 100, thickness: 300, sides: { kind: "sloped", run, corner } };
          const drawn = unionOutline(padOutlines(pad, "slab", 0.01)).reduce((s, ring) => s + polygonArea(ring), 0);
          expect((volume(pad).gross - volume(pad).net) / 100 / drawn).toBeCloseTo(1, 3);
        },
      ),
    ));
  test("circles joined at full width are a stadium; touching rectangles are a strip", () => {
    const stadium: PadPlan = { shape: "joined-circles", columns: columns(3000), radius: 900, waist: 1800 };
    const area = volume({ plan: stadium, slab: 100, thickness: 300, sides: { kind: "vertical" } }).area;
    expect(area).toBeCloseTo(Math.PI * 900 ** 2 + 3000 * 1800, 3);
    const pair: PadPlan = { shape: "rectangles", columns: columns(3000), along: 3000, across: 1200 };
    const strip: PadPlan = { shape: "strip", columns: columns(3000), width: 1200, beyond: 1500 };
    for (const corner of ["mitred", "rounded"] as const) {
      const side: PadSides = { kind: "sloped", run: 1, corner };
      const [one, two] = [pair, strip].map((plan) => volume({ plan, slab: 100, thickness: 300, sides: side }).net);
      expect(one! / two!).toBeCloseTo(1, corner === "mitred" ? 12 : 2); // rounded ends notch where two rounded corners meet
    }
  });
  test("a polygon's growth formula equals the rectangle's", () => {
    const ring = [
      { x: 0, y: 0 },
      { x: 1500, y: 0 },
      { x: 1500, y: 1200 },
      { x: 0, y: 1200 },
    ];
    const one: PadPlan = { shape: "rectangles", columns: [{ x: 0, y: 0 }], along: 1500, across: 1200 };
    for (const corner of ["mitred", "rounded"] as const) {
      const side: PadSides = { kind: "sloped", run: 1.5, corner };
      expect(
        volume({ plan: { shape: "outline", outline: ring }, slab: 100, thickness: 320, sides: side }).net,
      ).toBeCloseTo(volume({ plan: one, slab: 100, thickness: 320, sides: side }).net, 3);
    }
  });
  test("a notch that the slopes would close is refused in words", () => {
    const outline = [
      { x: 0, y: 0 },
      { x: 3000, y: 0 },
      { x: 3000, y: 1000 },
      { x: 1700, y: 1000 },
      { x: 1700, y: 600 },
      { x: 1300, y: 600 },
      { x: 1300, y: 1000 },
      { x: 0, y: 1000 },
    ];
    const pad: Pad = {
      plan: { shape: "outline", outline },
      slab: 100,
      thickness: 400,
      sides: { kind: "sloped", run: 1, corner: "mitred" },
    };
    expect(isUnable(padVolume(pad))).toBe(true);
    expect(isUnable(padVolume({ ...pad, thickness: 250 }))).toBe(false);
  });
  test("rectangles for the plate lie inside the pad and fill most of it", () =>
    fc.assert(
      fc.property(number(500, 1400), number(0.2, 1), (radius, share) => {
        const plan: PadPlan = { shape: "joined-circles", columns: columns(3000), radius, waist: 2 * radius * share };
        const pad: Pad = { plan, slab: 100, thickness: 300, sides: { kind: "vertical" } };
        const found = padRects(pad);
        if (isUnable(found)) throw new Error(found.reason);
        expect(found.reason).toContain("inside");
        const corners = found.rects.map(({ x0, y0, x1, y1 }) => [
          { x: x0, y: y0 },
          { x: x1, y: y0 },
          { x: x1, y: y1 },
          { x: x0, y: y1 },
        ]);
        for (const p of corners.flat()) expect(distanceToPlan(plan, p.x, p.y)).toBeLessThan(1e-6);
        expect(unionArea(corners) / volume(pad).area).toBeGreaterThan(0.8);
        expect(pointInPolygon(plan.columns[0], corners[0]!)).not.toBe("outside");
      }),
    ));
});

describe("quantities of the trade (common practice, no source; arithmetic by hand)", () => {
  const pair = (size: number, thickness: number, slab: number): Pad => ({
    plan: { shape: "rectangles", columns: columns(126 * inch), along: size * foot, across: size * foot },
    thickness: thickness * inch,
    slab: slab * inch,
    sides: { kind: "vertical" },
  });
  test("two pads 5 × 5 ft × 12 in: 1.85 yd³, 1.23 beyond a 4-in slab", () => {
    expect(yards(volume(pair(5, 12, 4)).gross)).toBeCloseTo(50 / 27, 9);
    expect(yards(volume(pair(5, 12, 4)).net)).toBeCloseTo((50 * 2) / 3 / 27, 9);
  });
  test("two pads 72 × 72 × 12 in: 2.67 yd³; one strip 60 × 184 × 12 in: 2.84 yd³", () => {
    expect(yards(volume(pair(6, 12, 0)).gross)).toBeCloseTo(2.6667, 4);
    const strip: Pad = {
      plan: { shape: "strip", columns: columns(124 * inch), width: 60 * inch, beyond: 30 * inch },
      thickness: 12 * inch,
      slab: 0,
      sides: { kind: "vertical" },
    };
    expect(yards(volume(strip).gross)).toBeCloseTo(2.84, 2);
  });
});
