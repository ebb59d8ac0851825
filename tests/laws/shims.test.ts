/** Shims bring a base level within half a step of stock; grout and lean follow from the same plane. Laws; no published source. */
import { shimPlan } from "@floorworthy/assess/shims";
import { toBase } from "@floorworthy/engine/quantities";
import { type BaseCorner, type Job, unknown } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jobOf, known } from "../installing/jobs.ts";

const plain = jobOf("records-in-hand");
const corners: readonly BaseCorner[] = ["back-left", "back-right", "front-left", "front-right"];

const levelled = (levels: readonly (number | undefined)[], units: Job["units"] = "inch-pound"): Job => ({
  ...plain,
  units,
  installation: {
    ...plain.installation!,
    levels: corners.map((corner, i) => ({
      base: "left" as const,
      corner,
      level: levels[i] === undefined ? unknown : known(levels[i]!),
    })),
  },
});

const left = (job: Job) => shimPlan(job).bases[0]!;
const mm = (term: { value: number; unit: Parameters<typeof toBase>[1] } | undefined) => toBase(term!.value, term!.unit);
const level = fc.double({ min: 0, max: 30, noNaN: true });

test("with its stack every corner comes within half a step of the highest corner, and no shim is negative", () =>
  fc.assert(
    fc.property(
      fc.array(level, { minLength: 4, maxLength: 4 }),
      fc.constantFrom("si" as const, "inch-pound" as const),
      (levels, units) => {
        const { corners: found } = left(levelled(levels, units));
        const step = units === "si" ? 1 : 25.4 / 16;
        const top = Math.max(...levels);
        found.forEach(({ stack, gap }, i) => {
          expect(Math.abs(levels[i]! + stack.height - top)).toBeLessThanOrEqual(step / 2 + 1e-9);
          expect(mm(gap)).toBeCloseTo(top - levels[i]!, 9);
          expect(stack.shims.reduce((sum, t) => sum + t, 0)).toBeCloseTo(stack.height, 9);
          expect(stack.shims.every((t) => t > 0)).toBe(true);
        });
      },
    ),
  ));

test("on a plane floor every anchor's own stack fills its gap within half a step: no plate bridges over air", () =>
  fc.assert(
    fc.property(
      fc.double({ min: -0.04, max: 0.04, noNaN: true }),
      fc.double({ min: -0.04, max: 0.04, noNaN: true }),
      (sx, sy) => {
        const [w, d] = [19 * 25.4, 18 * 25.4];
        const z = (x: number, y: number) => sx * x + sy * y;
        const job = levelled([z(0, 0), z(w, 0), z(0, d), z(w, d)]);
        const base = left(job);
        const top = Math.max(z(0, 0), z(w, 0), z(0, d), z(w, d));
        const corner = { x: 104 * 25.4 - w / 2, y: 240 * 25.4 - d / 2 };
        for (const { at, stack, gap } of base.anchors) {
          const there = top - z(at.x - corner.x, at.y - corner.y);
          expect(mm(gap)).toBeCloseTo(there, 6);
          expect(Math.abs(stack.height - there)).toBeLessThanOrEqual(25.4 / 32 + 1e-6);
        }
        // a rigid column on a plane base leans as the plane: slope × height of the beam
        expect(mm(base.headBefore)).toBeCloseTo(Math.hypot(sx, sy) * 145 * 25.4, 4);
        expect(mm(base.headAfter)).toBeLessThanOrEqual(((2 * 25.4) / 16 / d) * 145 * 25.4);
      },
    ),
  ));

test("grout by hand: a 19 × 18 in plate over a floor that falls 3/4 in: 342 × 3/8 in³ and a tenth over", () => {
  const base = left(levelled([19.05, 19.05, 0, 0]));
  expect(base.bedding).toBe("grout");
  expect(mm(base.grout) / 25.4 ** 3).toBeCloseTo(19 * 18 * 0.375 * 1.1, 6);
});

describe("words", () => {
  test.each([
    [[0, 0, 0, 0], "as-it-stands"],
    [[12.7, 12.7, 0, 0], "shims"],
    [[14.3, 14.3, 0, 0], "grout"],
    [[60, 60, 0, 0], "put-the-floor-right"],
  ])("%j: %s", (levels, bedding) => expect(left(levelled(levels)).bedding).toBe(bedding));

  test("where the maker says nothing, stacks over 1/2 in are grouted (common practice, no source)", () => {
    const silent = (drop: number): Job => {
      const job = levelled([drop, drop, 0, 0]);
      return { ...job, lift: { ...job.lift, anchors: { ...job.lift.anchors, shimLimit: unknown } } };
    };
    expect([12.7, 14.3].map((drop) => left(silent(drop)).bedding)).toEqual(["shims", "grout"]);
  });
  test("a corner nobody measured is named, and its base has no plan", () =>
    fc.assert(
      fc.property(fc.array(fc.option(level, { nil: undefined }), { minLength: 4, maxLength: 4 }), (levels) => {
        const base = left(levelled(levels));
        const missing = corners.filter((_, i) => levels[i] === undefined);
        expect(base.missing).toEqual(missing);
        expect(base.bedding === "not-measured").toBe(missing.length > 0);
        expect(JSON.stringify(base)).not.toMatch(/NaN|null/);
      }),
    ));
});
