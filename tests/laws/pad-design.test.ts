/** Laws of the pad designs with the real mechanics, on an invented lift. */
import {
  type CheapestPad,
  cheapestPad,
  checkPad,
  noReinforcement,
  type PadDesign,
  padParts,
} from "@floorworthy/assess/pad";
import { polygonArea } from "@floorworthy/engine/geometry";
import { isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const inch = (n: number): number => toBase(n, "in");
const able = <T>(value: T | Unable): T => {
  if (isUnable(value)) throw new Error(value.reason);
  return value;
};

const jobOf = (
  state: "standing" | "to-be-poured",
  more = "",
  columns = "left: [100 in, 150 in], right: [220 in, 150 in]",
  floor = "",
): Job => {
  const read = readJob(`floorworthy: 1
title: a made-up bay
lift:
  name: Made-up 8
  kind: two-post
  manual: in-hand
  top: free-standing
  rated: 8000 lb
  columnWeight: 500 lb
  spacing: 120 in
  reachCar: 34 in
  base: { outline: { width: 18 in, depth: 18 in } }
  anchors:
    holes: [[-7 in, -6 in], [-7 in, 6 in], [5 in, -6 in], [5 in, 6 in]]
    product: { sheet: in-hand, kind: expansion, diameter: 3/4 in, nominalEmbedment: 4 in, effectiveEmbedment: 3 1/4 in }
  asks: { thickness: 5 in, strength: 3000 psi, days: 28 d, edge: 6 in }
bay: { outline: { width: 27 ft, depth: 25 ft } }
floor:
  state: ${state}
  kind: slab-on-ground
  below: ground
  postTension: none-shown
  heat: none
  surface: sound
  thickness: { value: 4 3/4 in, low: 4 1/2 in, high: 5 in, how: hooked }
  ground: { soil: sand }
${floor}
columns: { ${columns} }
${more}`);
  if (!read.ok) throw new Error(read.issues.map(({ path, message }) => `${path}: ${message}`).join("\n"));
  return read.job;
};

const pads = (side: number, depth: number, more: Partial<PadDesign> = {}): PadDesign => ({
  size: { shape: "two-pads", along: inch(side), across: inch(side) },
  join: "separate",
  depth: inch(depth),
  slope: 0,
  key: 0,
  reinforcement: noReinforcement,
  strength: toBase(4000, "psi"),
  ...more,
});

test("a pad that stands alone never cracks sooner for being deeper", () => {
  const job = jobOf("standing");
  const margins = [8, 10, 12, 15].map((depth) => able(checkPad(job, pads(72, depth))).figures.crack);
  for (let i = 1; i < margins.length; i++) expect(margins[i]!).toBeGreaterThan(margins[i - 1]!);
});

test("a whole floor never cracks sooner for being thicker; a pad cast with the slab may, beside it", () => {
  const job = jobOf("to-be-poured");
  const floor = [6, 7, 9].map(
    (depth) => able(checkPad(job, pads(0, depth, { size: { shape: "whole-bay" }, join: "cast-with" }))).figures.crack,
  );
  expect(floor).toEqual(floor.toSorted((a, b) => a - b));
  const deep = able(checkPad(job, pads(48, 18, { join: "cast-with" })));
  expect(deep.figures.crackIn).toBe("slab");
});

test("each base counts its own pad", () => {
  const job = jobOf("standing");
  const answer = able(checkPad(job, pads(72, 12)));
  expect(answer.job.floor.zones.map(({ name }) => name)).toEqual(["left pad", "right pad"]);
  expect(answer.checks.find(({ id }) => id === "slab-first-crack")).toBeDefined();
});

describe("the pad keeps within the floor", () => {
  test("a cut-out near a wall is cut short a foot from it", () => {
    const job = jobOf("standing", "", "left: [40 in, 150 in], right: [160 in, 150 in]");
    const [left, right] = able(padParts(job, pads(84, 12)));
    expect([left!.cut, right!.cut]).toEqual(["clipped", "whole"]);
    expect(Math.min(...left!.outline.map((p) => p.x))).toBeCloseTo(inch(12), 6);
    expect(polygonArea(left!.outline) / (inch(70) * inch(84))).toBeCloseTo(1, 9);
  });
  test("too near, and there is no such pad", () => {
    const job = jobOf("standing", "", "left: [14 in, 150 in], right: [134 in, 150 in]");
    const refused = checkPad(job, pads(72, 12));
    expect(isUnable(refused) && refused.reason).toMatch(/does not hold the whole base plate/);
  });
  test("a pipe in the way: that place is not cut", () => {
    const job = jobOf(
      "standing",
      "",
      undefined,
      "  pipes: [{ name: drain, kind: drain, line: [[90 in, 0 in], [90 in, 25 ft]], depth: 10 in }]",
    );
    const refused = checkPad(job, pads(72, 12));
    expect(isUnable(refused) && refused.reason).toBe("The cut-out would meet drain.");
    expect(isUnable(checkPad(job, pads(72, 8)))).toBe(false);
  });
  test("a joint through the cut-out goes with the old concrete; outside it stays", () => {
    const job = jobOf("standing", "", undefined, "  joints: [{ name: old saw cut, x: 102 in }]");
    const { floor } = able(checkPad(job, pads(72, 12))).job;
    expect(floor.joints.map(({ from, to }) => Math.abs(to.y - from.y) / inch(1))).toEqual(
      [114, 114].map((n) => expect.closeTo(n, 6)),
    );
  });
});

const WISHES = "pad: { planStep: 21 in, depthStep: 3 in, mostDepth: 16 in }";

describe("the search against trying all, with the real mechanics on coarse grids", () => {
  const cheapestByHand = (job: Job, join: PadDesign["join"], shape: "two-pads" | "strip") => {
    let best = { total: Number.POSITIVE_INFINITY, words: "" };
    const steps = [42, 63, 84].map(inch);
    for (const depth of [6, 9, 12, 15].map(inch))
      for (const a of shape === "two-pads" ? steps : [21, 42].map(inch))
        for (const b of steps) {
          if (b > inch(96) || (shape === "two-pads" && (a > inch(96) || b > a))) continue;
          const size = shape === "two-pads" ? { shape, along: a, across: b } : { shape, beyond: a, across: b };
          const one = checkPad(job, { ...pads(0, 0), size, depth, join });
          if (!isUnable(one) && one.verdict === "meets" && one.bill.total < best.total)
            best = { total: one.bill.total, words: one.words };
        }
    return best;
  };
  const found = (job: Job): CheapestPad => able(cheapestPad(job));
  test.each([
    ["two-pads", "standing alone", ""],
    ["strip", "standing alone", ""],
    ["two-pads", "with dear concrete", "prices: { concrete: 900 per yd³, bag: 40 each }"],
  ] as const)("%s, %s", (shape, _, prices) => {
    const job = jobOf(
      "standing",
      `${WISHES.replace("}", `, shape: ${shape}, join: separate, reinforcement: none }`)}\n${prices}`,
    );
    const { best } = found(job);
    const byHand = cheapestByHand(job, "separate", shape);
    expect(best.words).toBe(byHand.words);
    expect(best.bill.total).toBeCloseTo(byHand.total, 6);
  });
});

describe("the search", () => {
  const job = jobOf("standing", WISHES);
  test("tells how far it is, never backward, and stops when told", () => {
    const told: number[] = [];
    const answer = able(cheapestPad(job, { tell: (done) => told.push(done) }));
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(answer.best.verdict).toBe("meets");
    for (const other of answer.others) expect(other.verdict).toBe("meets");
    const stopped = cheapestPad(job, { cancelled: { aborted: true } });
    expect(isUnable(stopped) && stopped.reason).toMatch(/Stopped/);
  });
  test("costs of the bill follow the prices, and an invented price says so", () => {
    const quoted = jobOf("standing", `${WISHES}\nprices: { concrete: 200 per yd³, saw: 12 per ft, currency: £ }`);
    const [a, b] = [able(checkPad(job, pads(72, 12))), able(checkPad(quoted, pads(72, 12)))];
    expect(b.bill.currency).toBe("£");
    const line = (answer: typeof a, what: string) => answer.bill.lines.find((l) => l.what.startsWith(what))!;
    expect(line(b, "sawing").money / line(a, "sawing").money).toBeCloseTo(1.2, 9);
    expect([line(a, "sawing").basis, line(b, "sawing").basis]).toEqual(["invented", "quoted"]);
  });
  test("a wish nothing can meet is answered with what falls short", () => {
    const greedy = jobOf("standing", "pad: { planStep: 14 in, depthStep: 3 in, mostDepth: 9 in, collapseMargin: 50 }");
    const none = cheapestPad(greedy);
    expect(isUnable(none) && none.reason).toMatch(/No design of the grid/);
  });
  test("without the maker's page or the columns' place nothing is designed", () => {
    const blank = readJob("floorworthy: 1\ntitle: t\nlift: { name: L, kind: two-post, manual: in-hand }\n");
    const refused = blank.ok ? cheapestPad(blank.job) : undefined;
    expect(isUnable(refused)).toBe(true);
  });
});
