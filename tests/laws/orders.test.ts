/** What must hold of every order. */

import {
  barLayout,
  barRun,
  baseCourse,
  concreteOrder,
  dowelGlue,
  fibreBags,
  mixersNeeded,
  placingGuard,
  sheetsFor,
  vapourRetarder,
} from "@floorworthy/engine/orders";
import { toBase } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("an order covers the net volume and waste, by less than one step too much", () =>
  fc.assert(
    fc.property(number(1e7, 1e11), number(0, 0.2), (net, waste) => {
      const step = toBase(0.25, "yd³");
      const order = concreteOrder(net, { waste, step, load: toBase(10, "yd³"), unit: "yd³" });
      expect(order.ordered.value).toBeGreaterThanOrEqual(order.withWaste.value - 1e-6);
      expect(order.ordered.value - order.withWaste.value).toBeLessThan(0.25);
      expect(order.loads.value * 10).toBeGreaterThanOrEqual(order.ordered.value - 1e-6);
    }),
  ));

test("no bar in a window, none past the cover, no gap too wide save over a window", () =>
  fc.assert(
    fc.property(
      number(800, 4000),
      number(150, 450),
      number(40, 80),
      fc.array(fc.tuple(number(0, 4000), number(50, 400)), { maxLength: 4 }),
      (width, spacing, cover, raw) => {
        const windows = raw.map(([from, size]) => ({ from, to: from + size }));
        const { places, wide } = barLayout(width, spacing, cover, windows);
        for (const x of places) {
          expect(x).toBeGreaterThanOrEqual(cover - 1e-9);
          expect(x).toBeLessThanOrEqual(width - cover + 1e-9);
          for (const w of windows) expect(x <= w.from + 1e-9 || x >= w.to - 1e-9).toBe(true);
        }
        places.slice(1).forEach((x, i) => {
          expect(x).toBeGreaterThanOrEqual(places[i]!);
          const gap = { from: places[i]!, to: x };
          if (x - places[i]! > spacing + 1e-6) expect(wide).toContainEqual(gap);
        });
        if (windows.length === 0) {
          expect(wide).toEqual([]);
          expect([places[0], places.at(-1)]).toEqual([cover, expect.closeTo(width - cover, 6)]);
        }
        for (const gap of wide)
          expect(windows.some((w) => w.from > gap.from - 1 && w.to < gap.to + 1 && w.to > w.from)).toBe(true);
      },
    ),
  ));

describe("counting", () => {
  test("runs: pieces reach, and one piece fewer would not", () =>
    fc.assert(
      fc.property(number(500, 30000), number(3000, 12000), number(200, 900), (length, stock, lap) => {
        const run = barRun(length, stock, lap);
        expect(run.pieces * stock - run.laps * lap).toBeGreaterThanOrEqual(length - 1e-6);
        if (run.pieces > 1) expect((run.pieces - 1) * stock - (run.laps - 1) * lap).toBeLessThan(length + 1e-5);
      }),
    ));
  test("sheets: 24 × 24 ft of 5 × 10-ft sheets lapped 6 in needs 3 × 6", () => {
    const ft = 304.8;
    expect(sheetsFor(24 * ft, 24 * ft, { length: 10 * ft, width: 5 * ft, lap: ft / 2 })).toBe(18);
    expect(sheetsFor(5 * ft, 10 * ft, { length: 10 * ft, width: 5 * ft, lap: ft / 2 })).toBe(1);
  });
  test("54 bags by one mixer of 12 an hour take 4.5 h: two mixers for a set of 3 h with half an hour kept back", () => {
    const plan = { batches: 54, perHour: 12, setHours: 3, finishingHours: 0.5 };
    const alone = placingGuard({ ...plan, mixers: 1 });
    expect(alone.demand.value).toBeCloseTo(4.5, 9);
    expect(alone.ratio).toBeCloseTo(1.8, 9);
    expect(mixersNeeded(plan)).toBe(2);
    expect(placingGuard({ ...plan, mixers: 2 }).ratio).toBeLessThanOrEqual(1);
    expect(mixersNeeded({ ...plan, setHours: 0.5 })).toBe("none");
  });
  test("fibre, sheet, stone and glue by hand", () => {
    const square = [0, 1, 2, 3].map((i) => ({ x: [0, 1e4, 1e4, 0][i]!, y: [0, 0, 1e4, 1e4][i]! }));
    expect(fibreBags(2e9, 3, 1.5)).toBe(4);
    expect(vapourRetarder(square, 3000, 150)).toBeCloseTo((1e8 * 3000) / 2850, 0);
    expect(baseCourse(1e8, 100, 0.2)).toBeCloseTo(1.25e10, 0);
    expect(dowelGlue(10, 12, 16, 150, 0)).toBeCloseTo((10 * Math.PI * (256 - 144) * 150) / 4, 6);
  });
});
