/**
 * The pads of the invented cases: volumes by hand, statics of rigid pads by hand, the decision an experienced installer
 * would take. Common practice, no published source.
 */
import { readFileSync } from "node:fs";
import {
  cheapestPad,
  checkPad,
  noReinforcement,
  type PadAnswer,
  type PadDesign,
  type PadSize,
  padParts,
  usualBars,
} from "@floorworthy/assess/pad";
import { padVolume } from "@floorworthy/engine/pads";
import { fromBase, isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const folder = new URL("./files/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const jobOf = (name: string, change: (text: string) => string = (text) => text): Job => {
  const read = readJob(change(load(name)), { name, load });
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};
const able = <T>(value: T | Unable): T => {
  if (isUnable(value)) throw new Error(value.reason);
  return value;
};
const inch = (n: number): number => toBase(n, "in");
const design = (size: PadSize, depth: number, more: Partial<PadDesign> = {}): PadDesign => ({
  size,
  join: "separate",
  depth: inch(depth),
  slope: 0,
  key: 0,
  reinforcement: noReinforcement,
  strength: toBase(4000, "psi"),
  ...more,
});
const pads = (side: number): PadSize => ({ shape: "two-pads", along: inch(side), across: inch(side) });
const strip = (width: number): PadSize => ({ shape: "strip", beyond: inch(width / 2), across: inch(width) });
const ratioOf = ({ checks }: PadAnswer, id: string): number =>
  checks.find((check) => check.id === id)?.ratio ?? Number.NaN;

describe("two: four inches that is not, a free-standing lift", () => {
  const job = jobOf("02-four-inches-that-is-not.yaml");
  test("one strip 60 × 184 × 12 in: 2.84 yd³, 3.04 to order; it holds, and the anchors are the limit", () => {
    const answer = able(checkPad(job, design(strip(60), 12)));
    expect(answer.volumes.concrete.value).toBeCloseTo(2.84, 2);
    expect(answer.volumes.order.value).toBeCloseTo(3.04, 2);
    expect(answer.verdict).toBe("meets");
    expect(answer.pageFails).toEqual([]);
    expect(answer.notes.join(" ")).toMatch(/anchors, not the pad, are the limit/);
  });
  test("two pads 72 × 72 × 12 in: 2.67 yd³; they stand alone", () => {
    const answer = able(checkPad(job, design(pads(72), 12)));
    expect(answer.volumes.concrete.value).toBeCloseTo(2.67, 2);
    expect(answer.verdict).toBe("meets");
    expect(ratioOf(answer, "pad-overturning")).toBeLessThan(1);
    // 820 psf by hand under the truck's reach, nobody pulling at the vehicle
    const still = jobOf("02-four-inches-that-is-not.yaml", (text) => `${text}choices: { workForce: 0 lb }\n`);
    const pressure = able(checkPad(still, design(pads(72), 12))).checks.find(
      ({ id }) => id === "pad-ground-pressure",
    )!.demand;
    expect(pressure.unit).toBe("psf");
    expect(Math.abs(pressure.value / 820 - 1)).toBeLessThan(0.05);
  });
  test("48 × 48 × 12 in alone does not hold; 60 × 60 × 12 in is marginal", () => {
    const small = checkPad(job, design(pads(48), 12));
    expect(isUnable(small) ? small.reason : small.short.join()).toMatch(/lifts off or tips|overturning/);
    const middle = able(checkPad(job, design(pads(60), 12)));
    expect(ratioOf(middle, "pad-overturning")).toBeGreaterThan(1);
    expect(middle.verdict).toBe("falls-short");
  });
  test("a slab this thin takes no dowels", () => {
    const asked = jobOf("02-four-inches-that-is-not.yaml", (text) => `${text}pad: { join: dowelled }\n`);
    const found = cheapestPad(asked);
    expect(isUnable(found) && found.reason).toMatch(/too thin for dowels/);
  });
});

describe("five: a strip under a lift in a floor still to be poured", () => {
  const job = jobOf("05-new-heated-shop.yaml");
  test("60 × 190 × 12 in with upright sides: 2.93 yd³ gross; it holds", () => {
    const answer = able(checkPad(job, design(strip(60), 12, { join: "cast-with", reinforcement: usualBars(job) })));
    expect(answer.volumes.gross.value).toBeCloseTo(2.93, 2);
    expect(answer.verdict).toBe("meets");
    expect(ratioOf(answer, "pad-steel")).toBeLessThan(1);
  });
});

describe("nine: 48 × 48 × 12 in dowelled into a sound slab of 4.6 in, a tied lift", () => {
  const job = jobOf("09-nine-cold-days.yaml", (text) => text.replace(/surface: \w+/, "surface: sound"));
  test("1.19 yd³; the dowels hold, and the join is judged with them", () => {
    const answer = checkPad(job, design(pads(48), 12, { join: "dowelled" }));
    if (isUnable(answer)) throw new Error(answer.reason);
    expect(answer.volumes.concrete.value).toBeCloseTo(1.185, 2);
    expect(ratioOf(answer, "dowel-shear")).toBeLessThan(1);
    expect(ratioOf(answer, "pad-cold-joint")).toBeLessThan(1);
    expect(answer.figures.crack).toBeGreaterThan(0);
  });
});

describe("twelve: a truck lift", () => {
  const job = jobOf("12-truck-lift-in-the-shop.yaml");
  test("strip 72 × 220 × 14 in: 4.75 yd³, 5.1 to order, 49 ft of saw; an engineer's letter", () => {
    const answer = able(checkPad(job, design(strip(72), 14, { reinforcement: usualBars(job) })));
    expect(answer.volumes.concrete.value).toBeCloseTo(4.75, 2);
    expect(answer.volumes.order.value).toBeCloseTo(5.08, 1);
    expect(Math.abs(fromBase(answer.quantities.perimeter, "ft") / 49 - 1)).toBeLessThan(0.05);
    expect(answer.verdict).toBe("meets");
    expect(answer.notes.join(" ")).toMatch(/engineer's letter/);
  });
});

describe("under a stop nothing is designed", () => {
  test.each(["06-stamp-by-the-door.yaml", "07-room-below.yaml"])("%s", (name) => {
    const found = cheapestPad(jobOf(name));
    expect(isUnable(found) && found.reason.length > 20).toBe(true);
  });
});

test("the volume of the bill is the volume by formula of the engine", () => {
  const job = jobOf("05-new-heated-shop.yaml");
  const sizes: PadSize[] = [pads(50), strip(60), { shape: "joined-circles", radius: inch(36), waist: inch(30) }];
  for (const size of sizes) {
    const one = design(size, 11, { join: "cast-with", slope: 1 });
    const answer = able(checkPad(job, one));
    const parts = able(padParts(job, one));
    const byFormula = parts.reduce((s, { pad }) => s + able(padVolume(pad)).net.value, 0);
    expect(answer.quantities.concrete / byFormula).toBeCloseTo(1, 9);
  }
});
