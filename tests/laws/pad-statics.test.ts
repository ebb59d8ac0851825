/** Equilibrium, symmetry and order in the statics of pads. */

import type { Polygon } from "@floorworthy/engine/geometry";
import {
  coldJointCheck,
  groundPressure,
  padResultant,
  sectionDemand,
  separatePadChecks,
  stripBending,
  thinSlabEdge,
} from "@floorworthy/engine/pads";
import { isUnable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ellipse = (B: number, L: number, n: number): Polygon =>
  Array.from({ length: n }, (_, i) => ({
    x: 400 + (B / 2) * Math.cos((2 * Math.PI * i) / n),
    y: -300 + (L / 2) * Math.sin((2 * Math.PI * i) / n),
  }));

describe("ground pressure", () => {
  test("balances the load on any convex outline, wherever it strikes", () =>
    fc.assert(
      fc.property(
        number(500, 3000),
        number(500, 3000),
        fc.integer({ min: 3, max: 24 }),
        number(0, 0.85),
        number(0, 6.28),
        (B, L, n, r, angle) => {
          const outline = ellipse(B, L, n);
          const apothem = Math.cos(Math.PI / n);
          const at = {
            x: 400 + (r * apothem * B * Math.cos(angle)) / 2,
            y: -300 + (r * apothem * L * Math.sin(angle)) / 2,
          };
          const found = groundPressure(outline, 1e5, at);
          if (isUnable(found)) throw new Error(found.reason);
          // by fibres
          const m = 160;
          let [N, X, Y] = [0, 0, 0];
          for (let i = 0; i < m; i++)
            for (let j = 0; j < m; j++) {
              const x = 400 - B / 2 + ((i + 0.5) * B) / m;
              const y = -300 - L / 2 + ((j + 0.5) * L) / m;
              const inside = outline.every((p, k) => {
                const q = outline[(k + 1) % n]!;
                return (q.x - p.x) * (y - p.y) - (q.y - p.y) * (x - p.x) >= 0;
              });
              const q = inside ? (Math.max(0, found.q0 + found.qx * x + found.qy * y) * B * L) / (m * m) : 0;
              [N, X, Y] = [N + q, X + q * x, Y + q * y];
            }
          expect(Math.abs(N / 1e5 - 1)).toBeLessThan(0.02);
          expect(Math.abs(X / N - at.x) / B).toBeLessThan(0.01);
          expect(Math.abs(Y / N - at.y) / L).toBeLessThan(0.01);
          expect(found.largest).toBeGreaterThan(0);
        },
      ),
      { numRuns: 60 },
    ));
  test("shear across a section is the derivative of its moment, and all of the load beyond everything", () => {
    const outline = ellipse(1800, 1500, 24);
    const pressure = groundPressure(outline, 5e4, { x: 700, y: -300 });
    if (isUnable(pressure)) throw new Error(pressure.reason);
    const at = (x: number) => sectionDemand(outline, pressure, 0.007, { nx: -1, ny: 0, c: -x });
    expect((at(599.5).M - at(600.5).M) / 1 / at(600).V).toBeCloseTo(1, 5);
    const total = sectionDemand(outline, pressure, 0, { nx: -1, ny: 0, c: 1e6 });
    expect(total.V).toBeCloseTo(5e4, 3);
  });
  test("outside the base it says so", () => {
    const found = groundPressure(ellipse(1000, 1000, 12), 1, { x: 2000, y: -300 });
    expect(isUnable(found) && found.reason).toContain("overturns");
    expect(isUnable(groundPressure(ellipse(1000, 1000, 12), 0, { x: 400, y: -300 }))).toBe(true);
  });
});

describe("pads under columns", () => {
  const square = (half: number): Polygon => [
    { x: -half, y: -half },
    { x: half, y: -half },
    { x: half, y: half },
    { x: -half, y: half },
  ];
  const strip = (length: number): Polygon => [
    { x: 0, y: -800 },
    { x: length, y: -800 },
    { x: length, y: 800 },
    { x: 0, y: 800 },
  ];
  const ground = {
    bearing: 0.07,
    sliding: { kind: "friction" as const, coefficient: 0.3 },
    overturningFactor: 1.5,
    slidingFactor: 1.5,
  };
  const reaction = (P: number, My: number) => ({ P, Mx: 0, My, Vx: 0, Vy: 0 });

  test("two inward moments on one strip cancel: the resultant is the middle and nothing overturns lengthwise", () =>
    fc.assert(
      fc.property(number(1e4, 8e4), number(0, 5e7), (P, M) => {
        const pad = { outline: strip(4700), thickness: 300, unitWeight: 2.36e-5 };
        const actions = [
          { at: { x: 750, y: 0 }, reaction: reaction(P, M) },
          { at: { x: 3950, y: 0 }, reaction: reaction(P, -M) },
        ];
        const { at } = padResultant(pad, actions);
        expect(at.x).toBeCloseTo(2350, 6);
        expect(separatePadChecks(pad, actions, ground).find((c) => c.id === "pad-overturning")!.ratio).toBe(0);
      }),
    ));
  test("the check tells the same from whichever side the moment presses, and more pad never hurts", () =>
    fc.assert(
      fc.property(number(1e4, 4e4), number(1e6, 2e7), number(700, 1500), (P, M, half) => {
        const ratios = (h: number, r: object) =>
          separatePadChecks(
            { outline: square(h), thickness: 300, unitWeight: 2.36e-5 },
            [{ at: { x: 0, y: 0 }, reaction: { ...reaction(P, 0), ...r } }],
            ground,
          ).find((c) => c.id === "pad-overturning")!.ratio;
        const one = ratios(half, { My: M });
        for (const r of [{ My: -M }, { Mx: M }, { Mx: -M }]) expect(ratios(half, r)).toBeCloseTo(one, 9);
        expect(ratios(half + 100, { My: M })).toBeLessThan(one);
        const tipped = separatePadChecks(
          { outline: square(half), thickness: 300, unitWeight: 2.36e-5 },
          [{ at: { x: 0, y: 0 }, reaction: reaction(P, M) }],
          ground,
        );
        const gone = !tipped.some((c) => c.id === "pad-ground-pressure");
        if (gone) expect(one).toBeGreaterThan(1);
      }),
    ));
  test("a shear at the top tips by the pad's depth and slides", () => {
    const pad = { outline: square(1000), thickness: 300, unitWeight: 2.36e-5 };
    const [tips, , slides] = separatePadChecks(
      pad,
      [{ at: { x: 0, y: 0 }, reaction: { P: 1e4, Mx: 0, My: 0, Vx: 1000, Vy: 0 } }],
      ground,
    );
    expect(tips!.demand.value).toBeCloseTo(1.5 * 1000 * 300, 6);
    expect(slides!.ratio).toBeCloseTo((1.5 * 1000) / (0.3 * (1e4 + 2.36e-5 * 4e6 * 300)), 9);
  });
});

describe("a strip under both columns", () => {
  const base = { length: 4700, width: 1500, thickness: 300, E: 25e3, k: 0.027, unitWeight: 2.36e-5 };
  const loads = (P: number, M: number) => [
    { at: 750, P, M },
    { at: 3950, P, M: -M },
  ];
  test("equal columns with inward moments: hogging grows with the moment, ground pressure stays moderate", () => {
    const [none, some] = [stripBending(base, loads(25e3, 0)), stripBending(base, loads(25e3, 15e6))];
    if (isUnable(none) || isUnable(some)) throw new Error("lifted");
    expect(some.sagging.value).not.toBeCloseTo(none.sagging.value, 0);
    expect(some.groundPressure.value).toBeLessThan(0.05);
  });
  test("a stiff strip is rigid statics: mean pressure N/A + own weight", () => {
    const stiff = stripBending({ ...base, E: 1e12 }, loads(25e3, 0));
    if (isUnable(stiff)) throw new Error("lifted");
    expect(stiff.groundPressure.value).toBeCloseTo(5e4 / (4700 * 1500) + 2.36e-5 * 300, 5);
  });
  test("it says when it would lift", () =>
    expect(isUnable(stripBending(base, [{ at: 0, P: 1e5, M: -9e7 }]))).toBe(true));
});

describe("the thin slab at the pad's edge", () => {
  const slab = { E: 22e3, nu: 0.15, h: 100, k: 0.027 };
  const r = { P: 25e3, Mx: 5e6, My: 20e6, Vx: 0, Vy: 0 };
  test("a bigger pad, a thicker slab and a smaller moment relieve it; turning the pad turns nothing else", () => {
    const stress = thinSlabEdge(slab, { x: 1200, y: 1200 }, r).stress.value;
    expect(thinSlabEdge(slab, { x: 1500, y: 1500 }, r).stress.value).toBeLessThan(stress);
    expect(thinSlabEdge({ ...slab, h: 125 }, { x: 1200, y: 1200 }, r).stress.value).toBeLessThan(stress);
    expect(thinSlabEdge(slab, { x: 1200, y: 1200 }, { ...r, My: 1e7 }).stress.value).toBeLessThan(stress);
    const turned = thinSlabEdge(slab, { x: 900, y: 1500 }, { ...r, Mx: r.My, My: r.Mx }).stress.value;
    expect(turned).toBeCloseTo(thinSlabEdge(slab, { x: 1500, y: 900 }, r).stress.value, 9);
  });
});

test("the cold joint asks for the larger of the maker's distance and 1.5 hef", () => {
  const outline = ellipse(1200, 1200, 4);
  const anchors = [{ x: 400, y: -300 }];
  expect(coldJointCheck(outline, anchors, 80, 150).demand.value).toBe(150);
  expect(coldJointCheck(outline, anchors, 120, 150).demand.value).toBe(180);
  expect(coldJointCheck(outline, anchors, 80, 150).capacity.value).toBeCloseTo(600 / Math.SQRT2, 6);
});
