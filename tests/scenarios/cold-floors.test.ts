/**
 * Two cold floors worked by hand, with the simplifications of the trade (common practice, no published source; method
 * ASTM C1074 with ACI 209R-92). Invented cases. Figures within a few percent, days to the day.
 */
import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { type CureClock, cureClock } from "@floorworthy/assess/cure";
import { equivalentAgeBand, heated } from "@floorworthy/engine/concrete";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const jobOf = (text: string): Job => {
  const read = readJob(text, { name: "case", load });
  if (!read.ok) throw new Error(read.issues.map(({ path, message }) => `${path} ${message}`).join("\n"));
  return read.job;
};
const clockOf = (job: Job, today = job.date!): CureClock => {
  const clock = cureClock(job, today);
  if (isUnable(clock)) throw new Error(clock.reason);
  return clock;
};

const nineDays = (more = ""): Job =>
  jobOf(
    `${load("09-nine-cold-days.yaml")}pour: { date: 2026-02-03, strength: 4000 psi, cement: I, temperatures: [{ fromDay: 0 d, mean: 42 °F }]${more} }\n`,
  );
const count = ({ counts }: CureClock, name: string) => counts.find((c) => c.count === name)!;
const near = (value: number, printed: number, share: number): void =>
  expect(Math.abs(value / printed - 1), `${value} against ${printed}`).toBeLessThanOrEqual(share);

describe("nine cold days: two pads at 42 °F, cast 3 February, 4,000 psi ordered, 3,000 psi and 28 days asked", () => {
  const clock = clockOf(nineDays());
  test("equivalent age 2.2 to 4.2 d, 37 to 56 %, 1,490 to 2,230 psi on the ninth day", () => {
    near(count(clock, "cautious").equivalentAge!.value, 2.2, 0.02);
    near(count(clock, "usual").equivalentAge!.value, 4.2, 0.02);
    near(count(clock, "cautious").strengthToday!.value, 1490, 0.01);
    near(count(clock, "usual").strengthToday!.value, 2230, 0.01);
    near(count(clock, "cautious").strengthToday!.value / 4000, 0.37, 0.02);
    near(count(clock, "usual").strengthToday!.value / 4000, 0.56, 0.01);
  });
  test("3,000 psi between day 18 and day 34; the maker's 28 days end on 3 March", () => {
    expect([count(clock, "usual").date!.day, count(clock, "cautious").date!.day]).toEqual([18, 34]);
    expect(clock.maker).toEqual({ day: 28, date: "2026-03-03" });
    expect(clock.strength.cautious).toEqual({ day: 34, date: "2026-03-09" });
  });
  test("a heater to 60 °F from day 9 on: day 14 to 18", () => {
    const warmed = clockOf(nineDays(", covers: [{ what: heater, fromDay: 9 d, holds: 60 °F }]"));
    expect([Math.floor(count(warmed, "usual").day!.value), count(warmed, "cautious").date!.day]).toEqual([14, 18]);
    expect(warmed.drilling).toMatchObject({ governs: "maker", earliest: { day: 28, date: "2026-03-03" } });
  });
  test("wait, with the maker's date and the cautious one; nothing drilled, nothing snugged", () => {
    const answer = assess(nineDays());
    expect(answer.outcome).toBe("wait");
    expect(answer.sentence).toMatch(
      /^Wait\. Drill not before 2026-03-09 .*not before 2026-03-03 \(day 28\), the maker's 28 days/,
    );
    expect(answer.conditions[0]).toMatch(/just snugged.*lay out and mark, unload/);
    expect(answer.conditions.join(" ")).toMatch(/blankets back or heat today/);
  });
  test("a field-cured cylinder at the ask: from the maker's day on", () => {
    const shown = clockOf(nineDays(", cylinders: [{ strength: 3050 psi, ageDays: 27 d, cured: field }]"), "2026-03-02");
    expect(shown.drilling).toMatchObject({ governs: "maker", earliest: { date: "2026-03-03" } });
    expect(shown.strength).toMatchObject({ state: "shown", cautious: { day: 27 } });
  });
  test("after 28 days in the cold the page still waits: the strength is not there by the cautious count", () => {
    const late = { ...nineDays(), date: "2026-03-04" };
    expect(assess(late).outcome).toBe("wait");
    expect(assess(late).sentence).toMatch(/2026-03-09/);
    expect(assess({ ...late, date: "2026-03-09" }).outcome).not.toBe("wait");
    const shown = nineDays(", cylinders: [{ strength: 3100 psi, ageDays: 28 d, cured: field }]");
    expect(assess({ ...shown, date: "2026-03-04" }).outcome).not.toBe("wait");
  });
});

describe("a shop in November: 55 °F for 7 days, then 38 °F", () => {
  const shop = (more = ""): Job =>
    jobOf(
      load("05-new-heated-shop.yaml").replace(
        "pour: { strength: 4000 psi }",
        `pour: { date: 2026-11-15, strength: 4000 psi, cement: I, temperatures: [{ fromDay: 0 d, toDay: 7 d, mean: 55 °F }, { fromDay: 7 d, mean: 38 °F }]${more} }`,
      ),
    );
  test("3.9 to 4.8 days' worth after the tent, 8.3 needed, 30 and 9 days more, cautious about day 37", () => {
    const atSeven = clockOf(shop(), "2026-11-22");
    near(count(atSeven, "cautious").equivalentAge!.value, 3.9, 0.02);
    near(count(atSeven, "usual").equivalentAge!.value, 4.8, 0.02);
    near(atSeven.gain.needed!.value, 8.3, 0.01);
    // 29.7 and 8.4 days: the hand figures are rounded up to whole days
    expect(Math.ceil(count(atSeven, "cautious").day!.value - 7)).toBe(30);
    expect(Math.ceil(count(atSeven, "usual").day!.value - 7)).toBe(9);
    expect(atSeven.strength.cautious?.day).toBe(37);
    expect(atSeven.drilling.governs).toBe("strength");
  });
  test("55 °F kept to day 15 and the strength never governs", () => {
    const kept = clockOf(shop(", covers: [{ what: heater, fromDay: 7 d, toDay: 15 d, holds: 55 °F }]"));
    expect(kept.drilling).toMatchObject({ governs: "maker", earliest: { day: 28, date: "2026-12-13" } });
    expect(kept.strength.cautious!.day).toBeLessThanOrEqual(15);
    // the least that will do is a little less than the hand figure, which keeps it until all of the strength is there
    const least = clockOf(shop()).heatEnough.find(({ holds }) => Math.abs(holds - toBase(55, "°F")) < 1e-9)!;
    expect(least.until.day).toBeLessThanOrEqual(15);
    expect(least.until.day).toBeGreaterThan(7);
  });
  test("pour with the sheet, as before", () => expect(assess(shop()).outcome).toBe("pour"));
  test("heat by the engine's own story is heat by the job's", () => {
    const base = [{ until: Number.POSITIVE_INFINITY, temperature: toBase(42, "°F") }];
    const worth = equivalentAgeBand(heated(base, 9, 20, toBase(60, "°F")), 20).cautious;
    const job = nineDays(", covers: [{ what: heater, fromDay: 9 d, toDay: 20 d, holds: 60 °F }]");
    expect(count(clockOf(job, "2026-02-23"), "cautious").equivalentAge!.value).toBeCloseTo(worth, 9);
  });
});
