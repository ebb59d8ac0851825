/** Laws of the day for drilling, over jobs: warmth, heat, cylinders, gaps, and never before either datum's day. */
import { type CureClock, cureClock, cureDays } from "@floorworthy/assess/cure";
import { pourDay } from "@floorworthy/assess/pour-day";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import { type CylinderTest, type Job, type KnownQuantity, type Pour, readJob } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const read = readJob(`floorworthy: 1
title: t
date: 2025-03-01
lift: { name: L, kind: two-post, asks: { strength: 3000 psi, days: 28 d } }
floor: { state: to-be-poured }
pour: { date: 2025-02-01, strength: 4000 psi, cement: I }
`);
if (!read.ok) throw new Error(JSON.stringify(read.issues));
const bare = read.job;

const known = (value: number, low = value, high = value): KnownQuantity => ({
  known: true,
  value,
  low,
  high,
  basis: { kind: "stated" },
  written: "",
});
const withPour = (pour: Partial<Pour>): Job => ({ ...bare, pour: { ...bare.pour!, ...pour } });
const clockOf = (job: Job, today = "2025-02-10"): CureClock => {
  const clock = cureClock(job, today);
  if (isUnable(clock)) throw new Error(clock.reason);
  return clock;
};
const cautious = (job: Job, today?: string): number => clockOf(job, today).strength.cautious!.day;

const means = fc.array(fc.double({ min: -6, max: 22, noNaN: true }), { minLength: 1, maxLength: 12 });
const spells = (list: readonly number[], add = 0): Pour["temperatures"] =>
  list.map((mean, i) => ({
    fromDay: i * 3,
    toDay: i === list.length - 1 ? undefined : (i + 1) * 3,
    mean: known(Math.min(22, mean + add)),
  }));
const warmth = fc.double({ min: 0, max: 8, noNaN: true });
const cylinder = (psi: number, ageDays: number, cured: CylinderTest["cured"] = "field"): CylinderTest => ({
  strength: known(toBase(psi, "psi")),
  ageDays,
  cured,
});

describe("the day for drilling", () => {
  test("warmer is never later", () =>
    fc.assert(
      fc.property(means, warmth, (list, add) => {
        expect(cautious(withPour({ temperatures: spells(list, add) }))).toBeLessThanOrEqual(
          cautious(withPour({ temperatures: spells(list) })),
        );
      }),
    ));
  test("more heat is never later, hotter or longer", () =>
    fc.assert(
      fc.property(
        means,
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 1, max: 20 }),
        warmth,
        (list, from, long, add) => {
          const of = (toDay: number, holds: number) =>
            cautious(
              withPour({
                temperatures: spells(list),
                covers: [{ what: "heater", fromDay: from, toDay, holds: known(holds) }],
              }),
            );
          expect(of(from + long, 10 + add)).toBeLessThanOrEqual(of(from + long, 10));
          expect(of(from + long + 5, 10)).toBeLessThanOrEqual(of(from + long, 10));
          expect(of(from + long, 10)).toBeLessThanOrEqual(cautious(withPour({ temperatures: spells(list) })));
        },
      ),
    ));
  test("never before either datum's day, nor Arrhenius', nor the maker's; the span holds all three", () =>
    fc.assert(
      fc.property(means, warmth, (list, range) => {
        const temperatures = spells(list).map((spell, i) => ({
          ...spell,
          mean: known(list[i]!, list[i]! - range, list[i]! + range),
        }));
        const { counts, strength, drilling, maker } = clockOf(withPour({ temperatures }));
        for (const { date } of counts) {
          expect(strength.cautious!.day).toBeGreaterThanOrEqual(date!.day);
          expect(strength.from!.day).toBeLessThanOrEqual(date!.day);
        }
        expect(drilling.earliest!.day).toBeGreaterThanOrEqual(maker!.day);
        expect(drilling.earliest!.day).toBe(Math.max(maker!.day, strength.cautious!.day));
      }),
    ));
  test("a stronger field-cured cylinder is never a later day; the curve goes through it", () =>
    fc.assert(
      fc.property(
        means,
        fc.double({ min: 200, max: 4500, noNaN: true }),
        fc.double({ min: 0, max: 1500, noNaN: true }),
        (list, psi, more) => {
          const of = (strength: number) =>
            clockOf(withPour({ temperatures: spells(list), cylinders: [cylinder(strength, 9)] }));
          const [weak, strong] = [of(psi), of(psi + more)];
          expect(strong.strength.cautious!.day).toBeLessThanOrEqual(weak.strength.cautious!.day);
          if (psi >= 3000) expect(weak.strength).toMatchObject({ state: "shown", cautious: { day: 9 } });
          else {
            expect(weak.strength.cautious!.day).toBeGreaterThanOrEqual(9);
            for (const { strengthToday, equivalentAge } of weak.counts)
              if (equivalentAge!.value > 0) expect(strengthToday!.value).toBeCloseTo(psi, 4);
          }
        },
      ),
    ));
  test("a cylinder on the predicted curve of the cautious count leaves its day alone", () => {
    const job = withPour({ temperatures: spells([5]) });
    const before = clockOf(job);
    const told = before.counts.find(({ count }) => count === "cautious")!;
    const after = clockOf(withPour({ temperatures: spells([5]), cylinders: [cylinder(told.strengthToday!.value, 9)] }));
    expect(after.counts.find(({ count }) => count === "cautious")!.day!.value).toBeCloseTo(told.day!.value, 6);
  });
  test("a cylinder above the prediction puts the slab further on, not the mix above its order: day 9 at 5 °C, 2,000 psi", () => {
    // by hand: half of 4,000 psi is 2/0.575 = 3.478 days of standard curing, 8.276 are needed, and 5/22.78 of a day counts
    const clock = clockOf(withPour({ temperatures: spells([5]), cylinders: [cylinder(2000, 9)] }));
    const day = 9 + (8.2759 - 3.4783) / (5 / 22.7778);
    expect(clock.counts.find(({ count }) => count === "cautious")!.day!.value).toBeCloseTo(day, 2);
  });
  test("no cylinder makes the mix more than was ordered; a weak standard-cured one makes it less", () => {
    const of = (...cylinders: CylinderTest[]) =>
      clockOf(withPour({ temperatures: spells([10]), cylinders }), "2025-03-20");
    expect(of(cylinder(6000, 28, "standard")).strength28.value).toBeCloseTo(4000, 6);
    expect(of(cylinder(6000, 28, "standard")).strength).toEqual(of().strength);
    expect(of(cylinder(3500, 28, "standard")).strength28.value).toBeCloseTo(3500, 6);
    expect(of(cylinder(3500, 28, "standard")).strength.cautious!.day).toBeGreaterThan(of().strength.cautious!.day);
    expect(of(cylinder(9000, 7, "standard")).strength.state).toBe("expected");
  });
  test("a cylinder older than the concrete is not counted", () => {
    const clock = clockOf(withPour({ temperatures: spells([10]), cylinders: [cylinder(5000, 60)] }));
    expect([clock.strength.state, clock.cylinders[0]!.says]).toEqual(["expected", "not-yet-broken"]);
  });
});

describe("the story", () => {
  const day = (n: number, low: number, high: number) => ({ on: undefined, day: n, low, high });
  test("a day's lowest and highest count before the spell; a colder day is never earlier", () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 15, noNaN: true }), { minLength: 1, maxLength: 15 }),
        warmth,
        (lows, colder) => {
          const of = (less: number) =>
            cautious(
              withPour({ temperatures: spells([12]), days: lows.map((low, i) => day(i, low - less, low + 6 - less)) }),
            );
          expect(of(colder)).toBeGreaterThanOrEqual(of(0));
        },
      ),
    ));
  test("a gap is counted at the colder of its ends, and the last week goes on", () => {
    const told = (days: readonly ReturnType<typeof day>[]) => clockOf(withPour({ days }), "2025-02-15");
    const gap = told([day(0, 15, 15), day(1, 15, 15), day(5, 6, 6)]);
    const whole = told([day(0, 15, 15), day(1, 15, 15), day(2, 6, 6), day(3, 6, 6), day(4, 6, 6), day(5, 6, 6)]);
    expect(gap.counts[0]!.equivalentAge!.value).toBeCloseTo(whole.counts[0]!.equivalentAge!.value, 9);
    const warming = told([day(0, 6, 6), day(4, 15, 15)]);
    const cold = told([...[0, 1, 2, 3].map((n) => day(n, 6, 6)), day(4, 15, 15)]);
    expect(warming.counts[0]!.equivalentAge!.value).toBeCloseTo(cold.counts[0]!.equivalentAge!.value, 9);
    expect(gap.notes.join(" ")).toMatch(/from day 2 to 5: the colder.*after day 6/);
    const flat = told(Array.from({ length: 14 }, (_, i) => day(i, 8, 8)));
    const short = told(Array.from({ length: 7 }, (_, i) => day(i, 8, 8)));
    expect(short.counts[0]!.equivalentAge!.value).toBeCloseTo(flat.counts[0]!.equivalentAge!.value, 9);
  });
  test("months: a pour in February goes on into March; without the day of the pour they are not counted", () => {
    const months: NonNullable<Pour["months"]> = [
      { month: "january", mean: known(0) },
      { month: "july", mean: known(24) },
    ];
    const clock = clockOf(withPour({ months }));
    expect(clock.told).toBe("told");
    const june = clockOf({ ...withPour({ months, date: "2025-06-01" }) }, "2025-06-05");
    expect(june.strength.cautious!.day).toBeLessThan(clock.strength.cautious!.day);
    expect(clockOf(withPour({ months, date: undefined })).told).toBe("not-told");
  });
  test("an unmeasured blanket is not counted, and said", () => {
    const covers: Pour["covers"] = [{ what: "blanket", fromDay: 0, toDay: 9, holds: { known: false } }];
    const clock = clockOf(withPour({ temperatures: spells([3]), covers }));
    expect(clock.strength).toEqual(clockOf(withPour({ temperatures: spells([3]) })).strength);
    expect(clock.notes.join()).toMatch(/blanket is not counted/);
  });
  test("a logger counts before what is typed", () => {
    const job = withPour({ temperatures: spells([3]) });
    const log = Array.from({ length: 60 }, (_, i) => ({ day: i / 2, temperature: 20 }));
    const clock = cureClock(job, "2025-02-10", { log });
    expect(!isUnable(clock) && clock.strength.cautious!.day).toBeLessThan(12);
  });
  test("nothing told: no day for the strength; frozen: never; frost early: said", () => {
    const silent = clockOf(bare);
    expect([silent.strength.state, silent.drilling.earliest!.day]).toEqual(["not-known", 28]);
    // 42.4, 18.9, 12.1 and 8.3 days at 40, 50, 60 and 73 °F by the datum of 0 °C, each on the whole day after
    expect(silent.heat.map(({ cautious: { day: n } }) => n)).toEqual([43, 19, 13, 9]);
    const frozen = clockOf(withPour({ temperatures: spells([-5]) }), "2025-01-25");
    expect([frozen.strength.state, frozen.sentence.startsWith("Do not drill on a date")]).toEqual(["never", true]);
    expect(frozen.warnings.join()).toMatch(/Frost on .* before 500 psi/);
    expect(JSON.stringify(frozen)).not.toMatch(/NaN/);
  });
  test("cement: quick is sooner than ordinary, slow is later", () => {
    const of = (value: "I" | "II" | "III" | "blended") =>
      cautious(withPour({ temperatures: spells([8]), cement: { known: true, value, basis: { kind: "stated" } } }));
    expect(of("III")).toBeLessThan(of("I"));
    expect(of("blended")).toBeGreaterThan(of("I"));
    expect(of("II")).toBeGreaterThan(of("I"));
  });
});

describe("a day planned for the pour that goes by without a word", () => {
  const planned = "2025-02-01";
  test("is a plan until then, and no pour afterwards: it is asked, no age is given, no calendar made", () => {
    expect(clockOf(bare, "2025-01-20").pour).toBe("planned");
    expect(clockOf(bare, planned).pour).toBe("poured");
    const clock = clockOf(bare, "2025-02-02");
    expect([clock.pour, clock.age]).toEqual(["gone-by", undefined]);
    expect(clock.sentence).toMatch(
      /^The day planned for the pour, 2025-02-01, has gone by and the job still says to be poured: .* If it was poured that day: /,
    );
    expect(cureDays(bare, clock, pourDay(bare))).toEqual([]);
    expect(cureDays(bare, clockOf(bare, planned), pourDay(bare)).length).toBeGreaterThan(0);
  });

  test("never reads as old concrete", () => {
    const late = cureClock(bare, "2026-11-29");
    expect(isUnable(late) && late.reason).toMatch(/planned for the pour, 2025-02-01, has gone by/);
    const there = cureClock({ ...bare, floor: { ...bare.floor, state: "standing" } }, "2026-11-29");
    expect(isUnable(there) && there.reason).toMatch(/days old. There is nothing to wait for/);
  });

  test.each<[string, Partial<Pour>]>([
    ["a cylinder", { cylinders: [cylinder(3000, 7)] }],
    ["a temperature of a day", { days: [{ on: undefined, day: 1, low: 8, high: 14 }] }],
    [
      "a truck",
      {
        tickets: [
          {
            load: "1",
            ticket: undefined,
            time: undefined,
            slump: { known: false },
            temperature: { known: false },
            water: undefined,
            cylinders: undefined,
            note: undefined,
          },
        ],
      },
    ],
  ])("%s shows that it was poured", (_, pour) => {
    expect(clockOf(withPour(pour), "2025-02-10")).toMatchObject({ pour: "poured", age: 9 });
  });
});
