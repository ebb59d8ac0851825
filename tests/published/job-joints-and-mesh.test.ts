/**
 * The same published tables, reached through a job: joint spacing of C. Beall, Masonry and Concrete for Residential
 * Construction, Fig. 2-15 (PCA rule: 24 times the thickness for slumps over 4 in as far as 5, 30 for stone of 3/4 in and
 * more, 36 for slump under 4 in); cap of 15 ft, NRMCA CIP 6; cut of a quarter, CIP 6; sheets of Concrete Construction,
 * "New numbering system explained" (6×6 W2.9: 0.058 in²/ft, 42 lb per 100 ft²); bars of ASTM A615 (#4: 0.668 lb/ft); drag
 * formula by hand; 45 bags of 80 lb and 60 of 60 lb to the yard (trade pages).
 */

import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { orderFor } from "@floorworthy/assess/order";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { assessmentOf, box, choice, inch, known, newPour } from "../papers/fixtures.ts";

const jobWith = (slab: number, slump?: number): Job => ({
  ...newPour,
  floor: { ...newPour.floor, thickness: known(inch(slab)), joints: [] },
  pour: { ...newPour.pour!, slump: slump === undefined ? { known: false } : known(inch(slump)) },
});
const planOf = (job: Job) => {
  const plan = planJobJoints(job, assessmentOf(job), { step: 914.4 });
  if (isUnable(plan)) throw new Error(plan.reason);
  return plan;
};
const orderOf = (job: Job) => {
  const order = orderFor(job, assessmentOf(job));
  if (isUnable(order)) throw new Error(order.reason);
  return order;
};

describe("Beall Fig. 2-15, printed to the foot", () => {
  test.each([
    [4, 4, 10],
    [5, 4, 13],
    [6, 4, 15],
    [4, 3, 12],
    [5, 3, 15],
    [4, 5.5, 8],
    [5, 5.5, 10],
    [6, 5.5, 12],
  ])("%s in, slump %s in: %s ft", (slab, slump, printed) =>
    expect(Math.abs(planOf(jobWith(slab, slump)).spacing!.value - printed)).toBeLessThanOrEqual(0.5001),
  );
  test("the cap of 15 ft holds a 6-in slab of low slump", () =>
    expect(planOf(jobWith(6, 3)).spacing!.value).toBeCloseTo(15, 9));
  test("cut: 1 in in 4 in, 1 1/2 in in 6 in", () => {
    expect(planOf(jobWith(4)).depth!.value).toBeCloseTo(1, 9);
    expect(planOf(jobWith(6)).depth!.value).toBeCloseTo(1.5, 9);
  });
});

describe("mesh and bars", () => {
  const meshed: Job = { ...newPour, floor: { ...newPour.floor, bars: [], reinforcement: choice("mesh") } };
  const mesh = () => orderOf(meshed).lines.find(({ id }) => id === "mesh")!;
  test("the lightest sheet holds a small floor together: 6×6 W2.9, 0.058 in² per ft", () => {
    expect(mesh().what).toBe("Welded wire mesh 6×6 W2.9");
    expect(mesh().note).toContain("0.058 in² per ft");
  });
  test("its weight is the table's 42 lb per 100 sq ft, within the 1 lb the table rounds", () => {
    const sheets = mesh().buy.value;
    const pounds = Number(/, ([\d,]+) lb/.exec(mesh().note)![1]!.replace(",", ""));
    expect(Math.abs((pounds / (sheets * 8 * 15)) * 100 - 42)).toBeLessThanOrEqual(1);
  });
  test("sheets 8 × 15 ft lapped 8 in over 24 × 26 ft: 2 × 4, the long way front to back", () =>
    expect(mesh().buy.value).toBe(8));
  test("drag steel, F L w / 2 fs by hand: 1.5 × 12.5 ft × 60.4 psf / 80,000", () => {
    const order = orderOf(meshed);
    const longest =
      Math.max(...planOf(jobWith(5, 4)).panels.map(({ width, length }) => Math.max(width, length))) / 304.8;
    expect(order.drag!.value).toBeCloseTo((1.5 * longest * (145 * 5)) / 12 / 80_000, 3);
  });
  test("#4 bars weigh 0.668 lb a foot", () => {
    const line = orderOf(newPour).lines.find(({ id }) => id === "bars-4")!;
    const pounds = Number(/([\d,]+) lb\./.exec(line.note)![1]!.replace(",", ""));
    expect(Math.abs(pounds - line.buy.value * 20 * 0.668)).toBeLessThanOrEqual(0.5);
  });
});

describe("bags", () => {
  const cube: Job = {
    ...newPour,
    floor: {
      ...newPour.floor,
      state: "standing",
      zones: [
        {
          ...newPour.floor.zones[0]!,
          outline: box(1000, 1000, 1000 + inch(36), 1000 + inch(36)),
          thickness: known(inch(36)),
          sideSlope: 0,
        },
      ],
    },
  };
  test.each([
    [80, 45],
    [60, 60],
    [40, 90],
  ])("a cubic yard takes %s-lb bags: %s", (pounds, bags) =>
    expect(
      orderOf({ ...cube, prices: { ...cube.prices, bagWeight: known(toBase(pounds, "lb")) } }).bags.net.value,
    ).toBe(bags),
  );
});
