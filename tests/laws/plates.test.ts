/** What must hold for every floor, whatever the numbers: laws of the plate on ground, no expected values. */

import {
  type Floor,
  type FloorCase,
  type FloorLoad,
  type Joint,
  solveFloor,
  type Transfer,
  unboundedOutline,
} from "@floorworthy/engine/plates";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { corners, plainFloor, rigidityOf, solveOne, spread, square } from "../plates/setups.ts";

const close = (a: number, b: number, tolerance: number, scale = Math.max(Math.abs(a), Math.abs(b))): void =>
  expect(Math.abs(a - b), `${a} and ${b}`).toBeLessThanOrEqual(tolerance * scale);

/** Bays with up to two pads, up to two joints, a base plate that pushes and pulls. */
const bays = fc.record({
  width: fc.integer({ min: 2500, max: 6000 }),
  depth: fc.integer({ min: 2500, max: 6000 }),
  thickness: fc.integer({ min: 75, max: 250 }),
  k: fc.double({ min: 0.01, max: 0.15, noNaN: true }),
  pads: fc.array(
    fc.record({
      x: fc.double({ min: 0, max: 1, noNaN: true }),
      y: fc.double({ min: 0, max: 1, noNaN: true }),
      half: fc.integer({ min: 300, max: 900 }),
      thickness: fc.integer({ min: 150, max: 400 }),
    }),
    { maxLength: 2 },
  ),
  joints: fc.array(
    fc.record({
      axis: fc.constantFrom("x" as const, "y" as const),
      at: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      part: fc.boolean(),
      kind: fc.constantFrom("none", "hinge", "springs"),
      shear: fc.double({ min: 0, max: 100, noNaN: true }),
    }),
    { maxLength: 2 },
  ),
  P: fc.integer({ min: 0, max: 80_000 }),
  pull: fc.integer({ min: 0, max: 20_000 }),
  column: fc.record({
    x: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
    y: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
  }),
});

type Bay = typeof bays extends fc.Arbitrary<infer T> ? T : never;

const build = (b: Bay): { floor: Floor; cases: FloorCase[]; focus: ReturnType<typeof square>[] } => {
  const [x, y] = [b.column.x * b.width, b.column.y * b.depth];
  const joints = b.joints.map(({ axis, at, part, kind, shear }): Joint => {
    const transfer: Transfer = kind === "springs" ? { kind, shear, rotation: 0 } : { kind: kind as "none" | "hinge" };
    const along = axis === "x" ? b.depth : b.width;
    return {
      axis,
      at: at * (axis === "x" ? b.width : b.depth),
      transfer,
      ...(part ? { from: 0.3 * along, to: 0.7 * along } : {}),
    };
  });
  const floor = plainFloor(
    { x0: 0, x1: b.width, y0: 0, y1: b.depth },
    {
      thickness: b.thickness,
      k: b.k,
      unitWeight: 2.4e-5,
      zones: b.pads.map((p) => ({ rect: square(p.half, p.x * b.width, p.y * b.depth), thickness: p.thickness })),
      joints,
    },
  );
  const toe: FloorLoad = spread(corners({ x0: x + 50, x1: x + 200, y0: y - 200, y1: y + 200 }), b.P + 3 * b.pull);
  const pulls: FloorLoad[] = [-150, 0, 150].map((d) => ({ kind: "point", x: x - 150, y: y + d, P: -b.pull }));
  return { floor, cases: [{ name: "bay", loads: [toe, ...pulls] }], focus: [square(200, x, y)] };
};

describe("every solve", () => {
  test("is in equilibrium, finite, and its ground only pushes", () => {
    fc.assert(
      fc.property(bays, (bay) => {
        const { floor, cases, focus } = build(bay);
        const results = solveFloor(floor, cases, { support: "pushes-only", focus, fineness: 0.6 });
        if ("unable" in results) {
          expect(results.reason).toMatch(/lifts off or tips/);
          return;
        }
        const [r] = results;
        expect(Math.max(r!.equilibrium.force, r!.equilibrium.Mx, r!.equilibrium.My)).toBeLessThan(1e-5);
        const g = r!.governing;
        for (const peak of [
          g.stressBottom,
          g.stressTop,
          g.stressBottomAveraged,
          g.stressTopAveraged,
          g.groundPressure,
          g.deflection,
        ])
          expect(Number.isFinite(peak.value)).toBe(true);
        expect(g.stressBottomAveraged.value).toBeLessThanOrEqual(g.stressBottom.value * 1.02 + 1e-6);
        for (const u of [0.05, 0.35, 0.65, 0.95])
          for (const v of [0.05, 0.5, 0.95])
            expect(r!.groundPressureAt({ x: u * floor.outline.x1, y: v * floor.outline.y1 })).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60, seed: 7 },
    );
  });
  test("does not depend on which axis is called x", () => {
    fc.assert(
      fc.property(bays, (bay) => {
        const { floor, cases, focus } = build(bay);
        const rect = ({ x0, x1, y0, y1 }: { x0: number; x1: number; y0: number; y1: number }) => ({
          x0: y0,
          x1: y1,
          y0: x0,
          y1: x1,
        });
        const turned: Floor = {
          ...floor,
          outline: rect(floor.outline),
          zones: floor.zones.map((z) => ({ ...z, rect: rect(z.rect) })),
          joints: floor.joints.map((j) => ({ ...j, axis: j.axis === "x" ? "y" : "x" })),
        };
        const turn = (load: FloorLoad): FloorLoad =>
          load.kind === "point"
            ? { ...load, x: load.y, y: load.x }
            : { ...load, px: load.py, py: load.px, polygon: load.polygon.map((p) => ({ x: p.y, y: p.x })) };
        const options = { support: "pushes-only" as const, fineness: 0.6 };
        const a = solveFloor(floor, cases, { ...options, focus });
        const b = solveFloor(turned, [{ name: "turned", loads: cases[0]!.loads.map(turn) }], {
          ...options,
          focus: focus.map(rect),
        });
        if ("unable" in a || "unable" in b) {
          expect("unable" in a).toBe("unable" in b);
          return;
        }
        close(a[0]!.governing.deflection.value, b[0]!.governing.deflection.value, 1e-5);
        close(a[0]!.governing.stressBottom.value, b[0]!.governing.stressBottom.value, 1e-4);
        close(
          a[0]!.governing.stressTop.value,
          b[0]!.governing.stressTop.value,
          1e-4,
          a[0]!.governing.stressBottom.value,
        );
      }),
      { numRuns: 15, seed: 11 },
    );
  });
  test("mirrored, is its own mirror image", () => {
    const { floor, cases, focus } = build({
      width: 4000,
      depth: 5000,
      thickness: 120,
      k: 0.03,
      P: 40_000,
      pull: 9_000,
      column: { x: 0.3, y: 0.4 },
      pads: [{ x: 0.3, y: 0.4, half: 500, thickness: 250 }],
      joints: [{ axis: "x", at: 0.6, part: false, kind: "springs", shear: 5 }],
    });
    const m = (x: number): number => 4000 - x;
    const rect = (r: { x0: number; x1: number; y0: number; y1: number }) => ({ ...r, x0: m(r.x1), x1: m(r.x0) });
    const mirrored: Floor = {
      ...floor,
      zones: floor.zones.map((z) => ({ ...z, rect: rect(z.rect) })),
      joints: floor.joints.map((j) => ({ ...j, at: m(j.at) })),
    };
    const flip = (load: FloorLoad): FloorLoad =>
      load.kind === "point"
        ? { ...load, x: m(load.x) }
        : { ...load, polygon: load.polygon.map((p) => ({ ...p, x: m(p.x) })).reverse() };
    const a = solveOne(floor, cases[0]!.loads, { support: "pushes-only", focus });
    const b = solveOne(mirrored, cases[0]!.loads.map(flip), { support: "pushes-only", focus: focus.map(rect) });
    for (const p of [
      { x: 1300, y: 2000 },
      { x: 900, y: 2500 },
      { x: 3000, y: 1000 },
    ]) {
      close(a.deflectionAt(p), b.deflectionAt({ ...p, x: m(p.x) }), 1e-7, a.governing.deflection.value);
      const [ma, mb] = [a.momentsAt(p), b.momentsAt({ ...p, x: m(p.x) })];
      close(ma.Mx, mb.Mx, 1e-4, 1000);
      close(ma.Mxy, -mb.Mxy, 1e-4, 1000);
    }
    close(a.governing.stressBottom.value, b.governing.stressBottom.value, 1e-6);
  });
});

describe("the governing stress", () => {
  const floor = plainFloor(
    { x0: 0, x1: 4000, y0: 0, y1: 4000 },
    { joints: [{ axis: "y", at: 2600, transfer: { kind: "hinge" } }] },
  );
  const places = [square(200, 700, 700), square(200, 200, 3000)];
  const r = solveOne(
    floor,
    places.map((p, i) => spread(corners(p), 20_000 + 5_000 * i)),
    { focus: places },
  );
  const tension = (face: "bottom" | "top", p: { x: number; y: number }): number => {
    const { Mx, My, Mxy } = r.momentsAt(p);
    const sign = face === "bottom" ? 1 : -1;
    return (6 / 100 ** 2) * ((sign * (Mx + My)) / 2 + Math.hypot((Mx - My) / 2, Mxy));
  };
  test.each(["bottom", "top"] as const)("%s: is the tension at its place, and none is found above it", (face) => {
    const peak = face === "bottom" ? r.governing.stressBottom : r.governing.stressTop;
    close(tension(face, peak.at), peak.value, 1e-6);
    close((6 * peak.moment) / peak.thickness ** 2, peak.value, 1e-12);
    let largest = 0;
    for (let x = 0; x <= 4000; x += 20)
      for (let y = 0; y <= 4000; y += 20) largest = Math.max(largest, tension(face, { x, y }));
    expect(largest).toBeLessThanOrEqual(peak.value * 1.005);
    expect(largest).toBeGreaterThan(peak.value * 0.97);
  });
});

describe("scaling", () => {
  const floor = plainFloor(square(3000), { thickness: 130 });
  const load = spread(corners({ x0: -150, x1: 100, y0: -200, y1: 150 }), 40_000);
  const focus = [square(200)];
  const one = solveOne(floor, [load], { focus });
  test("both ways: twice the load, twice of everything", () => {
    const two = solveOne(floor, [load, load], { focus });
    close(two.governing.deflection.value, 2 * one.governing.deflection.value, 1e-10);
    close(two.governing.stressBottom.value, 2 * one.governing.stressBottom.value, 1e-10);
  });
  test("only l and the shape matter: stiffer concrete on stiffer ground bends alike and sinks less", () => {
    const stiff = solveOne({ ...floor, E: 3 * floor.E, k: 3 * floor.k }, [load], { focus });
    close(stiff.governing.stressBottom.value, one.governing.stressBottom.value, 1e-9);
    close(stiff.governing.deflection.value, one.governing.deflection.value / 3, 1e-9);
  });
  test("in inches, pounds and psi it is the same floor", () => {
    const s = 25.4;
    const f = 4.4482216152605;
    const small: Floor = {
      ...floor,
      outline: square(3000 / s),
      thickness: 130 / s,
      E: (floor.E * s * s) / f,
      k: (floor.k * s ** 3) / f,
    };
    const r = solveOne(small, [spread(corners({ x0: -150 / s, x1: 100 / s, y0: -200 / s, y1: 150 / s }), 40_000 / f)], {
      focus: [square(200 / s)],
    });
    close(r.governing.deflection.value * s, one.governing.deflection.value, 1e-9);
    close((r.governing.stressBottom.value * f) / s / s, one.governing.stressBottom.value, 1e-9);
  });
  test("without load nothing moves, whatever the slab weighs: it was cast where it lies", () => {
    const heavy = { ...floor, unitWeight: 2.4e-5, zones: [{ rect: square(600), thickness: 300 }] };
    const r = solveOne(heavy, [], { support: "pushes-only" });
    expect(r.governing.deflection.value).toBe(0);
    expect(r.governing.stressBottom.value).toBe(0);
    close(r.groundPressureAt({ x: 0, y: 0 }), 2.4e-5 * 300, 1e-12);
    close(r.groundPressureAt({ x: 2000, y: 0 }), 2.4e-5 * 130, 1e-12);
  });
});

describe("better floors are never worse", () => {
  const loads = [
    spread(corners({ x0: 50, x1: 200, y0: -200, y1: 200 }), 70_000),
    ...[-150, 0, 150].map((y): FloorLoad => ({ kind: "point", x: -150, y, P: -10_000 })),
  ];
  const solve = (change: Partial<Floor>, support: "pushes-only" | "both-ways" = "pushes-only") =>
    solveOne(plainFloor({ x0: -1500, x1: 3500, y0: -2500, y1: 2500 }, { unitWeight: 2.4e-5, ...change }), loads, {
      support,
      focus: [square(200)],
    });
  test("thicker", () => {
    const steps = [90, 100, 125, 150, 200, 250].map((thickness) => solve({ thickness }).governing);
    steps.slice(1).forEach((g, i) => {
      expect(g.stressBottom.value).toBeLessThan(steps[i]!.stressBottom.value);
      expect(g.stressTop.value).toBeLessThan(steps[i]!.stressTop.value);
      expect(g.deflection.value).toBeLessThan(steps[i]!.deflection.value);
    });
  });
  test("a wider pad takes stress from the thin slab beside it", () => {
    const steps = [450, 600, 800, 1000].map(
      (half) => solve({ zones: [{ rect: square(half), thickness: 250 }] }).governing.thinSideOfPadEdge!,
    );
    for (let i = 1; i < steps.length; i++) expect(steps[i]!.value).toBeLessThan(steps[i - 1]!.value);
  });
  test("stiffer ground", () => {
    const steps = [0.014, 0.027, 0.054, 0.11].map((k) => solve({ k }).governing);
    steps.slice(1).forEach((g, i) => {
      expect(g.stressBottom.value).toBeLessThan(steps[i]!.stressBottom.value);
      expect(g.deflection.value).toBeLessThan(steps[i]!.deflection.value);
    });
  });
  test("ground that only pushes sinks at least as far as ground that also holds", () => {
    const weightless = { unitWeight: 0 };
    expect(solve(weightless).governing.deflection.value).toBeGreaterThanOrEqual(
      solve(weightless, "both-ways").governing.deflection.value,
    );
  });
});

describe("joints", () => {
  const load = [spread(corners({ x0: 20, x1: 220, y0: -150, y1: 150 }), 30_000)];
  const solve = (joints: readonly Joint[]) =>
    solveOne(plainFloor(square(2500), { joints }), load, { focus: [square(250)] });
  const whole = solve([]);
  const cut = solve([{ axis: "x", at: 0, transfer: { kind: "none" } }]);
  const hinge = solve([{ axis: "x", at: 0, transfer: { kind: "hinge" } }]);
  const sunk = (r: typeof whole): number => r.deflectionAt({ x: 1e-9, y: 0 });
  test("transfer from nothing to full goes from two free edges to a hinge, never beyond", () => {
    const steps = [0, 0.1, 1, 10, 100, 1000, 1e5].map((shear) =>
      solve([{ axis: "x", at: 0, transfer: { kind: "springs", shear, rotation: 0 } }]),
    );
    close(sunk(steps[0]!), sunk(cut), 1e-9);
    for (let i = 1; i < steps.length; i++) expect(sunk(steps[i]!)).toBeLessThan(sunk(steps[i - 1]!));
    expect(sunk(steps.at(-1)!)).toBeGreaterThan(sunk(hinge));
    close(sunk(steps.at(-1)!), sunk(hinge), 5e-3);
    expect(sunk(hinge)).toBeGreaterThan(sunk(whole));
  });
  test("with stiff springs for shear and rotation the slab is whole", () => {
    const sewn = solve([{ axis: "x", at: 0, transfer: { kind: "springs", shear: 1e9, rotation: 1e15 } }]);
    close(sunk(sewn), sunk(whole), 1e-4);
    close(sewn.governing.stressBottom.value, whole.governing.stressBottom.value, 2e-2);
  });
  test("over part of the length it lies between nothing and the whole length", () => {
    const part = (half: number) => solve([{ axis: "x", at: 0, from: -half, to: half, transfer: { kind: "none" } }]);
    const depths = [300, 800, 1600].map((half) => sunk(part(half)));
    close(sunk(part(2500)), sunk(cut), 1e-9);
    close(sunk(part(2)), sunk(whole), 2e-2);
    expect(depths.toSorted((a, b) => a - b)).toEqual(depths);
    expect(depths[0]).toBeGreaterThan(sunk(whole));
    expect(depths[2]).toBeLessThan(sunk(cut));
  });
  test("a hinge carries no moment across and both sides meet", () => {
    close(hinge.deflectionAt({ x: -1e-9, y: 50 }), hinge.deflectionAt({ x: 1e-9, y: 50 }), 1e-9);
    expect(Math.abs(hinge.momentsAt({ x: 0, y: 0 }).Mx)).toBeLessThan(0.03 * whole.momentsAt({ x: 0, y: 0 }).Mx);
  });
});

describe("what it refuses", () => {
  const floor = plainFloor(square(2000));
  const ask = (
    change: Partial<Floor>,
    loads: readonly FloorLoad[] = [],
    support: "pushes-only" | "both-ways" = "both-ways",
  ): unknown => solveFloor({ ...floor, ...change }, [{ name: "case", loads }], { support, focus: [] });
  const point = (x: number, P: number): FloorLoad => ({ kind: "point", x, y: 0, P });
  test.each([
    ["no thickness", ask({ thickness: 0 }), /thickness/],
    ["a thickness that is no number", ask({ zones: [{ rect: square(100), thickness: Number.NaN }] }), /thickness/],
    ["no area", ask({ outline: { x0: 0, x1: 0, y0: 0, y1: 1 } }), /no area/],
    ["ν = 0.5", ask({ nu: 0.5 }), /Poisson/],
    ["E = 0", ask({ E: 0 }), /modulus of the concrete/],
    ["nothing under it", ask({ k: 0 }), /no ground/],
    ["a load that is no number", ask({}, [point(Number.NaN, 1)]), /load/],
    ["a point off the slab", ask({}, [point(2001, 1)]), /beyond the edge/],
    ["a pressure over the edge", ask({}, [spread(corners(square(100, 1950)), 1)]), /beyond the edge/],
    ["a pull that lifts it all", ask({}, [point(0, -1)], "pushes-only"), /lifts off/],
    [
      "a load that tips a weightless slab... by two forces",
      ask({}, [point(1900, 2), point(-1900, -1.9)], "pushes-only"),
      /lifts off|tips/,
    ],
    ["a floor of a square kilometre", ask({ outline: square(500_000) }), /too large/],
  ])("%s", (_, answer, reason) => {
    expect(answer).toMatchObject({ unable: true });
    expect((answer as { reason: string }).reason).toMatch(reason);
  });
});

test("an outline that stands for a floor without end barely matters", () => {
  const floor = plainFloor(square(1), { k: 0.03 });
  const l = (rigidityOf(floor) / floor.k) ** 0.25;
  const at = (reach?: number): number =>
    solveOne(
      { ...floor, outline: unboundedOutline([{ x: 0, y: 0 }], l, reach) },
      [spread(corners(square(150)), 10_000)],
      { focus: [square(150)], fineness: 2 },
    ).deflectionAt({ x: 0, y: 0 });
  close(at(), at(10), 5e-4);
});
