/** Whatever the job: every planned line keeps clear of pads, bases, anchors and tubes; what cannot be kept is named. */

import { assess } from "@floorworthy/assess";
import { type JobJointPlan, planJobJoints } from "@floorworthy/assess/joint-plan";
import { distanceToBoundary, distanceToSegment, type Point } from "@floorworthy/engine/geometry";
import { alignJoints, type JointTask, planBurden, planJoints } from "@floorworthy/engine/joints";
import { isUnable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const inch = 25.4;
const ft = 12 * inch;

interface Drawn {
  readonly width: number;
  readonly depth: number;
  readonly notch: number;
  readonly slab: number;
  readonly spacing: number;
  readonly at: readonly [number, number];
  readonly pads: "none" | "pads" | "strip";
  readonly slope: number;
  readonly post: readonly [number, number] | undefined;
  readonly tube: number | undefined;
  readonly units: "inch-pound" | "si";
}

/** A job file of whole feet and inches. */
const jobOf = (d: Drawn): Job => {
  const [x, y] = d.at;
  const outline =
    d.notch > 0
      ? `[[0 ft, 0 ft], [${d.width} ft, 0 ft], [${d.width} ft, ${d.depth - d.notch} ft], [${d.width - d.notch} ft, ${d.depth - d.notch} ft], [${d.width - d.notch} ft, ${d.depth} ft], [0 ft, ${d.depth} ft]]`
      : `{ width: ${d.width} ft, depth: ${d.depth} ft }`;
  const left = [x * 12, y * 12];
  const right = [x * 12 + d.spacing, y * 12];
  const zone = (name: string, kind: string, width: number, cx: number) =>
    `    - { name: ${name}, kind: ${kind}, state: proposed, outline: { width: ${width} in, depth: 60 in, centre: [${cx} in, ${left[1]} in] }, thickness: 12 in, sideSlope: ${d.slope}, tied: cast-with }`;
  const zones =
    d.pads === "pads"
      ? [zone("left pad", "pad", 60, left[0]!), zone("right pad", "pad", 60, right[0]!)]
      : d.pads === "strip"
        ? [zone("strip", "strip", d.spacing + 60, (left[0]! + right[0]!) / 2)]
        : [];
  const text = `
floorworthy: 1
title: Law
units: ${d.units}
lift:
  name: Law lift
  kind: two-post
  manual: in-hand
  spacing: ${d.spacing} in
  base: { outline: { width: 18 in, depth: 20 in } }
  anchors: { holes: [[-7 in, -7 in], [-7 in, 7 in], [7 in, -7 in], [7 in, 7 in]] }
  asks: { thickness: 4 in, edge: 8 in }
bay:
  outline: ${outline}
${d.post ? `  posts:\n    - { name: post, outline: { width: 8 in, depth: 8 in, centre: [${d.post[0]} ft, ${d.post[1]} ft] } }` : ""}
floor:
  state: to-be-poured
  kind: slab-on-ground
  below: ground
  postTension: none-shown
  heat: none
  thickness: ${d.slab} in
${zones.length > 0 ? `  zones:\n${zones.join("\n")}` : ""}
${d.tube === undefined ? "" : `  pipes:\n    - { name: tube, kind: conduit, line: [[${d.tube} ft, 1 ft], [${d.tube} ft, 6 ft]], depth: 1 in }`}
columns: { left: [${left[0]} in, ${left[1]} in], right: [${right[0]} in, ${right[1]} in] }
`;
  const read = readJob(text);
  if (!read.ok) throw new Error(`${read.issues.map((i) => `${i.line}: ${i.message}`).join("\n")}\n${text}`);
  return read.job;
};

const int = (min: number, max: number) => fc.integer({ min, max });
const drawn: fc.Arbitrary<Drawn> = fc.record({
  width: int(20, 40),
  depth: int(20, 60),
  notch: fc.constantFrom(0, 0, 5, 8),
  slab: int(4, 8),
  spacing: int(105, 140),
  at: fc.tuple(int(4, 8), int(6, 16)),
  pads: fc.constantFrom("none", "pads", "strip"),
  slope: fc.constantFrom(0, 1, 2),
  post: fc.option(fc.tuple(int(3, 18), int(18, 20)), { nil: undefined }),
  tube: fc.option(int(2, 18), { nil: undefined }),
  units: fc.constantFrom("inch-pound", "si"),
});

const stopless = (job: Job) => ({ ...assess(job), stops: [] });
const planOf = (job: Job, assessment = stopless(job)): JobJointPlan => {
  const plan = planJobJoints(job, assessment, { step: 3 * ft });
  if (isUnable(plan)) throw new Error(plan.reason);
  return plan;
};

const boxOf = (points: readonly Point[]) => ({
  x0: Math.min(...points.map((p) => p.x)),
  x1: Math.max(...points.map((p) => p.x)),
  y0: Math.min(...points.map((p) => p.y)),
  y1: Math.max(...points.map((p) => p.y)),
});

/** Whether a line along the walls enters a box grown by a distance. */
const enters = ({ from, to }: { from: Point; to: Point }, points: readonly Point[], by: number): boolean => {
  const b = boxOf(points);
  return (
    Math.max(from.x, to.x) > b.x0 - by + 1e-3 &&
    Math.min(from.x, to.x) < b.x1 + by - 1e-3 &&
    Math.max(from.y, to.y) > b.y0 - by + 1e-3 &&
    Math.min(from.y, to.y) < b.y1 + by - 1e-3
  );
};

test("60 random jobs: clear of pads and their sides, 12 in of every base, the maker's distance, tubes; the rest is named", () => {
  let kept = 0;
  fc.assert(
    fc.property(drawn, (d) => {
      const job = jobOf(d);
      const assessment = stopless(job);
      const { layout } = assessment;
      const plan = planOf(job, assessment);
      for (const line of plan.lines) {
        for (const zone of job.floor.zones)
          expect(enters(line, zone.outline, d.slope * (12 - d.slab) * inch)).toBe(false);
        for (const base of layout.bases) {
          expect(enters(line, base.outline, 12 * inch)).toBe(false);
          for (const { at } of base.anchors)
            expect(distanceToSegment(at, { a: line.from, b: line.to })).toBeGreaterThan(8 * inch - 1e-3);
        }
        for (const pipe of job.floor.pipes) expect(enters(line, pipe.line, 0.5 * inch)).toBe(false);
        expect(line.reasons.length).toBeGreaterThan(0);
        expect(line.where).toMatch(
          d.units === "si" ? /^\d+ mm from the (left|back) wall/ : /from the (left|back) wall/,
        );
        for (const end of [line.from, line.to]) {
          const onEdge = distanceToBoundary(end, layout.outline!) < 1e-2;
          const onLine = plan.lines.some((l) => l !== line && distanceToSegment(end, { a: l.from, b: l.to }) < 1e-2);
          expect(onEdge || onLine).toBe(true);
        }
      }
      const limit = plan.spacing!.value * (plan.spacing!.unit === "ft" ? ft : 1);
      const named = (rule: string, rect: object) => plan.unmet.some((u) => u.rule === rule && u.panel === rect);
      for (const { rect, width, length, aspect } of plan.panels) {
        expect(Math.max(width, length) <= limit + 1e-2 || named("spacing", rect)).toBe(true);
        expect(aspect <= 1.5 + 1e-6 || named("aspect", rect)).toBe(true);
      }
      for (const { words } of plan.unmet) expect(words).toMatch(/\.$/);
      if (plan.unmet.length === 0) kept++;
      expect(JSON.stringify(plan)).not.toMatch(/NaN|undefined|Infinity/);
    }),
    { numRuns: 60 },
  );
  expect(kept).toBeGreaterThan(18);
}, 120_000);

describe("straighter lines", () => {
  const ring = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => ({ x: x * ft, y: y * ft }));
  const tasks: fc.Arbitrary<JointTask> = fc
    .record({
      w: int(12, 38),
      l: int(12, 50),
      spacing: int(8, 15),
      keep: fc.array(fc.tuple(int(0, 34), int(0, 40), int(1, 6), int(1, 6)), { maxLength: 6 }),
    })
    .map(({ w, l, spacing, keep }) => ({
      slab: ring([
        [0, 0],
        [w, 0],
        [w, l],
        [0, l],
      ]),
      spacing: spacing * ft,
      aspect: 1.5,
      keepOuts: keep.map(([x, y, a, b], i) => ({
        rect: { x0: x * ft, y0: y * ft, x1: (x + a) * ft, y1: (y + b) * ft },
        what: `thing ${i}`,
      })),
      anchors: [],
      columns: [],
      wanted: [],
      step: 3 * ft,
      stopCost: 1500,
    }));

  test(
    "never a rule more unmet, never a greater burden, and still a layout of the slab",
    () =>
      fc.assert(
        fc.property(tasks, (task) => {
          const plan = planJoints(task);
          if (isUnable(plan)) throw new Error(plan.reason);
          const straight = alignJoints(task, plan);
          expect(planBurden(task, straight)).toBeLessThanOrEqual(planBurden(task, plan) + 1e-6);
          expect(straight.unmet.length).toBeLessThanOrEqual(plan.unmet.length + 1);
          const area = straight.panels.reduce((sum, p) => sum + p.width * p.length, 0);
          const b = boxOf(task.slab);
          expect(area / ((b.x1 - b.x0) * (b.y1 - b.y0))).toBeCloseTo(1, 9);
        }),
        { numRuns: 150 },
      ),
    120_000,
  );

  test("a plain slab stays a plain grid", () => {
    const task: JointTask = {
      slab: ring([
        [0, 0],
        [24, 0],
        [24, 36],
        [0, 36],
      ]),
      spacing: 12.5 * ft,
      aspect: 1.5,
      keepOuts: [],
      anchors: [],
      columns: [],
      wanted: [],
      step: ft,
      stopCost: 1500,
    };
    const plan = planJoints(task);
    if (isUnable(plan)) throw new Error(plan.reason);
    const straight = alignJoints(task, plan);
    expect(straight.stops).toEqual([]);
    expect(straight.sawLength.value / ft).toBeCloseTo(36 + 24 + 24, 6);
  });
});

describe("what a person would expect", () => {
  const plain: Drawn = {
    width: 24,
    depth: 26,
    notch: 0,
    slab: 5,
    spacing: 126,
    at: [7, 11],
    pads: "pads",
    slope: 1,
    post: undefined,
    tube: undefined,
    units: "inch-pound",
  };

  test("two pads: one line runs midway between the columns and says why", () => {
    const plan = planOf(jobOf(plain));
    const middle = plan.lines.find((l) => Math.abs(l.from.x - (84 + 63) * inch) < 1 && Math.abs(l.to.x - l.from.x) < 1);
    expect(middle?.reasons.join(" ")).toContain("midway between the lift's columns");
    expect(plan.unmet).toEqual([]);
  });

  test("a strip refuses that line and says so", () => {
    const plan = planOf(jobOf({ ...plain, pads: "strip" }));
    expect(plan.notMade.map(({ what, reason }) => `${what}: ${reason}`)).toContain(
      "a line midway between the columns: Not cut: it would cross the strip.",
    );
    expect(plan.unmet.some(({ because }) => because === "the strip")).toBe(true);
  });

  test("a line drawn in the job through a pad, and one askew, are refused with the reason", () => {
    const job = jobOf(plain);
    const joint = (name: string, from: Point, to: Point) => ({
      name,
      kind: "saw-cut" as const,
      from,
      to,
      transfer: { known: false as const },
      state: "proposed" as const,
    });
    const asked: Job = {
      ...job,
      floor: {
        ...job.floor,
        joints: [
          joint("through the pad", { x: 84 * inch, y: 0 }, { x: 84 * inch, y: 26 * ft }),
          joint("slanting", { x: 0, y: 20 * ft }, { x: 24 * ft, y: 26 * ft }),
        ],
      },
    };
    const plan = planOf(asked);
    const said = plan.notMade.map(({ what, reason }) => `${what}: ${reason}`).join("\n");
    expect(said).toMatch(/through the pad, this part of it: Not cut: it would cross the left pad/);
    expect(said).toMatch(/slanting: Not cut: it runs askew/);
  });

  test("a standing floor keeps its joints; one beside an anchor is named", () => {
    const job = jobOf(plain);
    const standing: Job = {
      ...job,
      floor: {
        ...job.floor,
        state: "standing",
        joints: [
          {
            name: "old cut",
            kind: "saw-cut",
            from: { x: 0, y: 132 * inch + 12 * inch },
            to: { x: 24 * ft, y: 132 * inch + 12 * inch },
            transfer: { known: false },
            state: "standing",
          },
        ],
      },
    };
    const plan = planOf(standing);
    expect(plan.basis).toBe("as-it-is");
    expect(plan.lines.map(({ name, state }) => [name, state])).toEqual([["old cut", "there"]]);
    expect(plan.warnings[0]).toBe("old cut is 5 in from an anchor; the maker asks 8 in.");
    expect(plan.cutOuts.map(({ length }) => length.value)).toEqual([expect.closeTo(20, 9), expect.closeTo(20, 9)]);
  });

  test("no outline, no thickness, a slanting wall and a stop are answers, not crashes", () => {
    const job = jobOf(plain);
    const reasonOf = (changed: Job, stops: ReturnType<typeof assess>["stops"] = []) => {
      const plan = planJobJoints(changed, { ...assess(changed), stops });
      return isUnable(plan) ? plan.reason : "";
    };
    expect(reasonOf({ ...job, bay: { ...job.bay, outline: undefined } })).toContain("outline");
    expect(
      reasonOf({
        ...job,
        floor: { ...job.floor, thickness: { known: false } },
        lift: { ...job.lift, asks: { ...job.lift.asks, thickness: { known: false } } },
      }),
    ).toContain("thickness");
    const slanting = [
      { x: 0, y: 0 },
      { x: 24 * ft, y: 100 },
      { x: 24 * ft, y: 26 * ft },
      { x: 0, y: 26 * ft },
    ];
    expect(reasonOf({ ...job, bay: { ...job.bay, outline: slanting } })).toContain("do not run along the walls");
    const stop = { id: "x", outcome: "refuse" as const, reason: "Stamped.", next: "Ask." };
    expect(reasonOf(job, [stop])).toBe("Stamped. Ask.");
  });

  test("it stops when told to and tells how far it is", () => {
    const job = jobOf(plain);
    const told: number[] = [];
    planJobJoints(job, stopless(job), {}, { tell: (done) => told.push(done) });
    expect(told.length).toBeGreaterThan(3);
    expect(isUnable(planJobJoints(job, stopless(job), {}, { signal: { aborted: true } }))).toBe(true);
  });
});
