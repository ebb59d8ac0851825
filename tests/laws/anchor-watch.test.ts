/** The anchor watch: one history worked by hand, error rates on made-up histories, and what it must never say. */
import {
  type AnchorWatch,
  controlLimit,
  totalMovement,
  usualWatchRules,
  type Visit,
  type WatchRules,
  watchAnchor,
} from "@floorworthy/engine/bolts";
import { createGenerator } from "@floorworthy/engine/numerics";
import { isUnable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Disturbance, inventHistory, type Kind } from "../../bench/histories/anchors.ts";

const degree = Math.PI / 180;
const inch = 25.4;
const rules = usualWatchRules(0.1 * inch);
const log = (days: readonly number[], degrees: readonly number[], rise?: number): Visit[] =>
  days.map((day, i) => ({
    day,
    nutTurn: degrees[i]! * degree,
    ...(rise !== undefined && i === days.length - 1 ? { rise } : {}),
  }));
const watch = (visits: readonly Visit[], by: WatchRules = rules): AnchorWatch => {
  const found = watchAnchor(visits, by);
  if (isUnable(found)) throw new Error(found.reason);
  return found;
};

describe("26 months, five visits, 3/4-10 thread", () => {
  const days = [30, 180, 365, 550, 790];
  const one = log(days, [15, 10, 90, 150, 190], 0.125 * inch);
  const two = log(days, [10, 10, 60, 110, 150]);
  const other = log(days, [20, 10, 5, 0, 0]);
  test("take-up by hand: 455/360 × 0.100 = 0.126 in, 0.094 in, 0.010 in", () => {
    expect(totalMovement(one, 2.54).takeUp / inch).toBeCloseTo(0.126, 3);
    expect(totalMovement(two, 2.54).takeUp / inch).toBeCloseTo(0.094, 3);
    expect(totalMovement(other, 2.54).takeUp / inch).toBeCloseTo(0.01, 3);
    expect(totalMovement(one.slice(2), 2.54).takeUp / inch).toBeCloseTo(0.119, 3);
  });
  test("the first two slip, and more each time; the others settle", () => {
    expect(watch(one)).toMatchObject({
      verdict: "slipping",
      reasons: ["grows", "take-up-over-limit", "rise-over-limit"],
    });
    expect(watch(two)).toMatchObject({ verdict: "slipping", reasons: ["grows", "take-up-over-limit"] });
    expect(watch(other)).toMatchObject({ verdict: "settling", reasons: ["dies-away"] });
  });
  test("the third visit of the first anchor was already over its control limit", () => {
    const limit = controlLimit(one.slice(0, 2), 365, rules)!;
    expect(90 * degree).toBeGreaterThan(limit.limit);
    expect(5 * degree).toBeLessThan(controlLimit(other.slice(0, 2), 365, rules)!.limit);
    expect(controlLimit([], 30, rules)).toBeUndefined();
  });
});

describe("error rates at five visits, 300 made-up histories each (all of them: bench/anchor-watch)", () => {
  const rates = (kind: Kind, disturbance: Disturbance) => {
    const next = createGenerator(77);
    const count = { settling: 0, undecided: 0, "beyond-limit": 0, slipping: 0, missed: 0 };
    for (let i = 0; i < 300; i++) {
      const history = inventHistory(kind, disturbance, 5, rules.pitch, next);
      const { verdict } = watch(history.visits);
      count[verdict]++;
      if (verdict === "settling" && history.moved > rules.limit) count.missed++;
    }
    return count;
  };
  test("relaxing anchors: at least 9 in 10 settling, at most 2 in 100 called slipping", () => {
    const count = rates("relaxing", "plain");
    expect(count.settling).toBeGreaterThanOrEqual(270);
    expect(count.slipping).toBeLessThanOrEqual(6);
  });
  test.each([
    ["slipping", "plain"],
    ["growing", "plain"],
    ["mixed", "plain"],
    ["slipping", "missing visits"],
    ["growing", "noisy"],
    ["mixed", "noisy"],
  ] as const)("%s, %s: at least 97 in 100 found, none called sound beyond the limit", (kind, disturbance) => {
    const count = rates(kind, disturbance);
    expect(count.slipping + count["beyond-limit"]).toBeGreaterThanOrEqual(291);
    expect(count.missed).toBe(0);
  });
});

const history = fc
  .array(
    fc.record(
      {
        wait: fc.integer({ min: 1, max: 400 }),
        nutTurn: fc.double({ min: 0, max: 4, noNaN: true }),
        rise: fc.double({ min: -0.5, max: 3, noNaN: true }),
        torqueFound: fc.double({ min: 0, max: 2e5, noNaN: true }),
      },
      { requiredKeys: ["wait"] },
    ),
    { maxLength: 8 },
  )
  .map((steps) => {
    let day = 0;
    return steps.map(({ wait, ...rest }): Visit => {
      day += wait;
      return { day, ...rest };
    });
  });

describe("what it must never say", () => {
  test("an anchor whose recorded take-up or rise exceeds the limit is never settling", () =>
    fc.assert(
      fc.property(history, (visits) => {
        const { verdict, movement } = watch(visits, { ...rules, settingTorque: 1.5e5 });
        if (movement.takeUp > rules.limit || visits.some((v) => (v.rise ?? 0) > rules.limit))
          expect(["slipping", "beyond-limit"]).toContain(verdict);
      }),
      { numRuns: 150 },
    ));
  test("fewer than two visits that were read are never a pattern", () => {
    expect(watch([]).verdict).toBe("undecided");
    expect(watch([{ day: 30, nutTurn: 0 }]).verdict).toBe("undecided");
    expect(watch([{ day: 30 }, { day: 60, torqueFound: 1e5 }]).verdict).toBe("undecided");
    expect(watch([{ day: 30, nutTurn: 6 }]).verdict).toBe("beyond-limit");
  });
  test("two visits are enough when they are plain", () => {
    expect(watch(log([30, 180], [15, 5])).verdict).toBe("settling");
    expect(watch(log([30, 180], [10, 120])).verdict).toBe("slipping");
  });
  test("the same turn at every equal check is not settling", () => {
    const found = watch(log([180, 360, 540, 720, 900], [20, 20, 20, 20, 20]));
    expect(found.verdict).not.toBe("settling");
  });
  test("a torque found below what relaxation leaves keeps the verdict open", () => {
    const visits = log([30, 180, 365], [15, 5, 0]).map((v, i) => (i === 2 ? { ...v, torqueFound: 2e4 } : v));
    expect(watch(visits, { ...rules, settingTorque: 1.5e5 })).toMatchObject({
      verdict: "undecided",
      reasons: ["torque-lower-than-relaxation-leaves"],
    });
  });
  test("out of order, repeated and turned back visits are refused", () => {
    for (const visits of [log([30, 20], [5, 5]), log([30, 30], [5, 5]), log([30, 60], [5, -5]), log([Number.NaN], [5])])
      expect(isUnable(watchAnchor(visits, rules))).toBe(true);
  });
  test("a later heavy turn never makes an anchor sounder", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 25 }), { minLength: 1, maxLength: 4 }), (degrees) => {
        const days = degrees.map((_, i) => 180 * (i + 1));
        const next = log([...days, 180 * (degrees.length + 1)], [...degrees, 220]);
        expect(watch(next).verdict).not.toBe("settling");
      }),
      { numRuns: 60 },
    ));
});
