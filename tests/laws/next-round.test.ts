/** When the next round of the nuts falls due. The maker's rule first; otherwise common practice, no source. */
import { heaviestBefore, roundsAhead, upkeepOf } from "@floorworthy/assess/upkeep";
import { plainVehicle } from "@floorworthy/assess/vehicle";
import type { Job, Vehicle } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { bareJob, dayAfterSetting, known, withRounds } from "./upkeep-lifts.ts";

const degree = Math.PI / 180;
const next = (job: Job, today: string) => upkeepOf(job, today).next!;
const settled = (job: Job): Job =>
  withRounds(
    job,
    [30, 180, 365],
    ["L", "R"].flatMap((side) =>
      [1, 2, 3, 4, 5].map((n) => ({ anchor: `${side}${n}`, turns: [15 * degree, 5 * degree, 0] })),
    ),
  );
const truck = (weight: number, since?: string): Vehicle => ({
  ...plainVehicle("truck"),
  weight: known(weight),
  ...(since === undefined ? {} : { since }),
});
const anchors = (job: Job, rules: Partial<Job["lift"]["anchors"]>): Job => ({
  ...job,
  lift: { ...job.lift, anchors: { ...job.lift.anchors, ...rules } },
});

describe("the next round", () => {
  test("a month after setting where the maker is silent; the maker's own days where he is not", () => {
    expect(next(bareJob(), "2020-01-10")).toMatchObject({
      date: "2020-01-31",
      standing: "ahead",
      reason: { id: "first-month" },
    });
    expect(next(anchors(bareJob(), { firstRound: known(7) }), "2020-01-10")).toMatchObject({
      date: "2020-01-08",
      standing: "overdue",
      reason: { id: "maker-first", basis: "the maker's page" },
    });
  });
  test("a year after the last round, with two years named as the longest in use; or the maker's time", () => {
    const job = settled(bareJob());
    expect(upkeepOf(job, "2021-01-05").answer).toBe("sound");
    expect(next(job, "2021-01-05")).toMatchObject({ date: "2021-12-31", reason: { id: "yearly" } });
    expect(next(job, "2021-01-05").reason.words).toContain("2022-12-31");
    expect(next(anchors(job, { roundEvery: known(90) }), "2021-01-05")).toMatchObject({
      date: "2021-03-31",
      reason: { id: "maker-every" },
    });
  });
  test("the day before a heavier vehicle; a lighter one asks for nothing", () => {
    const heavier = { ...settled(bareJob()), vehicles: [truck(20_000), truck(30_000, "2021-06-10")] };
    expect(next(heavier, "2021-01-05")).toMatchObject({ date: "2021-06-09", reason: { id: "heavier-vehicle" } });
    const lighter = { ...heavier, vehicles: [truck(20_000), truck(19_000, "2021-06-10")] };
    expect(next(lighter, "2021-01-05").reason.id).toBe("yearly");
    expect(heaviestBefore(heavier, "2021-06-09")).toBe(20_000);
    expect(heaviestBefore(heavier, "2021-06-10")).toBe(30_000);
  });
  test("a month after an alarm, and a round that is due keeps a lift from being called sound", () => {
    const odd = withRounds(
      bareJob(),
      [30, 180, 365],
      [{ anchor: "L1", turns: [10 * degree, 20 * degree, 35 * degree] }],
    );
    const answer = upkeepOf(odd, "2021-01-05");
    expect(answer.answer).toBe("retorque-and-look");
    expect(answer.next!.reasons.map(({ id }) => id)).toContain("after-alarm");
    expect(answer.next!.date <= dayAfterSetting(395)).toBe(true);
    const late = upkeepOf(settled(bareJob()), "2022-03-01");
    expect([late.answer, late.next!.standing]).toEqual(["retorque-and-look", "overdue"]);
  });
  test("reasons stand in the order of their days and the first wins", () => {
    const job = { ...settled(bareJob()), vehicles: [truck(20_000), truck(30_000, "2021-06-10")] };
    const { reasons, date } = next(job, "2021-01-05");
    expect(reasons.map((reason) => reason.date)).toEqual(reasons.map((reason) => reason.date).toSorted());
    expect(date).toBe(reasons[0]!.date);
  });
  test("nobody knows when it was set: no day, and that is said", () => {
    const answer = upkeepOf({ ...bareJob(), installation: undefined }, "2021-01-05");
    expect([answer.answer, answer.next]).toEqual(["no-readings", undefined]);
  });
  test("rounds ahead keep their names when their days move; an overdue one is for today", () => {
    const job = settled(bareJob());
    const [early, late] = [
      roundsAhead(job, upkeepOf(job, "2021-01-05")),
      roundsAhead(job, upkeepOf(job, "2022-03-01")),
    ];
    expect(early.map(({ id }) => id)).toEqual(late.map(({ id }) => id));
    expect(early.map(({ date }) => date)).toEqual(["2021-12-31", "2022-12-31", "2023-12-31"]);
    expect(late[0]!.date).toBe("2022-03-01");
  });
});

describe("what a round may find besides movement", () => {
  const withReading = (more: object): Job => {
    const job = settled(bareJob());
    const visits = job.visits.map((visit, i) =>
      i === 2 ? { ...visit, readings: visit.readings.map((r) => (r.anchor === "R2" ? { ...r, ...more } : r)) } : visit,
    );
    return { ...job, visits };
  };
  const said = (value: string) => ({ known: true, value, basis: { kind: "measured" } });
  test.each([
    [{ state: said("spins") }, /R2 spins/],
    [{ state: said("snapped") }, /R2 is snapped/],
    [{ state: said("missing") }, /R2 is missing/],
    [{ sound: said("hollow") }, /around R2 sounds hollow/],
  ])("%o takes it out of service", (more, words) => {
    const answer = upkeepOf(withReading(more), "2021-01-05");
    expect(answer.answer).toBe("out-of-service");
    expect(answer.reasons[0]).toMatch(words);
  });
  test("100 to 120 lb-ft set, 40 to 50 found some 18 months later: re-torque and look, no panic (common practice, no source)", () => {
    const lbft = 1355.8179;
    for (const found of [40, 45, 50]) {
      const job = withRounds(
        bareJob(),
        [548],
        ["L", "R"].flatMap((side) => [1, 2, 3, 4, 5].map((n) => ({ anchor: `${side}${n}`, turns: [undefined] }))),
      );
      const read = {
        ...job.visits[0]!,
        readings: ["L1", "R1"].map((anchor) => ({
          anchor,
          found: known(found * lbft),
          turned: { known: false } as const,
          projection: { known: false } as const,
          note: undefined,
        })),
      };
      const answer = upkeepOf({ ...job, visits: [read] }, "2021-07-05");
      expect(answer.answer).toBe("retorque-and-look");
      expect(answer.reasons.join(" ")).toMatch(/common after a year or two and no cause for panic/);
      expect(answer.anchors.find(({ anchor }) => anchor === "L1")!.verdict).toBe("undecided");
    }
  });
  test("an anchor nobody has read keeps the lift from being called sound", () => {
    const job = settled(bareJob());
    const visits = job.visits.map((visit) => ({
      ...visit,
      readings: visit.readings.filter(({ anchor }) => anchor !== "R5"),
    }));
    const answer = upkeepOf({ ...job, visits }, "2021-01-05");
    expect(answer.answer).toBe("retorque-and-look");
    expect(answer.reasons.join(" ")).toContain("Not read at any round: R5");
  });
});
