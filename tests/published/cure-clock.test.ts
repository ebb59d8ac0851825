/**
 * The clock and pour day of a job against printed values: the engine's formulas are checked in strength-with-age and
 * pour-weather; here it is checked that a job's words reach them.
 *
 * Sources
 * - ACI 209R-92, Table 2.2.1: constants read in a public material library; ratios 0.46, 0.70, 0.88 (type I, moist; 3, 7,
 *   14 d) and 0.59, 0.80, 0.92 (type III, moist; 3, 7, 14 d) from memory, half the last digit and the 0.005 of rounding.
 * - EN 1992-1-1:2004, 3.1.2, class S: 7/28 days 0.68 (from memory), half the last digit.
 * - Nurse-Saul at a standard cylinder's temperature: a day is a day, ASTM C1074 by its definition.
 * - ACI 305R chart example (from memory): 87/80 °F, 50 %, 12 mph: 0.25 lb/ft²/h within a tenth (chart reading).
 * - UFGS 03 30 00 and FHWA-HRT-05-038, ch. 5 (read): act from 0.2 lb/ft²/h (1 kg/m²/h), care from 0.1 (0.5).
 * - ACI 305R-99, Table 2.1 (from memory): 95/85 °F and 70 %, 80/70 °F and 40 % reach 0.2 lb/ft²/h at 10 mph.
 * - UFGS 03 30 53 (read): curing 7 days type I, 14 type II; ACI 318-19 26.5.3 (from memory): 3 days type III.
 * - Concrete Construction (read): wet saw in 4 to 12 h at ordinary temperatures, later in the cold.
 */
import { type CureClock, cureClock } from "@floorworthy/assess/cure";
import { pourDay } from "@floorworthy/assess/pour-day";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import { type Job, type Quantity, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const near = (value: number, printed: number, half: number): void =>
  expect(Math.abs(value - printed), `${value} against ${printed}`).toBeLessThanOrEqual(half * 1.0001);

const jobOf = (pour: string, units = ""): Job => {
  const read = readJob(`floorworthy: 1
title: t
${units}
lift: { name: L, kind: two-post, asks: { strength: 3000 psi, days: 28 d } }
floor: { state: to-be-poured, thickness: 6 in }
pour: { date: 2025-06-01, strength: 4000 psi, temperatures: [{ fromDay: 0 d, mean: 73 °F }]${pour} }
`);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join());
  return read.job;
};
const clockOf = (job: Job, day: number): CureClock => {
  const clock = cureClock(job, new Date(Date.UTC(2025, 5, 1 + day)).toISOString().slice(0, 10));
  if (isUnable(clock)) throw new Error(clock.reason);
  return clock;
};

describe("strength gain at 73 °F, all three counts alike", () => {
  test.each([
    ["I", 3, 0.46, 0.0055],
    ["I", 7, 0.7, 0.0055],
    ["I", 14, 0.88, 0.0055],
    ["III", 3, 0.59, 0.0055],
    ["III", 7, 0.8, 0.0055],
    ["III", 14, 0.92, 0.0055],
    ["II", 7, 0.68, 0.005],
    ["blended", 7, 0.68, 0.005],
  ] as const)("cement %s, %i days: %f of 4,000 psi", (cement, day, ratio, half) => {
    const { counts } = clockOf(jobOf(`, cement: ${cement}`), day);
    expect(counts).toHaveLength(3);
    for (const { strengthToday, equivalentAge } of counts) {
      near(equivalentAge!.value, day, 1e-9);
      near(strengthToday!.value / 4000, ratio, half);
    }
  });
  test("three quarters of type I: 8.28 days of standard curing by 4 r/(1 - 0.85 r)", () =>
    near(clockOf(jobOf(", cement: I"), 1).gain.needed!.value, 8.28, 0.005));
});

const stated = (value: number, unit: "°F" | "mph" | "%"): Quantity => {
  const base = toBase(value, unit);
  return { known: true, value: base, low: base, high: base, basis: { kind: "stated" }, written: "" };
};
const weather = (concrete: number, air: number, humidity: number, wind: number) => ({
  concrete: stated(concrete, "°F"),
  air: stated(air, "°F"),
  humidity: stated(humidity, "%"),
  wind: stated(wind, "mph"),
});

describe("evaporation", () => {
  const job = jobOf("");
  test("chart example: 0.25 lb/ft²/h by every formula within a tenth; the largest counts", () => {
    const { evaporation } = pourDay(job, weather(87, 80, 50, 12));
    expect(evaporation!.methods).toHaveLength(3);
    for (const { value, unit } of evaporation!.methods) {
      expect(unit).toBe("lb/ft²/h");
      near(value, 0.25, 0.025);
    }
    expect(evaporation!.rate.value).toBe(Math.max(...evaporation!.methods.map(({ value }) => value)));
    expect(evaporation!.drying).toBe("act");
  });
  test("thresholds 0.2 and 0.1 lb/ft²/h; 1.0 and 0.5 kg/m²/h", () => {
    const { act, care } = pourDay(job, weather(87, 80, 50, 12)).evaporation!;
    near(act.value, 0.2, 0.005);
    near(care.value, 0.1, 0.005);
    const si = pourDay({ ...job, units: "si" }, weather(87, 80, 50, 12)).evaporation!;
    expect([si.act.value, si.care.value, si.act.unit]).toEqual([1, 0.5, "kg/m²/h"]);
  });
  test("the printed critical pairs, 10 mph: five percent drier acts, the uncertainty of 40 % is told", () => {
    for (const [concrete, air, humidity] of [
      [95, 85, 70],
      [80, 70, 40],
    ] as const) {
      const { drying, rate, low, high } = pourDay(job, weather(concrete, air, humidity - 5, 10)).evaporation!;
      expect(drying).toBe("act");
      near(low.value / rate.value, 0.6, 1e-9);
      near(high.value / rate.value, 1.4, 1e-9);
    }
  });
  test("a cool damp day is slow; one part not known and nothing is judged", () => {
    expect(pourDay(job, weather(60, 60, 90, 2)).evaporation!.drying).toBe("slow");
    const { wind: _, ...rest } = weather(60, 60, 90, 2);
    expect(pourDay(job, rest)).toMatchObject({ evaporation: undefined, missing: ["wind just above the slab"] });
  });
});

describe("limits, windows, curing", () => {
  test.each([
    ["I", 7],
    ["II", 14],
    ["III", 3],
  ] as const)("type %s: %i days", (cement, days) => {
    const { curing } = pourDay(jobOf(`, cement: ${cement}`));
    expect([curing.days.value, curing.coversOff.day]).toEqual([days, days]);
  });
  test("4 to 12 h at 73 °F; later when cold, and the colder of air and concrete ends the window", () => {
    const at = (concrete: number, air: number) => pourDay(jobOf(""), weather(concrete, air, 50, 5)).windows.sawWet;
    expect(at(73, 73).words).toBe("4 to 12 h");
    expect(at(60, 45).from.value).toBeGreaterThan(4);
    expect(at(60, 45).to.value).toBeGreaterThan(at(60, 60).to.value);
    expect(at(95, 90).to.value).toBeLessThan(12);
  });
  test("hot and cold limits broken, kept and not known", () => {
    const states = (given: Parameters<typeof pourDay>[1]) =>
      pourDay(jobOf(""), given).limits.map(({ id, state }) => `${id} ${state}`);
    expect(states(weather(98, 96, 20, 5))).toEqual([
      "hottest broken",
      "hot-care broken",
      "coolest kept",
      "cold-weather kept",
    ]);
    expect(states(weather(50, 35, 20, 5))).toEqual([
      "hottest kept",
      "hot-care kept",
      "coolest broken",
      "cold-weather broken",
    ]);
    expect(states({})[0]).toBe("hottest not-known");
  });
  test("colder than 50 °F covers stay until the strength is there", () => {
    const cold = jobOf(", cement: I").pour!;
    const job: Job = {
      ...jobOf(", cement: I"),
      pour: { ...cold, temperatures: [{ ...cold.temperatures[0]!, mean: stated(42, "°F") }] },
    };
    const { coversOff, why } = pourDay(job).curing;
    expect([coversOff.day, why]).toEqual([34, "colder than 50 °F: covers stay until the strength is there"]);
  });
});
