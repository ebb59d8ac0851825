/** Laws every contact solution keeps, on random notched plates, anchors and two-way loads. */
import { type BasePlate, type ContactResult, settlementAt, solveContact } from "@floorworthy/engine/contact";
import { type Reaction, turnReaction } from "@floorworthy/engine/frames";
import { type Point, type Polygon, pointInPolygon, polygonArea } from "@floorworthy/engine/geometry";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fibrePlate } from "../../bench/fibre-plate.ts";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

/** Without the numbers so small that they lose their digits: no test of a law can divide by them. */
const real = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((v) => (Math.abs(v) < 1e-60 ? 0 : v));

/** Star-shaped outlines of 3 to 9 corners, mostly notched, standing off the origin. */
const outlines: fc.Arbitrary<{ outline: Polygon; centre: Point }> = fc
  .tuple(fc.array(fc.tuple(real(0.2, 1), real(0.3, 1)), { minLength: 3, maxLength: 9 }), real(-80, 80), real(-80, 80))
  .map(([corners, x, y]) => {
    const whole = corners.reduce((sum, [step]) => sum + step, 0);
    let angle = 0;
    const outline = corners.map(([step, radius]) => {
      angle += (2 * Math.PI * step) / whole;
      return { x: x + 300 * radius * Math.cos(angle), y: y + 300 * radius * Math.sin(angle) };
    });
    return { outline, centre: { x, y } };
  })
  .filter(({ outline, centre }) => pointInPolygon(centre, outline) === "inside" && polygonArea(outline) > 5000);

const plates = (preload: number): fc.Arbitrary<BasePlate> =>
  fc
    .tuple(
      outlines,
      fc.array(fc.tuple(fc.nat(8), real(0.05, 0.9), real(5e3, 1e5), real(0, preload)), { minLength: 1, maxLength: 6 }),
      real(1, 300),
    )
    .map(([{ outline, centre }, anchors, bedding]) => ({
      outline,
      bedding,
      anchors: anchors.map(([corner, part, stiffness, N0], i) => {
        const p = outline[corner % outline.length]!;
        const [x, y] = [centre.x + part * (p.x - centre.x), centre.y + part * (p.y - centre.y)];
        return { id: `A${i}`, x, y, stiffness, preload: N0 };
      }),
    }));

const loads: fc.Arbitrary<Reaction> = fc
  .tuple(real(-3e4, 8e4), real(-3e7, 3e7), real(-3e7, 3e7))
  .map(([P, Mx, My]) => ({ P, Mx, My, Vx: 0, Vy: 0 }));

/** Force and moments of the pressure field, by three points a triangle of a signed fan: exact for these integrands. */
const pressed = ({ contactZone, pressure: { p0, px, py } }: ContactResult): [number, number, number] => {
  let [P, Mx, My] = [0, 0, 0];
  for (const piece of contactZone) {
    for (let i = 1; i + 1 < piece.length; i++) {
      const [a, b, c] = [piece[0]!, piece[i]!, piece[i + 1]!];
      const area = ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / 2;
      for (const [u, v] of [
        [a, b],
        [b, c],
        [c, a],
      ] as const) {
        const [x, y] = [(u.x + v.x) / 2, (u.y + v.y) / 2];
        const N = ((p0 + px * x + py * y) * area) / 3;
        P += N;
        Mx += N * y;
        My += N * x;
      }
    }
  }
  return [P, Mx, My];
};

const pulls = ({ anchorTension }: ContactResult): number[] => anchorTension.map(({ T }) => T);
const close = (a: number, b: number, scale: number, within = 1e-8): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(within * scale);

describe("equilibrium and signs", () => {
  test("concrete and anchors balance the load; the returned residual is at most 1e-9", () => {
    fc.assert(
      fc.property(plates(2e4), loads, (plate, load) => {
        const found = able(solveContact(plate, load));
        const { P, Mx, My } = found.residual;
        expect(Math.max(Math.abs(P), Math.abs(Mx), Math.abs(My))).toBeLessThanOrEqual(1e-9);
        const [N, NMx, NMy] = pressed(found);
        const T = pulls(found);
        const sum = (f: (a: BasePlate["anchors"][number]) => number): number =>
          plate.anchors.reduce((total, a, i) => total + T[i]! * f(a), 0);
        const all = N + sum(() => 1) + Math.abs(load.P) + (Math.abs(load.Mx) + Math.abs(load.My)) / 300;
        close(N - sum(() => 1), load.P, all);
        close(NMx - sum((a) => a.y), load.Mx, 400 * all);
        close(NMy - sum((a) => a.x), load.My, 400 * all);
      }),
      { numRuns: 400 },
    );
  });

  test("no anchor pushes, no concrete pulls, and the contact zone is where the plate goes down", () => {
    fc.assert(
      fc.property(plates(2e4), loads, (plate, load) => {
        const found = able(solveContact(plate, load));
        for (const T of pulls(found)) expect(T).toBeGreaterThanOrEqual(0);
        const { p0, px, py } = found.pressure;
        for (const piece of found.contactZone) {
          for (const { x, y } of piece) expect(p0 + px * x + py * y).toBeGreaterThanOrEqual(-1e-9 * found.maxPressure);
        }
        expect(found.contactArea).toBeLessThanOrEqual(polygonArea(plate.outline) * (1 + 1e-12));
        if (plate.outline.every(({ x, y }) => settlementAt(found, x, y) > 0)) {
          close(found.contactArea, polygonArea(plate.outline), found.contactArea);
        }
      }),
      { numRuns: 300 },
    );
  });

  test("an unpreloaded anchor pulls by its stiffness times the lift of the plate at its place", () => {
    fc.assert(
      fc.property(plates(0), loads, (plate, load) => {
        const found = able(solveContact(plate, load));
        plate.anchors.forEach((a, i) => {
          const T = Math.max(0, -a.stiffness * settlementAt(found, a.x, a.y));
          close(pulls(found)[i]!, T, T + Math.abs(load.P) + 1);
        });
      }),
      { numRuns: 200 },
    );
  });
});

describe("invariance", () => {
  const turned = (p: Point, angle: number): Point => ({
    x: Math.cos(angle) * p.x - Math.sin(angle) * p.y,
    y: Math.sin(angle) * p.x + Math.cos(angle) * p.y,
  });
  const scale = (load: Reaction): number => Math.abs(load.P) + (Math.abs(load.Mx) + Math.abs(load.My)) / 50 + 1e5;

  test("turning plate and load together changes no pull", () => {
    fc.assert(
      fc.property(plates(2e4), loads, real(-3, 3), (plate, load, angle) => {
        const other: BasePlate = {
          ...plate,
          outline: plate.outline.map((p) => turned(p, angle)),
          anchors: plate.anchors.map((a) => ({ ...a, ...turned(a, angle) })),
        };
        const [one, two] = [able(solveContact(plate, load)), able(solveContact(other, turnReaction(load, angle)))];
        pulls(one).forEach((T, i) => void close(pulls(two)[i]!, T, scale(load), 1e-6));
        close(two.contactArea, one.contactArea, polygonArea(plate.outline), 1e-6);
      }),
      { numRuns: 200 },
    );
  });

  test("mirroring plate and load changes no pull; nor does the direction of the outline", () => {
    fc.assert(
      fc.property(plates(2e4), loads, (plate, load) => {
        const mirrored: BasePlate = {
          ...plate,
          outline: plate.outline.map((p) => ({ x: -p.x, y: p.y })),
          anchors: plate.anchors.map((a) => ({ ...a, x: -a.x })),
        };
        const one = able(solveContact(plate, load));
        const two = able(solveContact(mirrored, { ...load, My: -load.My }));
        pulls(one).forEach((T, i) => void close(pulls(two)[i]!, T, scale(load), 1e-6));
      }),
      { numRuns: 200 },
    );
  });

  test("moving the plate off the origin, the load's line staying with it, changes no pull", () => {
    fc.assert(
      fc.property(plates(2e4), loads, real(-500, 500), real(-500, 500), (plate, load, dx, dy) => {
        const moved: BasePlate = {
          ...plate,
          outline: plate.outline.map((p) => ({ x: p.x + dx, y: p.y + dy })),
          anchors: plate.anchors.map((a) => ({ ...a, x: a.x + dx, y: a.y + dy })),
        };
        const there = { ...load, My: load.My + load.P * dx, Mx: load.Mx + load.P * dy };
        const [one, two] = [able(solveContact(plate, load)), able(solveContact(moved, there))];
        pulls(one).forEach((T, i) => void close(pulls(two)[i]!, T, scale(load), 1e-6));
      }),
      { numRuns: 200 },
    );
  });

  test("scaling: twice the load and preload, twice the pulls; softer everything, the same pulls", () => {
    fc.assert(
      fc.property(plates(2e4), loads, real(0.2, 5), (plate, load, s) => {
        const one = able(solveContact(plate, load));
        const heavier = able(
          solveContact(
            { ...plate, anchors: plate.anchors.map((a) => ({ ...a, preload: s * a.preload })) },
            { P: s * load.P, Mx: s * load.Mx, My: s * load.My, Vx: 0, Vy: 0 },
          ),
        );
        const anchors = plate.anchors.map((a) => ({ ...a, stiffness: s * a.stiffness }));
        const softer = able(solveContact({ ...plate, bedding: s * plate.bedding, anchors }, load));
        pulls(one).forEach((T, i) => {
          close(pulls(heavier)[i]!, s * T, s * scale(load), 1e-6);
          close(pulls(softer)[i]!, T, scale(load), 1e-6);
        });
      }),
      { numRuns: 200 },
    );
  });
});

/** 500 × 450 mm, three outer and two inner anchors. */
const usual = (preload: number, bedding = 100): BasePlate => ({
  outline: [
    { x: -250, y: -225 },
    { x: 250, y: -225 },
    { x: 250, y: 225 },
    { x: -250, y: 225 },
  ],
  anchors: [
    [-190, -165],
    [-190, 0],
    [-190, 165],
    [100, -165],
    [100, 165],
  ].map(([x, y], i) => ({ id: `A${i + 1}`, x: x!, y: y!, stiffness: 40_000, preload })),
  bedding,
});

describe("preload and stiffness", () => {
  const preloads = [0, 2e3, 5e3, 1e4, 1.5e4, 2e4, 3e4, 5e4];

  test("more preload: the same load tilts the plate less", () => {
    for (const M of [4e6, 8e6, 12e6, 2e7]) {
      const rotation = preloads.map((N0) => {
        const load = { P: 25_000, Mx: 0, My: M, Vx: 0, Vy: 0 };
        const clamped = able(solveContact(usual(N0), { P: 0, Mx: 0, My: 0, Vx: 0, Vy: 0 }));
        return able(solveContact(usual(N0), load)).tiltX - clamped.tiltX;
      });
      for (let i = 1; i < rotation.length; i++) expect(rotation[i]!).toBeLessThanOrEqual(rotation[i - 1]! * (1 + 1e-9));
    }
  });

  test("a well-clamped anchor's pull grows by the joint's share only; once the joint is open it takes all", () => {
    const at = (N0: number, M: number): number =>
      pulls(able(solveContact(usual(N0), { P: 25_000, Mx: 0, My: M, Vx: 0, Vy: 0 })))[0]!;
    const [clampedRise, looseRise] = [at(4e4, 4e6) - at(4e4, 3e6), at(0, 1.6e7) - at(0, 1.5e7)];
    expect(clampedRise).toBeGreaterThan(0);
    expect(clampedRise).toBeLessThan(0.1 * looseRise);
  });

  test("under preload alone every anchor holds its preload", () => {
    fc.assert(
      fc.property(plates(3e4), (plate) => {
        const found = able(solveContact(plate, { P: 0, Mx: 0, My: 0, Vx: 0, Vy: 0 }));
        pulls(found).forEach((T, i) => void close(T, plate.anchors[i]!.preload, 3e4));
      }),
      { numRuns: 200 },
    );
  });

  test("more moment never eases the outer row nor the toe", () => {
    let before = { T: 0, p: 0 };
    for (let M = 0; M <= 3e7; M += 1e6) {
      const found = able(solveContact(usual(0), { P: 25_000, Mx: 0, My: M, Vx: 0, Vy: 0 }));
      const now = { T: pulls(found)[0]!, p: found.maxPressure };
      expect(now.T).toBeGreaterThanOrEqual(before.T);
      expect(now.p).toBeGreaterThan(before.p);
      before = now;
    }
  });

  test("hard bedding: the pull tends to moments about the toe edge from above the edge arm", () => {
    const load = { P: 25_000, Mx: 0, My: 2e7, Vx: 0, Vy: 0 };
    const plate: BasePlate = { ...usual(0, 1e7), anchors: usual(0).anchors.slice(0, 3) };
    const row = pulls(able(solveContact(plate, load))).reduce((a, b) => a + b, 0);
    const edge = (2e7 - 25_000 * 250) / 440;
    expect(row).toBeGreaterThan(edge);
    expect(row / edge).toBeLessThan(1.02);
  });
});

describe("against a grid of springs", () => {
  test("the exact answer is what ever finer grids tend to", () => {
    const notched: BasePlate = {
      outline: [
        { x: -250, y: -225 },
        { x: 250, y: -225 },
        { x: 250, y: 225 },
        { x: 50, y: 225 },
        { x: 50, y: 25 },
        { x: -50, y: 25 },
        { x: -50, y: 225 },
        { x: -250, y: 225 },
      ],
      anchors: usual(0).anchors,
      bedding: 80,
    };
    const load = { P: 30_000, Mx: 9e6, My: 7e6, Vx: 0, Vy: 0 };
    const exact = able(solveContact(notched, load));
    const errors = [40, 160].map((cells) => {
      const grid = fibrePlate(notched, load, cells)!;
      return Math.abs(grid.tiltX / exact.tiltX - 1) + Math.abs(grid.settlement / exact.settlement - 1);
    });
    expect(errors[0]!).toBeLessThan(0.02);
    expect(errors[1]!).toBeLessThan(0.1 * errors[0]!);
  });

  test("a forked plate pressed on its two prongs has two contact pieces", () => {
    const fork: BasePlate = { ...usual(0), anchors: [] };
    const outline = [
      { x: -250, y: -225 },
      { x: 250, y: -225 },
      { x: 250, y: 225 },
      { x: 150, y: 225 },
      { x: 150, y: -125 },
      { x: -150, y: -125 },
      { x: -150, y: 225 },
      { x: -250, y: 225 },
    ];
    const found = able(solveContact({ ...fork, outline }, { P: 1e4, Mx: 1e4 * 150, My: 1e5, Vx: 0, Vy: 0 }));
    expect(found.contactZone.length).toBe(2);
    const areas = found.contactZone.map(polygonArea);
    close(areas[0]! + areas[1]!, found.contactArea, found.contactArea);
  });
});

describe("where there is no answer it says why", () => {
  const bare: BasePlate = { ...usual(0), anchors: [] };
  const reason = (result: ContactResult | Unable): string => (isUnable(result) ? result.reason : "");

  test("no anchors and the resultant off the plate, or uplift: overturns", () => {
    expect(reason(solveContact(bare, { P: 1e4, Mx: 0, My: 2.51e6, Vx: 0, Vy: 0 }))).toContain("overturns");
    expect(reason(solveContact(bare, { P: -1, Mx: 0, My: 0, Vx: 0, Vy: 0 }))).toContain("overturns");
    expect(reason(solveContact(bare, { P: 0, Mx: 1, My: 0, Vx: 0, Vy: 0 }))).toContain("overturns");
    expect(isUnable(solveContact(bare, { P: 1e4, Mx: 0, My: 2.49e6, Vx: 0, Vy: 0 }))).toBe(false);
  });
  test("nothing on it: at rest without pressure", () => {
    const found = able(solveContact(bare, { P: 0, Mx: 0, My: 0, Vx: 0, Vy: 0 }));
    expect([found.maxPressure, found.contactArea]).toEqual([0, 0]);
  });
  test("anchors along the edge that is lifted off cannot hold a turn about that edge", () => {
    const edge = [-100, 100].map((y, i) => ({ id: `E${i}`, x: 250, y, stiffness: 4e4, preload: 0 }));
    const result = solveContact({ ...bare, anchors: edge }, { P: 0, Mx: 0, My: 1e6, Vx: 0, Vy: 0 });
    expect(reason(result)).toContain("No equilibrium");
  });
  test.each([
    ["outside the plate", { ...bare, anchors: [{ id: "A9", x: 900, y: 0, stiffness: 1, preload: 0 }] }],
    ["no stiffness", { ...bare, anchors: [{ id: "A9", x: 0, y: 0, stiffness: 0, preload: 0 }] }],
    ["in compression", { ...bare, anchors: [{ id: "A9", x: 0, y: 0, stiffness: 1, preload: -1 }] }],
    ["no area", { ...bare, outline: [] }],
    ["stiffer than nothing", { ...bare, bedding: 0 }],
    ["not a number", { ...bare, bedding: Number.NaN }],
  ])("%s", (words, plate) => {
    expect(reason(solveContact(plate, { P: 1, Mx: 0, My: 0, Vx: 0, Vy: 0 }))).toContain(words);
  });
});
