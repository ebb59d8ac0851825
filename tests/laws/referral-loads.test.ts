/**
 * Loads of the engineer's pack. Statics of one column, worked by hand: P = φ r W + Wc, and with nothing overhead the whole
 * φ r W e at the base (handbook statics; no table needed).
 */
import type { CaseReactions } from "@floorworthy/assess";
import { governingLoads, referral } from "@floorworthy/assess/referral";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { assessmentOf, choice, inch, known, standing } from "../papers/fixtures.ts";

const stop = { id: "space-below", outcome: "refuse", reason: "A room is below.", next: "An engineer looks." } as const;

const free: Job = {
  ...standing,
  lift: {
    ...standing.lift,
    top: choice("free-standing"),
    rated: known(toBase(10_000, "lb")),
    columnWeight: known(toBase(650, "lb")),
    spacing: known(inch(126)),
    reachCar: known(inch(37)),
    reachTruck: known(inch(45)),
  },
  choices: { ...standing.choices, dynamicFactor: known(1), workForce: known(0) },
};

const packOf = (job: Job) => referral(job, assessmentOf(job, { stops: [stop] }));

const named = (cases: readonly CaseReactions[], words: RegExp): CaseReactions => {
  const found = cases.find(({ name }) => words.test(name));
  if (!found) throw new Error(`no case ${words}`);
  return found;
};

describe("10,000 lb, columns of 650 lb, pads 37 in (cars) and 45 in (frame trucks) from the column", () => {
  const { loads } = packOf(free);

  test.each([
    [/Car pads, just lifted, weight shared evenly/, 185],
    [/Frame-truck pads, just lifted, weight shared evenly/, 225],
  ] as const)("%s: 5,650 lb and %d kip-in inward", (words, kipIn) => {
    for (const base of named(loads.cases, words).bases) {
      expect(fromBase(base.P, "lb")).toBeCloseTo(5650, 6);
      expect(fromBase(base.My, "kip-in") * (base.side === "left" ? 1 : -1)).toBeCloseTo(kipIn, 6);
      expect(base.Mx).toBeCloseTo(0, 6);
    }
  });

  test("both bases together carry the vehicle and the columns in every case", () => {
    for (const { bases } of loads.cases)
      expect(fromBase(bases[0]!.P + bases[1]!.P, "lb")).toBeCloseTo(10_000 + 2 * 650, 6);
  });

  test("the rows shown hold every extreme", () => {
    const rows = governingLoads(loads.cases).map(({ base }) => base);
    const all = loads.cases.flatMap(({ bases }) => bases);
    for (const of of [
      (b: (typeof all)[number]) => b.P,
      (b: (typeof all)[number]) => Math.abs(b.My),
      (b: (typeof all)[number]) => Math.abs(b.Mx),
    ])
      expect(Math.max(...rows.map(of))).toBeCloseTo(Math.max(...all.map(of)), 6);
  });
});

test("under a stop the loads are demand only: nothing in the pack says what the floor holds", () => {
  const pack = packOf(free);
  expect(pack.loads.from).toBe("statics of the lift");
  expect(pack.reasons).toEqual([]);
  expect(JSON.stringify(pack.loads)).not.toMatch(/capacity|ratio|ample|enough|margin/);
});

test("without a stop the pack holds what is not met or not shown, and no word of the margin", () => {
  const margin = { ...assessmentOf(free).margin, verdict: "ample", sentence: "The margin is ample." } as const;
  const pack = referral(free, assessmentOf(free, { margin, reasons: ["The margin is ample."] }));
  expect(pack.reasons).toEqual(["Strength: the maker asks at least 3,000 psi, and it is not shown (no record)."]);
  expect(JSON.stringify(pack)).not.toContain("ample");
});

test("the maker's own reactions come first, in the plan's axes", () => {
  const P = known(toBase(6000, "lb"));
  const Min = known(toBase(200, "kip-in"));
  const none = { known: false } as const;
  const given = { name: "rated", P, Min, Mfa: none, Vu: none, Vv: none };
  const { loads } = packOf({ ...free, lift: { ...free.lift, reactions: [given] } });
  expect(loads.from).toBe("the maker's reactions");
  expect(loads.cases[0]!.bases.map(({ My }) => Math.round(fromBase(My, "kip-in")))).toEqual([200, -200]);
});

test("what is not known is stood in for and listed; without rated load or spacing nothing is computed", () => {
  const none = { known: false } as const;
  const { lift } = free;
  const vague = packOf({ ...free, lift: { ...lift, top: none, columnWeight: none, reachCar: none, reachTruck: none } });
  expect(vague.loads.assumed.join(" ")).toMatch(/free-standing.*column.*cars.*frame trucks/);
  expect(vague.loads.cases.length).toBeGreaterThan(3);
  const blank = packOf({ ...free, lift: { ...lift, rated: none } });
  expect(blank.loads.cases).toEqual([]);
  expect(blank.loads.words).toContain("the maker states the loads");
});

test("any other kind of lift is asked of its maker", () => {
  const pack = packOf({ ...free, lift: { ...free.lift, kind: "scissor" } });
  expect(pack.loads.from).toBe("not computed");
  expect(pack.notVerified.length).toBeGreaterThan(3);
});
