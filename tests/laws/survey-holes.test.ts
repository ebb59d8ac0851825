/**
 * Where the drill test puts its holes. The distances are common practice, no source: 24 in from slab edges (12 in where the
 * bay leaves no other place), 6 in from joints, cracks and other holes, the written distance from pipes, two hole depths
 * (and 1.5 hef: ACI 318-19 17.6.2.1.1) from anchors to come, four holes at each base and one between them.
 */
import type { Assessment } from "@floorworthy/assess";
import { planSurvey, type SurveyHole, type SurveyPlan } from "@floorworthy/assess/survey";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assessmentOf, inch, known, standing } from "../papers/fixtures.ts";
import { surveyBays } from "../survey-bays.ts";

type P = { readonly x: number; readonly y: number };

/** The fixtures place unturned lifts; turned here as the assessment does it. */
const placed = (job: Job): Assessment => {
  const assessment = assessmentOf(job);
  if (!job.position) return assessment;
  const { left, right } = job.position;
  const turn = Math.atan2(right.y - left.y, right.x - left.x);
  const turned = (p: P, c: P): P => ({
    x: c.x + (p.x - c.x) * Math.cos(turn) - (p.y - c.y) * Math.sin(turn),
    y: c.y + (p.x - c.x) * Math.sin(turn) + (p.y - c.y) * Math.cos(turn),
  });
  return {
    ...assessment,
    layout: {
      ...assessment.layout,
      bases: assessment.layout.bases.map((base) => ({
        ...base,
        outline: base.outline.map((p) => turned(p, base.centre)),
        anchors: base.anchors.map(({ id, at }) => ({ id, at: turned(at, base.centre) })),
      })),
    },
  };
};

/** The distance along a straight line has one least value: halve in on it by thirds. Nothing of the planner is in it. */
const toLine = (p: P, a: P, b: P): number => {
  const at = (t: number): number => Math.hypot(p.x - a.x - t * (b.x - a.x), p.y - a.y - t * (b.y - a.y));
  let [low, high] = [0, 1];
  for (let i = 0; i < 80; i++) {
    const third = (high - low) / 3;
    if (at(low + third) < at(high - third)) high -= third;
    else low += third;
  }
  return Math.min(at(low), at(0), at(1));
};

const ring = (polygon: readonly P[]): readonly (readonly [P, P])[] =>
  polygon.map((a, i) => [a, polygon[(i + 1) % polygon.length]!] as const);

const toBoundary = (p: P, polygon: readonly P[]): number => Math.min(...ring(polygon).map(([a, b]) => toLine(p, a, b)));

const within = (p: P, polygon: readonly P[]): boolean => {
  const winding = ring(polygon).reduce(
    (sum, [a, b]) =>
      sum +
      Math.atan2(
        (a.x - p.x) * (b.y - p.y) - (a.y - p.y) * (b.x - p.x),
        (a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y),
      ),
    0,
  );
  return Math.abs(winding) > 3;
};

const planOf = (job: Job): { plan: SurveyPlan; assessment: Assessment } => {
  const assessment = placed(job);
  const plan = planSurvey(job, assessment);
  if (isUnable(plan)) throw new Error(plan.reason);
  return { plan, assessment };
};

const HAIR = 0.01;

const lawful = (job: Job, assessment: Assessment, hole: SurveyHole, others: readonly SurveyHole[]): void => {
  const { at } = hole;
  const outline = job.bay.outline!;
  expect(within(at, outline)).toBe(true);
  const nearEdge = hole.reason.includes("no place farther from the edge");
  expect(toBoundary(at, outline)).toBeGreaterThanOrEqual(inch(nearEdge ? 12 : 24) - HAIR);
  const atLeast = (distance: number, asked: number) => expect(distance).toBeGreaterThanOrEqual(asked - HAIR);
  for (const { from, to } of job.floor.joints) atLeast(toLine(at, from, to), inch(6));
  for (const { line } of job.floor.cracks)
    for (const [i, b] of line.slice(1).entries()) atLeast(toLine(at, line[i]!, b), inch(6));
  for (const { line, clear } of job.floor.pipes)
    for (const [i, b] of line.slice(1).entries()) atLeast(toLine(at, line[i]!, b), clear.known ? clear.value : 0);
  for (const { outline: thing } of job.bay.obstacles) {
    expect(within(at, thing)).toBe(false);
    atLeast(toBoundary(at, thing), inch(6));
  }
  for (const { outline: zone } of job.floor.zones) {
    expect(within(at, zone)).toBe(false);
    atLeast(toBoundary(at, zone), inch(12));
  }
  const { effectiveEmbedment: hef, holeDepth, nominalEmbedment } = job.lift.anchors.product;
  const depth = holeDepth.known ? holeDepth.value : nominalEmbedment.known ? nominalEmbedment.value : 0;
  for (const base of assessment.layout.bases) {
    for (const anchor of base.anchors) {
      atLeast(Math.hypot(at.x - anchor.at.x, at.y - anchor.at.y), 2 * depth);
      if (hef.known) atLeast(Math.hypot(at.x - anchor.at.x, at.y - anchor.at.y), 1.5 * hef.value);
    }
    if (base.outline.length > 2) {
      expect(within(at, base.outline)).toBe(false);
      atLeast(toBoundary(at, base.outline), inch(1));
    }
  }
  for (const { at: old } of job.floor.readings) if (old) atLeast(Math.hypot(at.x - old.x, at.y - old.y), inch(6));
  for (const other of others) if (other !== hole) atLeast(Math.hypot(at.x - other.at.x, at.y - other.at.y), inch(6));
  for (const { asked, found } of hole.keeps) expect(found.value).toBeGreaterThanOrEqual(asked.value - 1e-9);
};

describe("on any bay", () => {
  test("every hole keeps every distance; each place has a hole, an answer or a reason", () => {
    let planned = 0;
    fc.assert(
      fc.property(surveyBays, (job) => {
        const { plan, assessment } = planOf(job);
        for (const hole of plan.holes) lawful(job, assessment, hole, plan.holes);
        planned += plan.holes.length;
        const all = [...plan.holes, ...plan.answered, ...plan.dropped];
        expect(all.length).toBe(9);
        for (const { side } of assessment.layout.bases)
          expect(all.filter(({ where }) => where.startsWith(`${side} base`)).length).toBe(4);
        for (const { why } of plan.dropped) expect(why.length).toBeGreaterThan(20);
        for (const { reason } of plan.holes) expect(reason.length).toBeGreaterThan(20);
        expect(plan.holes.map(({ number }) => number)).toEqual(plan.holes.map((_, i) => i + 1));
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(planned).toBeGreaterThan(100);
  });

  test("under any stop no place is named, whatever the stop", () => {
    fc.assert(
      fc.property(
        surveyBays,
        fc.string({ minLength: 1, maxLength: 12 }),
        fc.constantFrom("refuse", "refer", "hold", "out-of-service"),
        (job, id, outcome) => {
          const stop = { id, outcome, reason: "Something was met.", next: "Ask." } as const;
          const plan = planSurvey(job, { ...placed(job), stops: [stop] });
          if (isUnable(plan)) throw new Error("a stop is an answer, not a failure");
          expect(plan.drilling).toBe("forbidden");
          expect(plan.holes).toEqual([]);
          expect(plan.instead.join(" ")).toContain("Ask.");
        },
      ),
      { numRuns: 40, endOnFailure: true },
    );
  });
});

const bare: Job = { ...standing, floor: { ...standing.floor, readings: [], cracks: [], joints: [], pipes: [] } };
const clearOfLines: Job = {
  ...bare,
  floor: { ...bare.floor, utilities: known0("none"), heat: known0("none") },
};
function known0<T extends string>(value: T) {
  return { known: true, value, basis: { kind: "measured" } } as const;
}

describe("one bay", () => {
  test("nothing in the way: four holes at each base and one between them", () => {
    const { plan } = planOf(clearOfLines);
    expect(plan.holes.map(({ where }) => where.split(",")[0])).toEqual([
      ...Array.from({ length: 4 }, () => "left base"),
      ...Array.from({ length: 4 }, () => "right base"),
      "mid-bay",
    ]);
  });

  test("a hole never speaks for the panel beyond a joint", () => {
    const y = standing.position!.left.y - inch(14);
    const from = { x: 0, y };
    const to = { x: inch(288), y };
    const joint = { name: "cut", kind: "saw-cut", from, to, transfer: { known: false }, state: "standing" } as const;
    const { plan } = planOf({ ...clearOfLines, floor: { ...clearOfLines.floor, joints: [joint] } });
    expect(plan.holes.length).toBe(9);
    for (const { at } of plan.holes) expect(at.y).toBeGreaterThanOrEqual(y + inch(6) - HAIR);
  });

  test("located, but in no line of the file: no hole", () => {
    const located = (key: "heat" | "utilities"): Job => ({
      ...clearOfLines,
      floor: { ...clearOfLines.floor, [key]: known0("located") },
    });
    for (const key of ["heat", "utilities"] as const) {
      const { plan } = planOf(located(key));
      expect(plan.drilling).toBe("forbidden");
      expect(plan.instead.join(" ")).toContain("floor.pipes");
    }
  });

  test("what is not ruled out is looked at before the first hole; so is what was only said", () => {
    const open = { known: false } as const;
    const { floor } = clearOfLines;
    const { plan } = planOf({
      ...clearOfLines,
      floor: { ...floor, postTension: open, heat: open, utilities: open, below: open, kind: open },
    });
    expect(plan.first.map(({ what }) => what).join(" ")).toMatch(/tendons.*heating.*room.*pipe/);
    expect(plan.sentence).toContain("Look first");
    expect(planOf(clearOfLines).plan.first.map(({ what }) => what)).toEqual(["Said but not shown: no tendons"]);
  });

  test("the mark: most that is asked, the method's error and an inch below, to the next quarter inch", () => {
    const { mark } = planOf(clearOfLines).plan;
    if (isUnable(mark)) throw new Error(mark.reason);
    expect(mark).toMatchObject({ value: 5.5, unit: "in" });
    expect(mark.from?.reduce((sum, { value }) => sum + value, 0)).toBe(5.5);
    const { lift } = clearOfLines;
    const product = { ...lift.anchors.product, minimumThickness: known(inch(5.1)) };
    const thicker = planOf({ ...clearOfLines, lift: { ...lift, anchors: { ...lift.anchors, product } } }).plan.mark;
    expect(thicker).toMatchObject({ value: 6.5, unit: "in" });
    const silent = planOf({ ...clearOfLines, lift: { ...lift, asks: { ...lift.asks, thickness: { known: false } } } });
    expect(isUnable(silent.plan.mark)).toBe(true);
  });

  test("readings answer: through, or still in concrete beyond what is asked; an edge, a drop and a drawing do not", () => {
    const reading = standing.floor.readings[0]!;
    const withOne = (more: object) =>
      planOf({ ...clearOfLines, floor: { ...clearOfLines.floor, readings: [{ ...reading, ...more }] } }).plan.answered;
    expect(withOne({}).length).toBe(1);
    expect(withOne({ end: "still-concrete", thickness: known(inch(4.25)) }).length).toBe(1);
    expect(withOne({ end: "still-concrete", thickness: known(inch(4)) }).length).toBe(0);
    expect(withOne({ end: "dropped" }).length).toBe(0);
    expect(withOne({ place: "thickened-edge" }).length).toBe(0);
    expect(withOne({ near: "edge" }).length).toBe(0);
    expect(withOne({ method: "drawing" }).length).toBe(0);
    expect(withOne({ thickness: { known: false } }).length).toBe(0);
  });

  test("no place for the lift yet: a grid; and without a bay, what to fill in", () => {
    const { plan } = planOf({ ...clearOfLines, position: undefined });
    expect(plan.by).toBe("grid");
    expect(plan.holes.length).toBe(9);
    const lost = { ...clearOfLines, position: undefined, bay: { ...clearOfLines.bay, outline: undefined } };
    const unable = planSurvey(lost, assessmentOf(lost));
    expect(isUnable(unable) && unable.reason).toContain("columns.left");
  });

  test("a floor still to be poured has nothing to drill", () => {
    const { plan } = planOf({ ...clearOfLines, floor: { ...clearOfLines.floor, state: "to-be-poured" } });
    expect(plan.drilling).toBe("nothing-to-drill");
    expect(plan.holes).toEqual([]);
  });
});
