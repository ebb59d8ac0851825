/** The watch over whole lifts: how often it is right at five rounds, and what it must never say. */
import { upkeepOf, watchAnchors } from "@floorworthy/assess/upkeep";
import { createGenerator } from "@floorworthy/engine/numerics";
import fc from "fast-check";
import { afterAll, describe, expect, test } from "vitest";
import { type Disturbance, disturbances, type Kind, kinds } from "../../bench/histories/anchors.ts";
import { answerOf, bareJob, dayAfterSetting, inventLift, withRounds } from "./upkeep-lifts.ts";

const LIMIT = 25.4 / 16;
const PITCH = 2.54;
const COUNT = 16;
const rows: string[] = [];
afterAll(() =>
  console.log(
    [
      `${COUNT} invented lifts each, ten anchors, five rounds, one anchor of the kind and nine that relax; percent`,
      "kind        reading         anchor: sound  look  out    lift: sound  look  out   sound though moved over the limit",
      ...rows,
    ].join("\n"),
  ),
);

const rates = (kind: Kind, disturbance: Disturbance) => {
  const next = createGenerator(20_26);
  const anchor = { sound: 0, "retorque-and-look": 0, "out-of-service": 0, "not-read": 0, "not-judged": 0 };
  const lift = { sound: 0, "retorque-and-look": 0, "out-of-service": 0, "no-readings": 0, stopped: 0 };
  let missed = 0;
  for (let i = 0; i < COUNT; i++) {
    const { job, moved } = inventLift(kind, disturbance, PITCH, next);
    const answer = upkeepOf(job, dayAfterSetting(731));
    const first = answerOf(answer.anchors, "L1");
    anchor[first.answer]++;
    lift[answer.answer]++;
    if (first.answer === "sound" && moved[0]! > LIMIT) missed++;
  }
  const percent = (n: number) => `${Math.round((100 * n) / COUNT)}`.padStart(5);
  rows.push(
    [
      kind.padEnd(10),
      disturbance.padEnd(14),
      "       ",
      percent(anchor.sound),
      percent(anchor["retorque-and-look"]),
      percent(anchor["out-of-service"]),
      "        ",
      percent(lift.sound),
      percent(lift["retorque-and-look"]),
      percent(lift["out-of-service"]),
      String(missed).padStart(8),
    ].join(" "),
  );
  return { anchor, lift, missed };
};

describe("error rates at five rounds", () => {
  for (const kind of kinds)
    for (const disturbance of disturbances)
      test(`${kind}, ${disturbance}`, () => {
        const { anchor, lift, missed } = rates(kind, disturbance);
        expect(missed, "called sound though it moved over the limit").toBe(0);
        if (kind === "relaxing") {
          expect(lift["out-of-service"], "false alarms that close a lift").toBe(0);
          if (disturbance === "plain") expect(anchor.sound).toBeGreaterThanOrEqual(0.9 * COUNT);
        } else {
          expect(anchor.sound, "slip called sound").toBeLessThanOrEqual(Math.ceil(COUNT / 20));
          expect(anchor["out-of-service"]).toBeGreaterThanOrEqual(0.75 * COUNT);
        }
      });
});

const turns = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 6 });
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const daysOf = (count: number) => Array.from({ length: count }, (_, i) => 30 + 200 * i);

describe("laws", () => {
  test("an anchor whose take-up exceeds the limit takes the lift out of service, whatever the pattern", () =>
    fc.assert(
      fc.property(turns, (degrees) => {
        const job = withRounds(bareJob(), daysOf(degrees.length), [{ anchor: "R3", turns: degrees.map(radians) }]);
        const takeUp = (degrees.reduce((a, b) => a + b, 0) / 360) * PITCH;
        const { answer, moved } = answerOf(watchAnchors(job, "last"), "R3");
        expect(moved).toBeCloseTo(takeUp, 9);
        if (takeUp > LIMIT * (1 + 1e-9)) {
          expect(answer).toBe("out-of-service");
          expect(upkeepOf(job, "2026-01-01").answer).toBe("out-of-service");
        }
      }),
      { numRuns: 60 },
    ));
  test("the trend's last verdict is the one that the answer is made of; looking at all rounds changes nothing", () =>
    fc.assert(
      fc.property(turns, (degrees) => {
        const job = withRounds(bareJob(), daysOf(degrees.length), [{ anchor: "L1", turns: degrees.map(radians) }]);
        const [whole, last] = [answerOf(watchAnchors(job), "L1"), answerOf(watchAnchors(job, "last"), "L1")];
        expect(whole.rounds.at(-1)!.verdict).toBe(whole.verdict);
        expect([whole.answer, whole.sentence]).toEqual([last.answer, last.sentence]);
      }),
      { numRuns: 25 },
    ));
  test("without the day of setting the first round counts against the limit all the same", () => {
    const job = withRounds(
      { ...bareJob(), installation: undefined },
      [30, 400],
      [{ anchor: "L1", turns: [radians(200), radians(40)] }],
    );
    const history = answerOf(watchAnchors(job), "L1");
    expect(history.takeUp).toBeCloseTo((240 / 360) * PITCH, 9);
    expect(history.answer).toBe("out-of-service");
    expect(upkeepOf(job, "2022-01-01").notJudged.join(" ")).toContain("Nobody wrote when");
  });
  test("names are met whatever their capitals; a name of no hole is kept and said", () => {
    const job = withRounds(
      bareJob(),
      [30],
      [
        { anchor: "l1", turns: [0.2] },
        { anchor: "L9", turns: [0.2] },
      ],
    );
    const upkeep = upkeepOf(job, "2020-02-05");
    expect(answerOf(upkeep.anchors, "L1").rounds).toHaveLength(1);
    expect(upkeep.notJudged.join(" ")).toContain("Not a hole of this lift: L9");
  });
});
