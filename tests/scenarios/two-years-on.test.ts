/**
 * Two years on: nuts that turn further at every round, and a crack to the saw cut. Worked by hand with the rules of the
 * trade: common practice, no published source. Take-up by hand: Σθ/360 × 0.100 in for 3/4-10.
 */
import { readFileSync } from "node:fs";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { judgeVehicle, vehicleOfClass } from "@floorworthy/assess/vehicle";
import { readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const jobFrom = (text: string) => {
  const read = readJob(text, { load });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};
const text = load("10-two-years-on.yaml");
const job = jobFrom(text);
const upkeep = upkeepOf(job, "2026-10-01");
const anchor = (name: string) => upkeep.anchors.find((a) => a.anchor === name)!;

describe("two years on", () => {
  test.each([
    ["L1", 0.126, "out-of-service"],
    ["L2", 0.094, "out-of-service"],
    ["L3", 0.01, "sound"],
    ["R1", 0.01, "sound"],
  ] as const)("%s: take-up %f in, %s", (name, inches, answer) => {
    expect(anchor(name).takeUp! / 25.4).toBeCloseTo(inches, 3);
    expect(anchor(name).answer).toBe(answer);
  });
  test("L1's last three rounds took up 0.119 in, and each rang", () => {
    const rounds = anchor("L1").rounds;
    expect((rounds[4]!.takeUp! - rounds[1]!.takeUp!) / 25.4).toBeCloseTo(0.119, 3);
    expect(rounds.slice(2).map(({ control }) => control)).toEqual(["over", "over", "over"]);
  });
  test("out of service today; not re-torque and watch, not glue in the hole, not a hole in the cone", () => {
    expect(upkeep.answer).toBe("out-of-service");
    expect(upkeep.next).toMatchObject({ date: "2026-10-01", reason: { id: "before-lifting" } });
    expect(upkeep.steps.join(" ")).toMatch(/Not a re-torque.*glue, in the same hole.*inside the old cone/);
    expect(upkeep.reasons.join(" ")).toMatch(/crack at L1 grows through the concrete that holds L1/);
  });
  test("ways back: the left pad anew with dowels, joint farther off; 3 hef is 9.75 in; the other side too", () => {
    const [pad, cone, other] = upkeep.remedies;
    expect(pad!.title).toContain("left base anew: 48 in × 48 in × 12 in");
    expect(pad!.detail).toMatch(/dowels into it are possible.*12 in or more.*runs 7 in away.*new truck, 8200 lb/);
    expect(pad!.volume!.value).toBeCloseTo((1.07 * 16) / 27, 6);
    expect(cone!.terms[0]!.value).toBeCloseTo(9.75, 9);
    expect(other!.title).toContain("right base");
  });
  test("no vehicle goes up, and no figure is shown beside", () => {
    for (const vehicle of [...job.vehicles, vehicleOfClass("car")]) {
      const answer = judgeVehicle(job, vehicle, "2026-10-01");
      expect(answer.answer).toBe("no");
      expect([answer.rated, answer.heights, answer.checks, answer.arms]).toEqual([undefined, [], [], []]);
      expect(answer.reasons[0]).toMatch(/^L1 slips/);
    }
  });
  test("the nuts alone are enough: without crack and hollow sound the first reason stays", () => {
    const quiet = jobFrom(text.replace(/ {2}cracks:.*?(?=columns:)/s, "").replaceAll(", sound: hollow", ""));
    expect(upkeepOf(quiet, "2026-10-01").reasons[0]).toBe(upkeep.reasons[0]);
  });
  test("the growing crack alone is enough as well", () => {
    const still = jobFrom(text.replace(/visits:.*$/s, ""));
    const answer = upkeepOf(still, "2026-10-01");
    expect(answer.answer).toBe("out-of-service");
    expect(answer.reasons[0]).toMatch(/^crack at L1 grows/);
  });
});
