import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { contractorSheet, drawingToSvg, padSection, planDrawing } from "@floorworthy/papers";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assessmentOf, box, choice, known, newPour } from "./fixtures.ts";
import { dimensionsOf, groundOf, overlaps, readFigure, strays } from "./reading-back.ts";

type P = { readonly x: number; readonly y: number };

const mirrored = (job: Job): Job => {
  const width = Math.max(...job.bay.outline!.map((p) => p.x));
  const m = (p: P): P => ({ x: width - p.x, y: p.y });
  const line = <T extends { from: P; to: P }>(l: T): T => ({ ...l, from: m(l.from), to: m(l.to) });
  const { floor, bay, position } = job;
  return {
    ...job,
    position: position && { left: m(position.right), right: m(position.left) },
    floor: {
      ...floor,
      zones: floor.zones.map((z) => ({ ...z, outline: z.outline.map(m) })),
      joints: floor.joints.map(line),
      cracks: floor.cracks.map((c) => ({ ...c, line: c.line.map(m) })),
      pipes: floor.pipes.map((p) => ({ ...p, line: p.line.map(m) })),
    },
    bay: {
      ...bay,
      outline: bay.outline!.map(m),
      walls: bay.walls.map(line),
      doors: bay.doors.map(line),
      obstacles: bay.obstacles.map((o) => ({ ...o, outline: o.outline.map(m) })),
    },
  };
};

const shown = [
  "slab",
  "walls",
  "doors",
  "joints",
  "joints-to-cut",
  "pads-to-pour",
  "bases",
  "anchors",
  "pipes",
  "keep-clear",
  "windows",
  "centres",
];

/** All points of the plan's geometry, sorted, by what they show. */
const pointsOf = (job: Job, map: (p: P) => P): readonly string[] =>
  groundOf(planDrawing(job, assessmentOf(job)))
    .items.flatMap((item) => {
      if (!shown.includes(item.tag) || item.kind === "text") return [];
      const points =
        "points" in item
          ? item.points
          : "from" in item
            ? [item.from, item.to]
            : "centre" in item
              ? [item.centre]
              : [item.at];
      return points.map((p) => {
        const { x, y } = map(p);
        return `${item.tag} ${Math.round(x * 100) / 100 + 0} ${Math.round(y * 100) / 100 + 0}`;
      });
    })
    .sort();

test("the drawing of a mirrored job is the mirrored drawing", () => {
  const width = newPour.bay.outline![1]!.x;
  expect(pointsOf(mirrored(newPour), (p) => p)).toEqual(pointsOf(newPour, (p) => ({ x: width - p.x, y: p.y })));
});

/** Evenly spread: doubles of fast-check crowd around zero. */
const length = (low: number, high: number) =>
  fc.integer({ min: 0, max: 100_000 }).map((n) => low + ((high - low) * n) / 100_000);

const jobs = fc
  .record({
    width: length(2500, 25000),
    depth: length(2500, 40000),
    u: length(0, 1),
    v: length(0, 1),
    spacing: length(1500, 4500),
    half: length(300, 1500),
    thickness: fc.option(length(50, 600), { nil: undefined }),
    slope: fc.constantFrom(0, 1, 1.5, 2),
    units: fc.constantFrom("si" as const, "inch-pound" as const),
    state: fc.constantFrom("standing" as const, "to-be-poured" as const),
    joints: fc.array(fc.tuple(length(0, 1), length(0, 1), length(0, 1), length(0, 1)), { maxLength: 5 }),
    crack: fc.array(fc.tuple(length(0, 1), length(0, 1)), { maxLength: 6 }),
    placed: fc.constantFrom("yes", "no"),
    outlined: fc.constantFrom("yes", "no"),
  })
  .map((r): Job => {
    const put = (a: number, b: number) => ({ x: a * r.width, y: b * r.depth });
    const left = put(r.u, r.v);
    const right = { x: left.x + r.spacing, y: left.y };
    const t = r.thickness === undefined ? newPour.floor.slope : known(r.thickness);
    const pad = (c: P, name: string) => ({
      ...newPour.floor.zones[0]!,
      name,
      outline: box(c.x - r.half, c.y - r.half, c.x + r.half, c.y + r.half),
      thickness: t,
      sideSlope: r.slope,
      tied: choice("cast-with" as const),
    });
    return {
      ...newPour,
      units: r.units,
      position: r.placed === "yes" ? { left, right } : undefined,
      bay: {
        ...newPour.bay,
        outline: r.outlined === "yes" ? box(0, 0, r.width, r.depth) : undefined,
        walls: [{ name: "back", from: put(0, 0), to: put(1, 0) }],
        doors: [{ name: "door", from: put(0.2, 1), to: put(0.8, 1), height: known(2400) }],
        obstacles: [],
      },
      floor: {
        ...newPour.floor,
        state: r.state,
        thickness: t,
        zones: r.placed === "yes" ? [pad(left, "Left pad"), pad(right, "Right pad")] : [],
        pipes: [],
        joints: r.joints.map(([a, b, c, d], i) => ({
          ...newPour.floor.joints[0]!,
          name: `J${i}`,
          from: put(a, b),
          to: put(c, d),
        })),
        cracks: [
          {
            name: "",
            line: r.crack.map(([a, b]) => put(a, b)),
            width: known(0.3),
            step: newPour.floor.slope,
            seen: [],
          },
        ],
      },
    };
  });

describe("for any job", () => {
  test("no NaN in any path and nothing off the paper, no words over words, every figure true; a sheet or a reason", () => {
    fc.assert(
      fc.property(jobs, (job) => {
        const assessment = assessmentOf(job);
        for (const drawing of [planDrawing(job, assessment), padSection(job, assessment)]) {
          expect(drawingToSvg(drawing)).not.toMatch(/NaN|Infinity|undefined/);
        }
        const ground = planDrawing(job, assessment).items.find((item) => item.kind === "ground");
        for (const { axis, from, to, words } of ground ? dimensionsOf(ground) : []) {
          if (axis === "aligned") continue;
          const off = Math.abs(readFigure(words) - Math.abs(to[axis] - from[axis]));
          expect(off).toBeLessThanOrEqual(job.units === "si" ? 0.5 + 1e-9 : 25.4 / 32 + 1e-9);
        }
        const sheet = contractorSheet(job, assessment, { date: "2026-05-05", paper: "letter" });
        if (isUnable(sheet)) {
          expect(sheet.reason.length).toBeGreaterThan(10);
          return;
        }
        expect(sheet).toHaveLength(1);
        expect(drawingToSvg(sheet[0]!)).not.toMatch(/NaN|Infinity|undefined/);
        expect(strays(sheet[0]!)).toEqual([]);
        expect(overlaps(sheet[0]!)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
