/** Every layout keeps every rule or names the one it could not; no cheaper layout stands on the same grid. */

import type { Point, Polygon, Rect } from "@floorworthy/engine/geometry";
import { distanceToBoundary, distanceToSegment, pointInPolygon, polygonArea } from "@floorworthy/engine/geometry";
import { type JointPlan, type JointTask, planJoints, reentrantCorners } from "@floorworthy/engine/joints";
import { isUnable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const ft = 304.8;
const box = (x0: number, y0: number, x1: number, y1: number): Rect => ({
  x0: x0 * ft,
  y0: y0 * ft,
  x1: x1 * ft,
  y1: y1 * ft,
});
const ring = (...points: readonly (readonly [number, number])[]): Polygon =>
  points.map(([x, y]) => ({ x: x * ft, y: y * ft }));
const plain: JointTask = {
  slab: ring([0, 0], [24, 0], [24, 24], [0, 24]),
  spacing: 12.5 * ft,
  aspect: 1.5,
  keepOuts: [],
  anchors: [],
  columns: [],
  wanted: [],
  step: ft,
  stopCost: 1500,
};
const plan = (task: JointTask): JointPlan => {
  const found = planJoints(task);
  if (isUnable(found)) throw new Error(found.reason);
  return found;
};
const int = (min: number, max: number) => fc.integer({ min, max });

/** Rectangle, L, T or U, in whole feet. */
const slabs = fc
  .tuple(int(11, 38), int(11, 38), fc.constantFrom("rectangle", "L", "U"), int(3, 9), int(3, 9))
  .map(([w, l, shape, a, b]): Polygon => {
    if (shape === "rectangle") return ring([0, 0], [w, 0], [w, l], [0, l]);
    if (shape === "L") return ring([0, 0], [w, 0], [w, l - b], [w - a, l - b], [w - a, l], [0, l]);
    return ring([0, 0], [w, 0], [w, l], [w - 4, l], [w - 4, l - b], [4, l - b], [4, l], [0, l]);
  });
const tasks: fc.Arbitrary<JointTask> = fc
  .record({
    slab: slabs,
    spacing: int(8, 15),
    keep: fc.array(fc.tuple(int(0, 34), int(0, 34), int(1, 6), int(1, 6)), { maxLength: 6 }),
    anchors: fc.array(fc.tuple(int(0, 38), int(0, 38), int(1, 2)), { maxLength: 4 }),
    columns: fc.array(fc.tuple(int(2, 34), int(2, 34)), { maxLength: 2 }),
    wanted: fc.array(fc.tuple(fc.constantFrom("x" as const, "y" as const), int(1, 36)), { maxLength: 2 }),
  })
  .map(({ slab, spacing, keep, anchors, columns, wanted }) => ({
    slab,
    spacing: spacing * ft,
    aspect: 1.5,
    keepOuts: keep.map(([x, y, w, l], i) => ({ rect: box(x, y, x + w, y + l), what: `keep-out ${i}` })),
    anchors: anchors.map(([x, y, d], i) => ({ at: { x: x * ft, y: y * ft }, distance: d * ft, what: `anchor ${i}` })),
    columns: columns.map(([x, y], i) => ({ rect: box(x - 0.5, y - 0.5, x + 0.5, y + 0.5), what: `column ${i}` })),
    wanted: wanted.map(([axis, at]) => ({
      axis,
      at: at * ft,
      from: 0,
      to: 50 * ft,
      why: "It was asked for.",
      worth: 2000,
    })),
    step: 3 * ft,
    stopCost: 1500,
  }));

const inside = (p: Point, r: Rect) => p.x > r.x0 + 1e-6 && p.x < r.x1 - 1e-6 && p.y > r.y0 + 1e-6 && p.y < r.y1 - 1e-6;

/** Whether an axis-parallel line runs through the inside of a rectangle. */
const crosses = ({ a, b }: { a: Point; b: Point }, r: Rect): boolean =>
  Math.max(a.x, b.x) > r.x0 + 1e-6 &&
  Math.min(a.x, b.x) < r.x1 - 1e-6 &&
  Math.max(a.y, b.y) > r.y0 + 1e-6 &&
  Math.min(a.y, b.y) < r.y1 - 1e-6;

/** Judged from the drawing alone. */
const judge = (task: JointTask, found: JointPlan): void => {
  for (const { a, b, axis, reasons } of found.lines) {
    expect(reasons.length).toBeGreaterThan(0);
    const samples = Array.from({ length: 25 }, (_, i) => (i + 0.5) / 25);
    const out = samples.filter(
      (t) => pointInPolygon({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) }, task.slab) === "outside",
    );
    expect(out).toEqual([]);
    expect(task.keepOuts.filter(({ rect }) => crosses({ a, b }, rect))).toEqual([]);
    expect(found.panels.filter(({ rect }) => crosses({ a, b }, rect))).toEqual([]);
    for (const { at, distance } of task.anchors)
      expect(distanceToSegment(at, { a, b })).toBeGreaterThan(distance - 1e-4);
    // a line ends at the edge of the slab or on another line
    for (const end of [a, b]) {
      const onEdge = distanceToBoundary(end, task.slab) < 1e-6;
      const onLine = found.lines.some((l) => l.axis !== axis && distanceToSegment(end, l) < 1e-6);
      expect(onEdge || onLine).toBe(true);
    }
  }
  const unmet = (rule: string, r: Rect) => found.unmet.some((u) => u.rule === rule && u.panel === r);
  const corners = reentrantCorners(task.slab);
  let area = 0;
  let broken = false;
  for (const { rect, width, length } of found.panels) {
    expect(Math.max(width, length) <= task.spacing + 1e-5 || unmet("spacing", rect)).toBe(true);
    expect(Math.max(width, length) <= task.aspect * Math.min(width, length) + 1e-5 || unmet("aspect", rect)).toBe(true);
    for (const c of task.columns) {
      const p = { x: (c.rect.x0 + c.rect.x1) / 2, y: (c.rect.y0 + c.rect.y1) / 2 };
      if (inside(p, rect)) expect(unmet("building column", rect)).toBe(true);
    }
    broken ||= unmet("re-entrant corner", rect);
    area += width * length;
  }
  if (!broken) {
    // panels are the slab, once over; every inside corner lies on a side of each panel that touches it
    expect(area / polygonArea(task.slab)).toBeCloseTo(1, 9);
    for (const c of corners) for (const { rect } of found.panels) expect(inside(c, rect)).toBe(false);
  }
};

test("1,000 random slabs with obstacles: every rule kept, or named", () => {
  let kept = 0;
  fc.assert(
    fc.property(tasks, (task) => {
      const found = plan(task);
      judge(task, found);
      if (found.unmet.length === 0) kept++;
      for (const u of found.unmet) expect(u.words).toMatch(/\.$/);
      for (const w of task.wanted) {
        const there = found.lines.some(
          (l) => l.axis === w.axis && Math.abs((w.axis === "x" ? l.a.x : l.a.y) - w.at) < 1e-6,
        );
        expect(there || found.refused.some((r) => r.wanted === w)).toBe(true);
      }
    }),
    { numRuns: 1000 },
  );
  expect(kept).toBeGreaterThan(300); // the random slabs are not all hopeless
}, 300_000);

describe("brute force on small grids", () => {
  /** Cheapest layout by trying every cut of every piece, from geometry alone; Infinity where none keeps the rules. */
  const brute = (task: JointTask, found: JointPlan): number => {
    const { xs, ys } = found.grid;
    const whole: Rect = { x0: xs[0]!, y0: ys[0]!, x1: xs.at(-1)!, y1: ys.at(-1)! };
    const parts = (axis: "x" | "y") => {
      const [low, high] = axis === "x" ? [whole.x0, whole.x1] : [whole.y0, whole.y1];
      const n = Math.ceil((high - low) / task.spacing - 1e-9);
      return Array.from({ length: n - 1 }, (_, i) => low + ((i + 1) * (high - low)) / n);
    };
    const price = (axis: "x" | "y", at: number) => {
      const liked = parts(axis);
      const corner = task.slab.some((p) => p[axis] === at);
      return (
        1 + (corner || liked.length === 0 ? 0 : (0.05 * Math.min(...liked.map((v) => Math.abs(v - at)))) / task.spacing)
      );
    };
    const rectangular = (r: Rect): "slab" | "mixed" | "empty" => {
      let [hit, cells] = [0, 0];
      for (let x = r.x0 + ft / 4; x < r.x1; x += ft / 2)
        for (let y = r.y0 + ft / 4; y < r.y1; y += ft / 2) {
          cells++;
          if (pointInPolygon({ x, y }, task.slab) === "inside") hit++;
        }
      return hit === 0 ? "empty" : hit === cells ? "slab" : "mixed";
    };
    const cutCost = (axis: "x" | "y", at: number, from: number, to: number, edges = true): number => {
      let length = 0;
      for (let v = from + ft / 4; v < to; v += ft / 2) {
        const point = (d: number) => (axis === "x" ? { x: at + d, y: v } : { x: v, y: at + d });
        if (![1, -1].every((d) => pointInPolygon(point(d), task.slab) === "inside")) continue;
        if (task.keepOuts.some(({ rect }) => inside(point(0), rect))) return Number.POSITIVE_INFINITY;
        length += ft / 2;
      }
      if (length === 0) return 0;
      const [low, high] = axis === "x" ? [whole.y0, whole.y1] : [whole.x0, whole.x1];
      const stops = edges && cutCost(axis, at, low, high, false) === Number.POSITIVE_INFINITY ? task.stopCost : 0;
      return length * price(axis, at) + stops;
    };
    const least = (r: Rect): number => {
      const kind = rectangular(r);
      if (kind === "empty") return 0;
      const [w, l] = [r.x1 - r.x0, r.y1 - r.y0];
      const ok = Math.max(w, l) <= task.spacing + 1e-6 && Math.max(w, l) <= task.aspect * Math.min(w, l) + 1e-6;
      if (kind === "slab" && ok) return 0;
      let best = Number.POSITIVE_INFINITY;
      for (const x of xs.filter((v) => v > r.x0 && v < r.x1)) {
        const cut = cutCost("x", x, r.y0, r.y1);
        if (cut < best) best = Math.min(best, cut + least({ ...r, x1: x }) + least({ ...r, x0: x }));
      }
      for (const y of ys.filter((v) => v > r.y0 && v < r.y1)) {
        const cut = cutCost("y", y, r.x0, r.x1);
        if (cut < best) best = Math.min(best, cut + least({ ...r, y1: y }) + least({ ...r, y0: y }));
      }
      return best;
    };
    return least(whole);
  };
  const small: fc.Arbitrary<JointTask> = fc
    .record({
      w: int(2, 4),
      l: int(2, 4),
      notch: fc.boolean(),
      spacing: int(1, 2),
      keep: fc.array(fc.tuple(int(0, 3), int(0, 3)), { maxLength: 2 }),
    })
    .map(({ w, l, notch, spacing, keep }) => ({
      ...plain,
      slab: notch
        ? ring([0, 0], [4 * w, 0], [4 * w, 4 * l - 4], [4 * w - 4, 4 * l - 4], [4 * w - 4, 4 * l], [0, 4 * l])
        : ring([0, 0], [4 * w, 0], [4 * w, 4 * l], [0, 4 * l]),
      spacing: (4 * spacing + 2) * ft,
      keepOuts: keep.map(([x, y], i) => ({
        rect: box(4 * x + 1, 4 * y + 1, 4 * x + 3, 4 * y + 3),
        what: `keep-out ${i}`,
      })),
      step: 4 * ft,
    }));
  test(
    "the same cost, and rules go unmet only where nothing keeps them",
    () =>
      fc.assert(
        fc.property(small, (task) => {
          const found = plan(task);
          fc.pre(found.grid.xs.length * found.grid.ys.length <= 30);
          const cheapest = brute(task, found);
          if (cheapest === Number.POSITIVE_INFINITY) expect(found.unmet.length).toBeGreaterThan(0);
          else {
            expect(found.unmet).toEqual([]);
            expect(Math.abs(found.cost - cheapest)).toBeLessThan(1e-4 * Math.max(1, cheapest));
          }
        }),
        { numRuns: 60 },
      ),
    300_000,
  );
});

describe("what a person would expect", () => {
  test("24 × 24 ft at 12.5 ft: one cross in the middle, 48 ft of cut", () => {
    const found = plan(plain);
    expect(found.lines.map(({ a, b }) => [a.x / ft, a.y / ft, b.x / ft, b.y / ft])).toEqual([
      [expect.closeTo(12), 0, expect.closeTo(12), expect.closeTo(24)],
      [0, expect.closeTo(12), expect.closeTo(24), expect.closeTo(12)],
    ]);
    expect(found.sawLength.value / ft).toBeCloseTo(48, 9);
    expect(found.stops).toEqual([]);
  });
  test("no cut where none is needed", () => expect(plan({ ...plain, spacing: 25 * ft }).lines).toEqual([]));
  test("two pads leave the line between the columns; a strip under both refuses it and says why", () => {
    const wanted = [
      {
        axis: "x" as const,
        at: 12 * ft,
        from: 8 * ft,
        to: 13 * ft,
        why: "It runs between the lift's columns.",
        worth: 3000,
      },
    ];
    const pads = [
      { rect: box(4, 8, 9, 13), what: "the pad of the left column" },
      { rect: box(15, 8, 20, 13), what: "the pad of the right column" },
    ];
    const between = plan({ ...plain, keepOuts: pads, wanted });
    expect(between.refused).toEqual([]);
    expect(between.lines.find((l) => l.axis === "x")!.reasons).toContain("It runs between the lift's columns.");
    const strip = plan({
      ...plain,
      keepOuts: [{ rect: box(4, 8, 20, 13), what: "the strip under both columns" }],
      wanted,
    });
    expect(strip.refused.map((r) => r.reason)).toEqual(["Not cut: it would cross the strip under both columns."]);
    expect(strip.unmet.map((u) => u.rule)).toContain("spacing");
    expect(strip.unmet[0]!.words).toContain("the strip under both columns");
  });
  test("an anchor pushes a line aside by the distance asked", () => {
    const found = plan({
      ...plain,
      anchors: [{ at: { x: 12 * ft, y: 5 * ft }, distance: 152.4, what: "the left column's anchors" }],
    });
    const x = found.lines.filter((l) => l.axis === "x").map((l) => l.a.x);
    for (const v of x) expect(Math.abs(v - 12 * ft)).toBeGreaterThan(152.3);
    expect(found.unmet).toEqual([]);
  });
  test("an inside corner starts a joint, a building column gets a joint and its turned square", () => {
    const found = plan({
      ...plain,
      slab: ring([0, 0], [24, 0], [24, 14], [16, 14], [16, 24], [0, 24]),
      columns: [{ rect: box(7.75, 9.75, 8.25, 10.25), what: "the steel post" }],
    });
    expect(found.unmet).toEqual([]);
    expect(found.lines.some((l) => l.reasons.some((r) => r.includes("inside corner")))).toBe(true);
    expect(found.lines.some((l) => l.reasons.includes("It meets the steel post."))).toBe(true);
    expect(found.isolation[0]!.outline).toHaveLength(4);
  });
  test("it stops when told to, reports its progress, and refuses what it cannot plan", () => {
    const shares: number[] = [];
    planJoints(plain, { progress: (s) => shares.push(s) });
    expect(shares.at(-1)).toBeCloseTo(1, 9);
    expect(isUnable(planJoints(plain, { shouldStop: () => true }))).toBe(true);
    expect(isUnable(planJoints({ ...plain, slab: ring([0, 0], [24, 1], [24, 24], [0, 24]) }))).toBe(true);
    expect(isUnable(planJoints({ ...plain, spacing: Number.NaN }))).toBe(true);
  });
  test("turned by a quarter, the layout costs the same (but for the tie-break)", () =>
    fc.assert(
      fc.property(tasks, (task) => {
        const turn = (p: Point): Point => ({ x: p.y, y: p.x });
        const turnRect = (r: Rect): Rect => ({ x0: r.y0, y0: r.x0, x1: r.y1, y1: r.x1 });
        const turned: JointTask = {
          ...task,
          slab: task.slab.map(turn).toReversed(),
          keepOuts: task.keepOuts.map((k) => ({ ...k, rect: turnRect(k.rect) })),
          anchors: task.anchors.map((a) => ({ ...a, at: turn(a.at) })),
          columns: task.columns.map((c) => ({ ...c, rect: turnRect(c.rect) })),
          wanted: task.wanted.map((w) => ({ ...w, axis: w.axis === "x" ? "y" : "x" })),
        };
        const [one, two] = [plan(task).cost, plan(turned).cost];
        expect(Math.abs(one - two) / Math.max(1, one)).toBeLessThan(1e-4);
      }),
      { numRuns: 50 },
    ));
});
