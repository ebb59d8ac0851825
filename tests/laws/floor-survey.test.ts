/** Laws of the survey as a job writes it: the bound holds as often as it claims, the lowest rules, order does not matter. */
import { type ThicknessStudy, thicknessStudy } from "@floorworthy/assess/facts";
import { createGenerator, normalQuantile } from "@floorworthy/engine/numerics";
import type { Job, ThicknessReading } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answerFor, floorJob, pageLine } from "../scenarios/standing-floor.ts";

const blank = floorJob({ readings: "" });
const exactly = (mm: number) => ({
  known: true as const,
  value: mm,
  low: mm,
  high: mm,
  written: `${mm} mm`,
  basis: { kind: "measured" as const },
});
const reading = (
  mm: number,
  end: ThicknessReading["end"] = "through",
  near: "left" | "right" = "left",
): ThicknessReading => ({
  at: undefined,
  near,
  thickness: exactly(mm),
  method: "drill",
  end,
  under: { known: false },
  place: "slab",
  note: undefined,
});
const withReadings = (readings: readonly ThicknessReading[]): Job => ({
  ...blank,
  units: "si",
  lift: { ...blank.lift, asks: { ...blank.lift.asks, thickness: { known: false } } },
  floor: { ...blank.floor, readings },
});
const left = (study: ThicknessStudy) => study.groups.find(({ name }) => name === "left base")!;

describe("the lower bound under a base, 2,000 surveys", () => {
  const [MEAN, SPREAD] = [150, 5];
  const truth = MEAN - normalQuantile(0.9) * SPREAD;
  const claimedTooMuch = (count: number, mark: number): number => {
    const next = createGenerator(count);
    let tooMuch = 0;
    for (let i = 0; i < 2000; i++) {
      const readings = Array.from({ length: count }, () => {
        const mm = MEAN + SPREAD * normalQuantile((Math.floor(next() * 2 ** 32) + 0.5) / 2 ** 32);
        return mm > mark ? reading(mark, "still-concrete") : reading(mm);
      });
      const { bound } = left(thicknessStudy(withReadings(readings)));
      if (bound && bound.value > truth) tooMuch++;
    }
    return tooMuch / 2000;
  };
  // With open readings it is cautious; with none it is the exact tolerance bound, so two standard errors are allowed.
  test.each([
    ["four holes, every one through", 4, 1000, 0.25 + 2 * Math.sqrt((0.75 * 0.25) / 2000)],
    ["four holes, the bit marked at half a spread over the mean", 4, 152.5, 0.25],
  ] as const)("%s: too much is claimed in a quarter of them at most", (_, count, mark, allowed) =>
    expect(claimedTooMuch(count, mark)).toBeLessThanOrEqual(allowed),
  );
});

describe("readings", () => {
  const depths = fc.array(fc.integer({ min: 120, max: 200 }), { minLength: 1, maxLength: 8 });
  test("the order of the readings does not matter; no mean is above the highest nor below the lowest", () =>
    fc.assert(
      fc.property(depths, (mm) => {
        const one = left(thicknessStudy(withReadings(mm.map((t) => reading(t)))));
        const two = left(thicknessStudy(withReadings(mm.toReversed().map((t) => reading(t)))));
        expect(two.bound?.value).toEqual(one.bound === undefined ? undefined : expect.closeTo(one.bound.value, 6));
        const mean = one.terms.find(({ symbol }) => symbol === "t̄");
        if (mean) {
          expect(mean.value).toBeGreaterThanOrEqual(Math.min(...mm) - 1e-6);
          expect(mean.value).toBeLessThanOrEqual(Math.max(...mm) + 1e-6);
        }
        if (one.levels) expect(one.terms).toEqual([]);
      }),
      { numRuns: 60 },
    ));
  test("a further reading never raises what counts", () =>
    fc.assert(
      fc.property(
        depths,
        fc.integer({ min: 60, max: 300 }),
        fc.constantFrom("through", "still-concrete", "dropped"),
        (mm, more, end) => {
          const yaml = (rows: readonly string[]): string => rows.map((r) => `\n    - {${r}}`).join("");
          const rows = mm.map((t) => `near: left, thickness: ${t} mm`);
          const counted = (lines: readonly string[]): number => {
            const line = pageLine(
              answerFor({ readings: yaml([...lines, "near: right, thickness: 400 mm"]) }),
              "thickness",
            );
            return line.demand?.value ?? 0;
          };
          expect(counted([...rows, `near: left, thickness: ${more} mm, end: ${end}`])).toBeLessThanOrEqual(
            counted(rows) + 1e-9,
          );
        },
      ),
      { numRuns: 25 },
    ));
});

test("the posts of a four-post lift each take the readings of their half, and those beside them", () => {
  const { position, lift } = blank;
  const post = (id: string, x: number, y: number) => ({
    id,
    at: { x, y },
    outline: undefined,
    share: { known: false } as const,
    P: { known: false } as const,
    Mx: { known: false } as const,
    My: { known: false } as const,
  });
  const supports = [post("LF", -1500, -2000), post("LR", -1500, 2000), post("RF", 1500, -2000), post("RR", 1500, 2000)];
  const origin = { x: (position!.left.x + position!.right.x) / 2, y: position!.left.y };
  const placed = { ...reading(130), near: undefined, at: { x: origin.x + 1400, y: origin.y + 1900 } };
  const job = withReadings([reading(150), reading(152), placed]);
  const study = thicknessStudy({ ...job, lift: { ...lift, kind: "four-post", supports } });
  // posts that rest on the same readings are said once
  expect(study.groups.map(({ name, count }) => [name, count])).toEqual([
    ["LF base, LR base", 2],
    ["RR base", 1],
    ["slab", 3],
  ]);
});
