/**
 * May this vehicle go up today. Statics by hand: P = W/2 + Wc, M across = W/2 × e at every height of a free-standing
 * lift, M along = W/2 × y, arms W/2 (1/2 ± y/d). Answers: common practice of the trade, no published source.
 */
import { readFileSync } from "node:fs";
import { judgeVehicle, plainVehicle, vehicleClasses, vehicleOfClass } from "@floorworthy/assess/vehicle";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import { type Job, type KnownQuantity, readJob, type Vehicle } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const jobFrom = (text: string): Job => {
  const read = readJob(text, { load });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};
const text = `floorworthy: 1
title: Free-standing lift on a thick slab
date: 2026-03-01
setting: { use: home, permit: not-required }
lift: { file: b9f.lift.yaml }
bay: { outline: { width: 40 ft, depth: 44 ft }, ceiling: { value: 160 in, basis: measured } }
floor:
  state: standing
  kind: slab-on-ground
  below: ground
  postTension: { value: none-shown, basis: documented, document: drawings }
  heat: none
  utilities: none
  ageDays: 800 d
  readings:
    - { near: left, thickness: 16 in }
    - { near: left, thickness: 16 in }
    - { near: right, thickness: 16.4 in }
    - { near: right, thickness: 16.2 in }
  strength: { cylinders: [{ strength: 6000 psi, ageDays: 28 d }] }
columns: { left: [150 in, 240 in], right: [274 in, 240 in] }
vehicles:
  - { name: old car, weight: 3000 lb, frame: unibody, pickupSpacing: 66 in }
installation: { date: 2025-12-20, beam: not-fitted, plumb: plumb }
visits:
  - { date: 2026-01-20, readings: [${["L", "R"].flatMap((s) => [1, 2, 3, 4, 5].map((n) => `{ anchor: ${s}${n}, turned: 15 deg }`)).join(", ")}] }
`;
const job = jobFrom(text);
const lb = (weight: number): KnownQuantity => ({
  known: true,
  value: toBase(weight, "lb"),
  low: toBase(weight, "lb"),
  high: toBase(weight, "lb"),
  basis: { kind: "stated" },
  written: `${weight} lb`,
});
const inch = (length: number): KnownQuantity => ({
  ...lb(1),
  value: length * 25.4,
  low: length * 25.4,
  high: length * 25.4,
  written: `${length} in`,
});
const truck: Vehicle = {
  ...plainVehicle("loaded truck"),
  weight: lb(2900),
  frontAxle: lb(1740),
  rearAxle: lb(1160),
  wheelbase: inch(150),
  pickupSpacing: inch(100),
  offset: inch(10),
  frame: { known: true, value: "body-on-frame", basis: { kind: "stated" } },
};
const answer = judgeVehicle(job, truck, "2026-03-01");

describe("a light truck on a free-standing lift", () => {
  test("reactions by hand at every height: 2,050 lb, 63.8 and 14.5 kip-in", () => {
    expect(answer.heights.length).toBe(5);
    for (const { left, right, height } of answer.heights) {
      for (const side of [left, right]) {
        expect(fromBase(side.P, "lb"), `at ${height}`).toBeCloseTo(1450 + 600, 3);
        expect(fromBase(side.inwardMoment, "kip-in")).toBeCloseTo(1.45 * 44, 6);
        expect(fromBase(side.foreAftMoment, "kip-in")).toBeCloseTo(1.45 * 10, 6);
      }
    }
  });
  test("arms: 580 lb toward the back wall, 870 lb toward the door; in all the vehicle", () => {
    expect(answer.arms.map(({ value }) => Math.round(value))).toEqual([580, 870, 580, 870]);
    expect(answer.arms.reduce((sum, { value }) => sum + value, 0)).toBeCloseTo(2900, 6);
  });
  test("the line of the columns belongs 60 in behind the front axle", () =>
    expect(answer.place[0]!.value).toBeCloseTo((150 * 1160) / 2900, 9));
  test("weight against the data plate, and the floor under it, worst first", () => {
    expect(answer.rated!.ratio).toBeCloseTo(2900 / 9000, 9);
    expect(answer.checks.length).toBeGreaterThan(3);
    expect(answer.checks.map(({ ratio }) => ratio)).toEqual(
      answer.checks.map(({ ratio }) => ratio).toSorted((a, b) => b - a),
    );
    expect(answer.side).toBe("both");
  });
  test("the base beside a saw cut governs", () => {
    const cut = jobFrom(text.replace("  readings:", "  joints: [{ name: cut, x: 288 in }]\n  readings:"));
    expect(judgeVehicle(cut, truck, "2026-03-01").side).toBe("right");
  });
  test("yes, while no round is due and nothing heavier was wanted", () => expect(answer.answer).toBe("yes"));
});

describe("re-torque first", () => {
  test("when it is heavier than anything lifted before the last round", () => {
    const heavy = judgeVehicle(
      job,
      { ...truck, weight: lb(3400), frontAxle: { known: false }, rearAxle: { known: false } },
      "2026-03-01",
    );
    expect(heavy.answer).toBe("retorque-first");
    expect(heavy.reasons.join(" ")).toContain("heavier than anything lifted before the last round (3,000 lb");
  });
  test("when the round is due", () => {
    const late = judgeVehicle(job, truck, "2027-03-01");
    expect([late.answer, late.reasons[0]]).toEqual([
      "retorque-first",
      expect.stringContaining("The round of 2027-01-20 is due"),
    ]);
  });
  test("when there is no record that the lift is set", () =>
    expect(judgeVehicle({ ...job, installation: undefined, visits: [] }, truck, "2026-03-01").answer).toBe(
      "retorque-first",
    ));
});

describe("never", () => {
  const figures = ({ rated, heights, checks, arms, place }: typeof answer) => [rated, heights, checks, arms, place];
  const none = [undefined, [], [], [], []];
  test.each([9001, 9200, 20_000])("above the rated load: %d lb on a 9,000 lb lift", (weight) => {
    const over = judgeVehicle(job, { ...plainVehicle("x"), weight: lb(weight) }, "2026-03-01");
    expect(over.answer).toBe("no");
    expect(figures(over)).toEqual(none);
  });
  test("axles that together pass the rated load count, whatever the weight says", () => {
    const over = judgeVehicle(
      job,
      { ...truck, weight: lb(8000), frontAxle: lb(5000), rearAxle: lb(4200) },
      "2026-03-01",
    );
    expect(over.answer).toBe("no");
  });
  test("with the centre of gravity outside the lifting points", () => {
    const off = judgeVehicle(job, { ...truck, offset: inch(-51) }, "2026-03-01");
    expect([off.answer, off.reasons[0]]).toEqual(["no", expect.stringContaining("tip off")]);
  });
  test("on a floor that fails the maker's page, however light the vehicle", () => {
    const thin = jobFrom(text.replace("16 in", "3 in"));
    const light = judgeVehicle(thin, { ...plainVehicle("x"), weight: lb(1500) }, "2026-03-01");
    expect([light.answer, figures(light)]).toEqual(["no", none]);
    expect(light.reasons.join(" ")).toContain("does not excuse the floor");
  });
  test("under a stop, and no figure with it", () => {
    const stopped = judgeVehicle(
      jobFrom(text.replace("none-shown, basis: documented, document: drawings", "stamped")),
      truck,
      "2026-03-01",
    );
    expect([stopped.answer, figures(stopped)]).toEqual(["no", none]);
  });
  test("without a weight: hold, and how to get it", () => {
    const weightless = judgeVehicle(job, plainVehicle("x"), "2026-03-01");
    expect([weightless.answer, weightless.reasons[0]]).toEqual(["hold", expect.stringContaining("weigh it")]);
  });
});

test("classes are marked as invented, and their axles add up to their weight", () => {
  for (const name of Object.keys(vehicleClasses) as (keyof typeof vehicleClasses)[]) {
    const { weight, frontAxle, rearAxle } = vehicleOfClass(name);
    if (!weight.known || !frontAxle.known || !rearAxle.known) throw new Error(name);
    expect(frontAxle.high + rearAxle.high).toBeCloseTo(weight.high, 6);
    expect(weight.basis).toMatchObject({ kind: "assumed", why: expect.stringContaining("invented") });
  }
});

test("where cracked concrete would not hold it, that is said with what helps", () => {
  const thin = jobFrom(text.replaceAll("16 in", "8 in").replace("16.4 in", "8 in").replace("16.2 in", "8 in"));
  for (const weight of [2500, 4000, 5500, 7000, 8500]) {
    const { checks, conditions, answer } = judgeVehicle(
      thin,
      { ...plainVehicle("x"), weight: lb(weight), offset: inch(0) },
      "2026-03-01",
    );
    const over = checks.some(({ ratio, concrete }) => ratio > 1 && concrete === "cracked");
    const short = checks.some(({ ratio, concrete }) => ratio > 1 && concrete !== "cracked");
    expect(
      conditions.some((words) => words.startsWith("The margin is thin")),
      `${weight} lb`,
    ).toBe(over && !short);
    if (short) expect(answer).toBe("hold");
  }
});
