/** One vehicle on lifts that take it by its axles. Statics by hand: the end under an axle carries that axle. */
import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { judgeVehicle, plainVehicle, type VehicleAnswer } from "@floorworthy/assess/vehicle";
import { toBase } from "@floorworthy/engine/quantities";
import { type Job, type KnownQuantity, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const TODAY = "2026-11-29";
const jobOf = (name: string): Job => {
  const read = readJob(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
};
const posts = jobOf("four-posts-on-four-inches");
const rolling = jobOf("rolling-columns-by-a-joint");
const lb = (weight: number): KnownQuantity => {
  const value = toBase(weight, "lb");
  return { known: true, value, low: value, high: value, basis: { kind: "stated" }, written: `${weight} lb` };
};
const unknown = { known: false } as const;
const on = (job: Job, weight: number, front?: number, rear?: number): VehicleAnswer =>
  judgeVehicle(
    job,
    {
      ...plainVehicle("truck"),
      weight: lb(weight),
      frontAxle: front === undefined ? unknown : lb(front),
      rearAxle: rear === undefined ? unknown : lb(rear),
    },
    TODAY,
  );
const crack = ({ checks }: VehicleAnswer): number => checks.find(({ id }) => id.includes("first-crack"))?.ratio ?? 0;

describe("the floor under one vehicle", () => {
  test("half of the rated load on each axle is the lift's own margin at its rated load", () => {
    for (const [job, rated] of [
      [posts, 12_000],
      [rolling, 48_000],
    ] as const) {
      const own = assess(job).margin.checks.filter(({ weight }) => weight === "limit");
      const vehicle = on(job, rated, rated / 2, rated / 2);
      expect(vehicle.checks.length).toBe(own.length);
      for (const check of vehicle.checks)
        expect(check.ratio).toBeCloseTo(own.find(({ id }) => id === check.id)!.ratio, 6);
    }
  });

  test("the heavier axle decides, and more of it is never easier", () => {
    const ratios = [6000, 7000, 8000, 9000].map((rear) => crack(on(rolling, 12_000, 12_000 - rear, rear)));
    expect(ratios).toEqual(ratios.toSorted((a, b) => a - b));
    expect(ratios[0]).toBeLessThan(ratios[3]!);
    expect(crack(on(rolling, 12_000, 3000, 9000))).toBeCloseTo(crack(on(rolling, 18_000, 9000, 9000)), 6);
    // with the axles unknown three fifths stand on one; with one known the other is the rest
    expect(crack(on(rolling, 20_000))).toBeCloseTo(crack(on(rolling, 24_000, 12_000, 12_000)), 6);
    expect(crack(on(rolling, 20_000, 5000))).toBeCloseTo(crack(on(rolling, 30_000, 15_000, 15_000)), 6);
  });

  test("axles that come to less than the weight never make it lighter", () => {
    expect(crack(on(rolling, 46_000, 6000, 6000))).toBeCloseTo(crack(on(rolling, 46_000, 23_000, 23_000)), 6);
    expect(on(rolling, 46_000, 6000, 6000).answer).toBe("hold");
    expect(
      on(rolling, 20_000, 0, 0)
        .checks.map(({ ratio }) => ratio)
        .filter(Number.isNaN),
    ).toEqual([]);
    expect(on(rolling, 40_000, 4000, 12_000)).toMatchObject({ answer: "no", checks: [] });
  });

  test("columns on wheels: an axle over what its two columns are rated for is refused, whatever the whole weighs", () => {
    const heavy = on(rolling, 40_000, 12_000, 28_000);
    expect([heavy.answer, heavy.checks]).toEqual(["no", []]);
    expect(heavy.reasons[0]).toMatch(/One axle weighs 28,000 lb; the two columns under it/);
    expect(on(rolling, 30_000, 12_000, 18_000).answer).toBe("yes");
    // six columns with the same rated load: a third of it to each pair
    const supports = rolling.lift.supports.map((support, i) => ({ ...support, column: `column ${i % 6}` }));
    const six = { ...rolling, lift: { ...rolling.lift, supports } };
    expect(on(six, 30_000, 12_000, 18_000)).toMatchObject({ answer: "no", checks: [] });
    expect(on(six, 30_000, 14_000, 16_000).reasons[0]).not.toMatch(/One axle/);
  });

  test("no arms, no lifting points and no line of columns are spoken of", () => {
    for (const answer of [on(posts, 5000), on(rolling, 20_000)]) {
      expect([answer.arms, answer.place]).toEqual([[], []]);
      expect(answer.assumed.join()).not.toMatch(/line of the columns|lifting points|sills/);
      expect(answer.conditions.join()).not.toMatch(/\barm\b|line of the columns/);
    }
    expect(on(rolling, 20_000).reasons.join()).not.toMatch(/nuts/);
    expect(on(posts, 5000).answer).toBe("retorque-first");
  });
});
