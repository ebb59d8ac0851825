import { concreteQuantities, printVolume } from "@floorworthy/papers";
import { describe, expect, test } from "vitest";
import { assessmentOf, box, inch, known, newPour, strip } from "./fixtures.ts";

const YARD = 764554857.984;
const quantities = (job: typeof newPour) => concreteQuantities(job, assessmentOf(job));
const onlyPads = (slope: number): typeof newPour => ({
  ...newPour,
  floor: { ...newPour.floor, state: "standing", zones: newPour.floor.zones.map((z) => ({ ...z, sideSlope: slope })) },
});

describe("volumes (plain geometry)", () => {
  test("two pads 5 × 5 ft × 12 in are 50 cu ft = 1.852 cu yd; 7 % more is 1.98", () => {
    const { net, gross } = quantities(onlyPads(0));
    expect(net! / YARD).toBeCloseTo(50 / 27, 9);
    expect(gross! / YARD).toBeCloseTo((50 / 27) * 1.07, 9);
    expect(printVolume(net!, "inch-pound")).toBe("1.85 cu yd");
  });

  test("a strip 5 × 15 1/2 ft × 12 in is 2.87 cu yd", () => {
    const zones = [{ ...strip.floor.zones[0]!, outline: box(0, 0, inch(186), inch(60)), thickness: known(inch(12)) }];
    const { net } = quantities({ ...strip, floor: { ...strip.floor, zones } });
    expect(net! / YARD).toBeCloseTo(77.5 / 27, 9);
  });

  test("sloped sides equal the sum of thin slices", () => {
    const slope = 1.5;
    const [side, extra, t] = [inch(60), inch(7), inch(12)];
    const n = 4000;
    let slices = 0;
    for (let i = 0; i < n; i++) slices += (side + 2 * slope * ((extra * (i + 0.5)) / n)) ** 2 * (extra / n);
    const whole = slices + side ** 2 * (t - extra);
    expect(quantities(onlyPads(slope)).parts[0]!.volume! / whole).toBeCloseTo(1, 6);
  });

  test("the new slab is counted once: around the pads, not through them", () => {
    const { parts } = quantities(newPour);
    const slab = parts.find((p) => p.name === "slab")!;
    expect(slab.area).toBeCloseTo(inch(288) * inch(312) - 2 * inch(60) ** 2, 3);
    expect(slab.volume).toBeCloseTo(slab.area * inch(5), 3);
  });

  test("an unknown thickness gives no total", () => {
    const zones = newPour.floor.zones.map((z) => ({ ...z, thickness: { known: false } as const }));
    expect(quantities({ ...newPour, floor: { ...newPour.floor, zones } }).net).toBeUndefined();
  });
});
