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
import { solveFloor } from "@floorworthy/engine/plates";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { semiInfinite } from "@floorworthy/engine/slabs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const able = <T>(value: T | Unable): T => {
  if (isUnable(value)) throw new Error(value.reason);
  return value;
};
const ringOf = (bx: number, by: number): Polygon =>
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x, y]) => ({ x: (x! * bx) / 2, y: (y! * by) / 2 }));
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
  test("beyond a far section in any direction lies the whole load at its own arm", () =>
    fc.assert(
      fc.property(number(0, 6.28), number(-400, 400), number(-400, 400), (angle, dx, dy) => {
        const outline = ellipse(1800, 1500, 24);
        const at = { x: 400 + dx, y: -300 + dy };
        const pressure = groundPressure(outline, 5e4, at);
        if (isUnable(pressure)) throw new Error(pressure.reason);
        const half = { nx: 2 * Math.cos(angle), ny: 2 * Math.sin(angle), c: 2 * 5000 };
        const { V, M } = sectionDemand(outline, pressure, 0, half);
        expect(V / 5e4).toBeCloseTo(1, 9);
        expect(M / 5e4 / (5000 - Math.cos(angle) * at.x - Math.sin(angle) * at.y)).toBeCloseTo(1, 9);
      }),
    ));
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
    const both = padResultant(pad, [
      { at: { x: 0, y: 0 }, reaction: { P: 1e4, Mx: 2e5, My: 1e5, Vx: 1000, Vy: -500 } },
    ]);
    expect(both.at.x * both.N).toBeCloseTo(1e5 + 1000 * 300, 3);
    expect(both.at.y * both.N).toBeCloseTo(2e5 - 500 * 300, 3);
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
  test("a long strip is an infinite beam under its load: M = P/4λ", () => {
    const long = { ...base, length: 40000, unitWeight: 1e-3 }; // heavy, so that it stays down
    const found = stripBending(long, [{ at: 20000, P: 25e3, M: 0 }]);
    if (isUnable(found)) throw new Error(found.reason);
    const lambda = ((0.027 * 1500) / (4 * 25e3 * ((1500 * 300 ** 3) / 12))) ** 0.25;
    expect(found.sagging.value / (25e3 / (4 * lambda))).toBeCloseTo(1, 6);
    expect(found.shear.value / 12500).toBeCloseTo(1, 6);
  });
  test("it says when it would lift", () =>
    expect(isUnable(stripBending(base, [{ at: 0, P: 1e5, M: -9e7 }]))).toBe(true));
});

describe("the thin slab at the pad's edge", () => {
  test("its stiffness is that of semi-infinite beams on all four sides, found one by one", () => {
    const slab = { E: 22e3, nu: 0.15, h: 100, k: 0.027 };
    const [B, L] = [1200, 1500];
    const beam = { EI: (22e3 * 100 ** 3) / 12, K: 0.027 }; // per mm of width
    /** end force and couple that push the end down by w and turn it by θ */
    const ends = (w: number, turn: number) => {
      const [p, m] = [semiInfinite(beam, 1, 0, 0), semiInfinite(beam, 0, 1, 0)];
      const det = p.y * m.slope - m.y * p.slope;
      return { force: (w * m.slope - m.y * turn) / det, couple: (p.y * turn - w * p.slope) / det };
    };
    const phi = 1e-4;
    const side = ends((phi * B) / 2, phi);
    let resisted = (0.027 * phi * L * B ** 3) / 12 + L * (side.force * B + 2 * side.couple);
    const n = 2000;
    for (let i = 0; i < n; i++) {
      const x = -B / 2 + ((i + 0.5) * B) / n;
      resisted += (2 * ends(phi * x, 0).force * x * B) / n;
    }
    const found = thinSlabEdge(slab, { x: B, y: L }, { P: 0, Mx: 0, My: resisted, Vx: 0, Vy: 0 });
    expect(found.moment.value / side.couple).toBeCloseTo(1, 5);
    expect(found.shear.value / side.force).toBeCloseTo(1, 5);
  });
  test("it stands near the plate at the line between thick and thin", () => {
    const [B, h, T, P, My] = [1219, 102, 305, 25100, 20.9e6];
    const slab = { E: 21500, nu: 0.15, h, k: 0.0271 };
    const [bx, by] = [500, 450];
    const [solved] = able(
      solveFloor(
        {
          ...slab,
          outline: { x0: -3500, y0: -3500, x1: 3500, y1: 3500 },
          thickness: h,
          zones: [{ rect: { x0: -B / 2, y0: -B / 2, x1: B / 2, y1: B / 2 }, thickness: T }],
          unitWeight: 0,
          joints: [],
        },
        [
          {
            name: "rated",
            loads: [
              { kind: "pressure", polygon: ringOf(bx, by), p0: P / (bx * by), px: (12 * My) / (bx ** 3 * by), py: 0 },
            ],
          },
        ],
        { support: "both-ways", focus: [{ x0: -250, y0: -225, x1: 250, y1: 225 }] },
      ),
    );
    const along = Array.from({ length: 41 }, (_, i) => solved!.momentsAt({ x: B / 2 + 1, y: ((i - 20) * B) / 40 }).Mx);
    const closed = thinSlabEdge(slab, { x: B, y: B }, { P, Mx: 0, My, Vx: 0, Vy: 0 }).moment.value;
    expect(closed / Math.max(...along)).toBeGreaterThan(0.95);
    expect(closed / Math.max(...along)).toBeLessThan(1.15);
  });
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
