/** What must hold of the order of any pour. */

import { type Assessment, assess } from "@floorworthy/assess";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { clearWindow, type Order, orderFor, pourParts, windowDepth } from "@floorworthy/assess/order";
import { pointInPolygon } from "@floorworthy/engine/geometry";
import { fromBase, isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job, Zone } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assessmentOf, box, choice, inch, known, newPour, strip } from "../papers/fixtures.ts";

const YARD = 764554857.984;
const joints = planJobJoints(newPour, assessmentOf(newPour), { step: 914.4 });
if (isUnable(joints)) throw new Error(joints.reason);

/** With the joints of one job for all: they are not what is looked at here. */
const orderOf = (job: Job, assessment: Assessment = assessmentOf(job)): Order => {
  const order = orderFor(job, assessment, job.floor.state === "to-be-poured" ? { joints } : {});
  if (isUnable(order)) throw new Error(order.reason);
  return order;
};

const int = (min: number, max: number) => fc.integer({ min, max });
const outline = newPour.bay.outline!;

const zoneAt = (name: string, x: number, y: number, w: number, d: number, deep: number, slope = 0): Zone => ({
  ...newPour.floor.zones[0]!,
  name,
  outline: box(inch(x), inch(y), inch(x + w), inch(y + d)),
  thickness: known(inch(deep)),
  sideSlope: slope,
});

describe("volumes (plain geometry)", () => {
  const partsOf = (zones: readonly Zone[], state: "standing" | "to-be-poured" = "to-be-poured") =>
    pourParts({ ...newPour, floor: { ...newPour.floor, state, zones } }, outline);
  const net = (zones: readonly Zone[], state?: "standing" | "to-be-poured") =>
    partsOf(zones, state).reduce((sum, part) => sum + part.volume!, 0);

  test("two pads 5 × 5 ft × 12 in are 50 cu ft = 1.852 cu yd", () => {
    const zones = [zoneAt("a", 20, 20, 60, 60, 12), zoneAt("b", 150, 20, 60, 60, 12)];
    expect(net(zones, "standing") / YARD).toBeCloseTo(50 / 27, 9);
  });

  test("a strip 5 × 15 1/2 ft × 12 in is 2.87 cu yd", () =>
    expect(net([zoneAt("s", 20, 20, 186, 60, 12)], "standing") / YARD).toBeCloseTo(77.5 / 27, 9));

  test("sloped sides equal the sum of thin slices", () => {
    const [side, extra, n, slope] = [inch(60), inch(7), 4000, 1.5];
    let slices = 0;
    for (let i = 0; i < n; i++) slices += (side + 2 * slope * ((extra * (i + 0.5)) / n)) ** 2 * (extra / n);
    const whole = slices + side ** 2 * inch(5);
    expect(partsOf([zoneAt("a", 60, 60, 60, 60, 12, slope)])[0]!.volume! / whole).toBeCloseTo(1, 6);
  });

  test("whatever overlaps, upright sides: formula equals the depth summed over a fine grid", () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(int(0, 20), int(0, 20), int(1, 4), int(1, 4), int(6, 14)), { maxLength: 4 }),
        (raw) => {
          // whole feet, so that a grid of feet is exact
          const zones = raw.map(([x, y, w, d, deep], i) => zoneAt(`z${i}`, x * 12, y * 12, w * 12, d * 12, deep));
          let summed = 0;
          for (let x = 0; x < 24; x++)
            for (let y = 0; y < 26; y++) {
              const p = { x: inch(x * 12 + 6), y: inch(y * 12 + 6) };
              const here = zones.filter((z) => pointInPolygon(p, z.outline) === "inside");
              const deep = Math.max(0, ...here.map((z) => (z.thickness.known ? z.thickness.value : 0)));
              summed += (here.length > 0 ? deep : inch(5)) * inch(12) ** 2;
            }
          expect(net(zones) / summed).toBeCloseTo(1, 6);
        },
      ),
      { numRuns: 100 },
    ));

  test("an unknown thickness is said, not guessed", () => {
    const zones = [{ ...zoneAt("a", 60, 60, 60, 60, 12), thickness: { known: false } as const }];
    const job = { ...newPour, floor: { ...newPour.floor, zones } };
    const order = orderFor(job, assessmentOf(job));
    expect(isUnable(order) && order.reason).toContain("No volume for a");
  });
});

test("to order: no less than with waste, less than one step more; more waste never orders less", () =>
  fc.assert(
    fc.property(int(0, 30), fc.constantFrom("si" as const, "inch-pound" as const), (percent, units) => {
      const of = (waste: number) => orderOf({ ...strip, units, pour: { ...strip.pour!, waste: known(waste / 100) } });
      const order = of(percent);
      const step = units === "si" ? 0.1 : 0.25;
      expect(order.ordered.value).toBeGreaterThanOrEqual(order.withWaste.value - 1e-9);
      expect(order.ordered.value).toBeLessThan(order.withWaste.value + step);
      const steps = order.ordered.value / step;
      expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
      expect(order.withWaste.value / order.net.value).toBeCloseTo(1 + percent / 100, 9);
      expect(of(percent + 5).ordered.value).toBeGreaterThanOrEqual(order.ordered.value);
    }),
    { numRuns: 40 },
  ));

describe("steel", () => {
  const jobs = fc
    .tuple(int(60, 110), int(90, 160), int(4, 18), int(2, 11), fc.constantFrom("si" as const, "inch-pound" as const))
    .map(
      ([x, y, spacing, depth, units]): Job => ({
        ...newPour,
        units,
        position: { left: { x: inch(x), y: inch(y) }, right: { x: inch(x + 126), y: inch(y) } },
        floor: {
          ...newPour.floor,
          zones: [zoneAt("strip", x - 30, y - 30, 186, 60, 12)],
          bars: [{ size: "#4", spacing: known(inch(spacing)), depth: known(inch(depth)), direction: "both" }],
        },
      }),
    );

  test("no bar in a window within the drill's reach; none outside the concrete; every piece can be cut", () =>
    fc.assert(
      fc.property(jobs, (job) => {
        const assessment = assessmentOf(job);
        const order = orderOf(job, assessment);
        const reach = windowDepth(job)!;
        for (const { bars, direction, depth, bar } of order.mats) {
          const windows = depth! - bar.diameter / 2 < reach ? assessment.layout.bases : [];
          for (const { at, from, to, run } of bars) {
            for (const base of windows) {
              const w = clearWindow(base, job.units);
              const [low, high] = direction === "x" ? [w.y0, w.y1] : [w.x0, w.x1];
              expect(at <= low + 1e-6 || at >= high - 1e-6).toBe(true);
            }
            for (const along of [from, to]) {
              const end = direction === "x" ? { x: along, y: at } : { x: at, y: along };
              expect(pointInPolygon(end, outline)).toBe("inside");
            }
            expect(run.length - run.laps * bar.lap).toBeCloseTo(to - from, 6);
          }
        }
        const line = order.lines.find(({ id }) => id === "bars-4")!;
        const needed = order.mats.flatMap(({ bars }) => bars).reduce((sum, b) => sum + b.run.length, 0);
        const stock = job.units === "si" ? 6000 : 20 * 304.8;
        expect(line.buy.value * stock).toBeGreaterThanOrEqual(needed - 1e-3);
        // first fit, longest first, wastes less than half of what it buys
        expect(line.buy.value * stock).toBeLessThan(2 * needed + stock);
      }),
      { numRuns: 60 },
    ));

  test("bars below the drill's reach run on beneath the anchors", () => {
    const deep: Job = {
      ...newPour,
      floor: {
        ...newPour.floor,
        bars: [{ size: "#4", spacing: known(inch(12)), depth: known(inch(9)), direction: "both" }],
      },
    };
    expect(orderOf(deep).mats.map(({ windows }) => windows)).toEqual(Array(4).fill("below the drill"));
    const unknownHole = {
      ...deep,
      lift: {
        ...deep.lift,
        anchors: {
          ...deep.lift.anchors,
          product: { ...deep.lift.anchors.product, holeDepth: { known: false } as const },
        },
      },
    };
    expect(orderOf(unknownHole).mats.map(({ windows }) => windows)).toEqual(Array(4).fill("kept clear"));
  });

  test("a bar size nobody sells is said, and the old slab's bars are not bought again", () => {
    const odd: Job = {
      ...newPour,
      floor: {
        ...newPour.floor,
        bars: [{ size: "fence wire", spacing: known(inch(12)), depth: known(inch(9)), direction: "both" }],
      },
    };
    expect(orderOf(odd).warnings.join(" ")).toContain('"fence wire" is not one this order knows');
    const old: Job = {
      ...strip,
      floor: {
        ...strip.floor,
        bars: [{ size: "#4", spacing: known(450), depth: known(55), direction: "both" }],
      },
    };
    const order = orderOf(old);
    expect(order.mats.every(({ bar }) => bar.size === "12 mm")).toBe(true);
    expect(order.warnings.join(" ")).toContain("No bars are stated");
  });
});

describe("dowels", () => {
  test("too thin a slab gets none, and says so", () => {
    const thin: Job = { ...strip, floor: { ...strip.floor, thickness: known(80) } };
    const order = orderOf(thin);
    expect(order.lines.some(({ id }) => id === "dowels")).toBe(false);
    expect(order.warnings.join(" ")).toMatch(/counts .* mm: too thin for dowels/);
  });
});

describe("numbers", () => {
  const termsOf = (order: Order): readonly Term[] => [
    order.net,
    order.withWaste,
    order.ordered,
    order.loads,
    order.bags.net,
    order.bags.withWaste,
    ...(order.drag ? [order.drag] : []),
    ...order.lines.flatMap(({ takes, buy }) => [takes, buy]),
  ];
  test.each([
    ["new pour", newPour],
    ["cut-out", strip],
    ["mesh", { ...newPour, floor: { ...newPour.floor, bars: [], reinforcement: choice("mesh") } } as Job],
    ["fibre", { ...newPour, pour: { ...newPour.pour!, fibre: known(3) } } as Job],
  ])("%s: every number is one, nothing bought is less than what is taken, the total is the sum", (_, job) => {
    const order = orderOf(job);
    for (const term of termsOf(order)) expect(Number.isFinite(term.value)).toBe(true);
    for (const { takes, buy, cost } of order.lines) {
      if (takes.unit === buy.unit && takes.unit !== "") expect(buy.value).toBeGreaterThanOrEqual(takes.value - 1e-9);
      if (cost) expect(cost.amount).toBeGreaterThanOrEqual(0);
    }
    expect(order.total.amount).toBeCloseTo(
      order.lines.reduce((sum, { cost }) => sum + (cost?.amount ?? 0), 0),
      6,
    );
    expect(order.total.invented).toBe("some");
    expect(JSON.stringify(order)).not.toMatch(/NaN|null/);
  });

  test("a quote takes the place of the invented figure, and fees go with small loads", () => {
    const perYard = 1 / YARD;
    const quoted = { ...strip, prices: { ...strip.prices, concrete: known(200 * perYard), fullLoad: known(YARD) } };
    const line = orderOf(quoted).lines.find(({ id }) => id === "concrete")!;
    expect(line.cost!.basis).toBe("quoted");
    expect(line.cost!.amount).toBeCloseTo(200 * fromBase(2.5e9, "yd³"), 6);
    const small = orderOf({
      ...quoted,
      prices: { ...quoted.prices, fullLoad: known(9 * YARD), shortLoad: known(120) },
    });
    expect(small.lines.find(({ id }) => id === "concrete")!.cost!.amount - line.cost!.amount).toBeCloseTo(120, 6);
  });

  test("the mix asks no less than the maker, and says who asks", () => {
    const weak = { ...newPour, pour: { ...newPour.pour!, strength: known(2500 * 0.00689476) } };
    const order = orderOf({
      ...weak,
      floor: { ...weak.floor, strength: { ...weak.floor.strength, specified: { known: false } } },
    });
    const strength = order.mix.find(({ id }) => id === "strength")!;
    expect(strength.words).toBe("at least 3,000 psi");
    expect(strength.basis).toContain("the lift maker's page");
  });

  test("a demo's whole order is plain data, the same twice", () => {
    const order = orderOf(newPour, assess(newPour));
    expect(JSON.parse(JSON.stringify(order))).toEqual(JSON.parse(JSON.stringify(orderOf(newPour, assess(newPour)))));
  });
});
