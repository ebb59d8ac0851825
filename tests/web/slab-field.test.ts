import { readFileSync } from "node:fs";
import { assess, firstLook } from "@floorworthy/assess";
import { breakoutOutlines, momentByHeight, stressField } from "@floorworthy/assess/margin";
import { type Point, pointInPolygon } from "@floorworthy/engine/geometry";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const jobOf = (name: string): Job => {
  const reading = readJob(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.job;
};
const known = <T>(answer: T): Exclude<T, { readonly unable: true }> => {
  if (isUnable(answer)) throw new Error(JSON.stringify(answer));
  return answer as Exclude<T, { readonly unable: true }>;
};

describe("stress and pressure over the slab", () => {
  const job = jobOf("records-in-hand");
  const field = known(stressField(job, { across: 25 }));

  test("the peak is the one the first-crack check counts", () => {
    const check = assess(job).margin.checks.find(({ id }) => id === "slab-first-crack")!;
    const { value, unit } = check.demand;
    expect(field.peak.stress.value).toBeCloseTo(toBase(value, unit), 6);
    expect(field.allowed.stress).toBeCloseTo(toBase(check.capacity.value, check.capacity.unit), 6);
  });

  test("the grid holds the whole rectangle, and its highest value lies near the peak", () => {
    expect(field.stress).toHaveLength(field.nx * field.ny);
    expect(field.pressure).toHaveLength(field.nx * field.ny);
    const { rect, nx, ny, stress, peak } = field;
    const at = (i: number): Point => ({
      x: rect.x0 + ((rect.x1 - rect.x0) * (i % nx)) / (nx - 1),
      y: rect.y0 + ((rect.y1 - rect.y0) * Math.floor(i / nx)) / (ny - 1),
    });
    const best = stress.reduce<number>((b, v, i) => ((v ?? 0) > (stress[b] ?? 0) ? i : b), 0);
    const bases = assess(job).layout.bases;
    const near = (p: Point) => Math.min(...bases.map(({ centre }) => Math.hypot(centre.x - p.x, centre.y - p.y)));
    expect(near(at(best))).toBeLessThan(1200);
    expect(near(peak.stress.at)).toBeLessThan(1200);
  });

  test("ground pressure is never negative, and far off it is the slab's own weight", () => {
    for (const value of field.pressure) expect(value ?? 0).toBeGreaterThanOrEqual(0);
    const weight = 23.56e-6 * 25.4 * 4;
    expect(Math.max(...field.pressure.map((value) => value ?? 0))).toBeGreaterThan(weight);
  });

  test("under a stop nothing is computed", () => {
    expect(isUnable(stressField(jobOf("stamp-at-the-door")))).toBe(true);
    expect(isUnable(momentByHeight(jobOf("stamp-at-the-door")))).toBe(true);
  });
});

describe("bodies that break out", () => {
  const job = jobOf("saw-cut-in-the-way");

  test("reach 1.5 times the embedment at most, and hold their own anchor", () => {
    const places = new Map(assess(job).layout.bases.flatMap(({ anchors }) => anchors.map(({ id, at }) => [id, at])));
    const outlines = breakoutOutlines(job);
    expect(outlines).toHaveLength(2);
    for (const { reach, anchors } of outlines)
      for (const { id, outline } of anchors) {
        const at = places.get(id)!;
        expect(pointInPolygon(at, outline)).toBe("inside");
        for (const p of outline)
          expect(Math.max(Math.abs(p.x - at.x), Math.abs(p.y - at.y))).toBeLessThan(reach + 1e-6);
      }
  });

  test("end at the saw cut", () => {
    const cut = job.floor.joints.find(({ name }) => name === "cross saw cut")!;
    for (const { together } of breakoutOutlines(job))
      for (const p of together.flat()) expect(p.y).toBeGreaterThan(cut.from.y - 1e-3);
  });
});

describe("moment against carriage height", () => {
  test("of free-standing columns it does not change with height: the load's arm stays the same", () => {
    const job = jobOf("records-in-hand");
    const free = {
      ...job,
      lift: { ...job.lift, top: { known: true, value: "free-standing", basis: { kind: "stated" } } },
    } as Job;
    for (const { points } of known(momentByHeight(free)))
      for (const { moment } of points) expect(moment / points[0]!.moment).toBeCloseTo(1, 6);
  });

  test("of tied columns it falls as the carriage rises", () => {
    for (const { points } of known(momentByHeight(jobOf("new-heated-shop"))))
      expect(points.at(-1)!.moment).toBeLessThan(points[0]!.moment);
  });
});

describe("what is known at once", () => {
  test.each(["records-in-hand", "stamp-at-the-door", "nobody-has-measured", "new-heated-shop"])(
    "%s: page, stops and plan are those of the whole judgement",
    (name) => {
      const job = jobOf(name);
      const { page, stops, layout } = assess(job);
      expect(firstLook(job)).toEqual({ page, stops, layout });
    },
  );
});
