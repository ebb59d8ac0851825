/**
 * Whole jobs: cracks aslant against the same job turned, what joints hand across, lifts on posts, frames and feet. No outside
 * source: a job turned, mirrored or with a better joint is the same job or a better one.
 */
import { readFileSync } from "node:fs";
import type { MarginAnswer } from "@floorworthy/assess";
import { type Job, type Joint, type Position, type Quantity, readJob, type Support } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { factsOf } from "../../packages/assess/src/facts/facts.ts";
import { marginOf } from "../../packages/assess/src/margin/margin.ts";

const folder = new URL("../../examples/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name.replace(/^.*examples\//, ""), folder), "utf8");
const example = (name: string): Job => {
  const read = readJob(load(name), { name, load });
  if (!read.ok) throw new Error(read.issues.map((i) => i.message).join("\n"));
  return read.job;
};
const word = (job: Job): MarginAnswer => marginOf(job, factsOf(job), "word");
const whole = (job: Job): MarginAnswer => marginOf(job, factsOf(job));
const ratio = (margin: MarginAnswer, id: string): number => margin.checks.find((c) => c.id === id)!.ratio;
const crack = (job: Job): number => ratio(word(job), "slab-first-crack");
const known = (value: number): Quantity => ({
  known: true,
  value,
  low: value,
  high: value,
  written: `${value}`,
  basis: { kind: "stated" },
});
const unknown = { known: false } as const;

const twoPost = example("records-in-hand.yaml");
const bay = [
  { x: 0, y: 0 },
  { x: 30_000, y: 0 },
  { x: 30_000, y: 30_000 },
  { x: 0, y: 30_000 },
];
/** One lift alone on a wide slab, turned about its middle, with lines given in its own axes. */
const turned = (degrees: number, own: Pick<Job["floor"], "joints" | "cracks">): Job => {
  const a = (degrees * Math.PI) / 180;
  const place = (p: { x: number; y: number }) => ({
    x: 15_000 + p.x * Math.cos(a) - p.y * Math.sin(a),
    y: 15_000 + p.x * Math.sin(a) + p.y * Math.cos(a),
  });
  const position: Position = { left: place({ x: -1625, y: 0 }), right: place({ x: 1625, y: 0 }) };
  return {
    ...twoPost,
    position,
    bay: { ...twoPost.bay, outline: bay },
    floor: {
      ...twoPost.floor,
      readings: twoPost.floor.readings.map((r) => ({ ...r, at: undefined })),
      joints: own.joints.map((j) => ({ ...j, from: place(j.from), to: place(j.to) })),
      cracks: own.cracks.map((c) => ({ ...c, line: c.line.map(place) })),
    },
  };
};
const crackLine = (...line: { x: number; y: number }[]) => ({
  joints: [],
  cracks: [{ name: "crack", line, width: unknown, step: unknown, seen: [] }],
});

describe("a crack right across the slab, the job turned against the grid", () => {
  for (const off of [260, 400, 900]) {
    const own = crackLine({ x: -40_000, y: off }, { x: 40_000, y: off });
    const straight = crack(turned(0, own));
    test.each([10, 27, 45])(`${off} mm from the columns, by %i°`, (degrees) => {
      const r = crack(turned(degrees, own)) / straight;
      expect(r).toBeGreaterThan(0.98);
      expect(r).toBeLessThan(1.03);
    });
  }
});

describe("a crack that ends in the slab", () => {
  const sound = crack(turned(0, { joints: [], cracks: [] }));
  test.each([0, 20, 45])("turned by %i° it is never judged better than the slab without it", (degrees) => {
    for (const line of [
      [
        { x: -1900, y: 0 },
        { x: -1300, y: 0 },
      ],
      [
        { x: -2600, y: 300 },
        { x: -900, y: 300 },
      ],
      [
        { x: -1625, y: 700 },
        { x: -1625, y: 2000 },
      ],
      [
        { x: -1900, y: 420 },
        { x: -1500, y: 500 },
        { x: -1100, y: 900 },
      ],
    ])
      expect(crack(turned(degrees, crackLine(...line)))).toBeGreaterThan(0.98 * sound);
  });

  test("beside a base it is nearly as bad as one right across", () => {
    const across = crack(turned(0, crackLine({ x: -40_000, y: 300 }, { x: 40_000, y: 300 })));
    for (const degrees of [0, 20])
      expect(crack(turned(degrees, crackLine({ x: -2600, y: 300 }, { x: -900, y: 300 })))).toBeGreaterThan(
        0.98 * across,
      );
  });
});

describe("what a joint hands across", () => {
  const joint = (more: Partial<Joint>): number =>
    crack(
      turned(0, {
        joints: [
          {
            name: "joint",
            kind: "saw-cut",
            from: { x: -13_000, y: 270 },
            to: { x: 13_000, y: 270 },
            transfer: unknown,
            state: "standing",
            ...more,
          },
        ],
        cracks: [],
      }),
    );
  const transfer = (value: "none" | "interlock" | "dowels") =>
    ({ known: true, value, basis: { kind: "stated" } }) as const;
  const open = joint({ transfer: transfer("none") });

  test("not stated, or stated without the facts its law needs: nothing, as for an open one", () => {
    expect(joint({})).toBeCloseTo(open, 9);
    expect(joint({ transfer: transfer("interlock") })).toBeCloseTo(open, 9);
    expect(joint({ transfer: transfer("dowels") })).toBeCloseTo(open, 9);
    expect(joint({ kind: "isolation", transfer: transfer("interlock"), opening: known(0.2) })).toBeCloseTo(open, 9);
    expect(joint({ transfer: transfer("interlock"), opening: known(1.2) })).toBeCloseTo(open, 9);
  });

  test("a tight interlocked one helps a little, dowels more, thicker dowels more again", () => {
    const interlock = joint({ transfer: transfer("interlock"), opening: known(0.4) });
    const dowels = (d: number) =>
      joint({ transfer: transfer("dowels"), dowelDiameter: known(d), dowelSpacing: known(300), opening: known(3) });
    expect(interlock).toBeLessThan(open);
    expect(dowels(19)).toBeLessThan(interlock);
    expect(dowels(32)).toBeLessThan(dowels(19));
  });

  test("the share unfolds down to the opening", () => {
    const job = turned(0, {
      joints: [
        {
          name: "front cut",
          kind: "saw-cut",
          from: { x: -13_000, y: 270 },
          to: { x: 13_000, y: 270 },
          transfer: transfer("interlock"),
          opening: known(0.4),
          state: "standing",
        },
      ],
      cracks: [],
    });
    const demand = word(job).checks.find((c) => c.id === "slab-first-crack")!.demand;
    const share = demand.from?.find((t) => t.symbol === "s");
    expect(share?.value).toBeCloseTo(0.15, 6);
    expect(share?.from?.[0]?.words).toContain("front cut");
  });
});

describe("posts, frames and feet", () => {
  const fourPost = example("four-posts-on-four-inches.yaml");
  const rolling = example("rolling-columns-by-a-joint.yaml");

  test("on a wide slab a four-post lift is the same at any turn, and mirrored", () => {
    const wide: Job = {
      ...fourPost,
      bay: { ...fourPost.bay, outline: bay },
      floor: { ...fourPost.floor, joints: [], cracks: [] },
    };
    const at = (degrees: number): Job => {
      const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      const position = {
        left: { x: 15_000 - 1575 * c, y: 15_000 - 1575 * s },
        right: { x: 15_000 + 1575 * c, y: 15_000 + 1575 * s },
      };
      return { ...wide, position };
    };
    const straight = word(at(0));
    expect(straight.checks.length).toBeGreaterThan(6);
    for (const degrees of [90, 180])
      for (const { id, ratio: r } of word(at(degrees)).checks) expect(r / ratio(straight, id)).toBeCloseTo(1, 3);
    for (const { id, ratio: r } of word(at(27)).checks.filter((c) => !c.id.includes("edge")))
      expect(Math.abs(r / ratio(straight, id) - 1), id).toBeLessThan(0.03);
  });

  test("four posts carry the rated load and their own weight; the worst 35 %", () => {
    const { cases } = whole(fourPost);
    const level = cases.find((c) => c.name === "all posts level")!;
    const total = level.bases.reduce((sum, b) => sum + b.P, 0);
    expect(total / 4.4482216).toBeCloseTo(12_000 + 4 * 520, 0);
    const worst = Math.max(...cases.filter((c) => c.counted === "counted").flatMap((c) => c.bases.map((b) => b.P)));
    expect(worst / 4.4482216).toBeCloseTo(0.35 * 12_000 + 520, 0);
  });

  test("a foot nearer to a saw cut presses the slab harder, down to its edge; the words name the foot", () => {
    const at = (off: number): Job => ({
      ...rolling,
      floor: {
        ...rolling.floor,
        joints: [{ ...rolling.floor.joints[0]!, from: { x: 0, y: 8624 + off }, to: { x: 6096, y: 8624 + off } }],
      },
    });
    const [near, further, far] = [10, 150, 1500].map((off) => crack(at(off)));
    expect(near!).toBeGreaterThan(1.05 * further!);
    expect(further!).toBeGreaterThan(1.05 * far!);
    expect(whole(at(40)).sentence).toMatch(/foot.*from the.*saw cut.*Roll the columns clear/);
    expect(whole(at(1500)).sentence).not.toContain("Roll the columns");
  });

  test("the maker's own loads, shares, and a scissor's four ends are computed; what is not known is named", () => {
    const ends: Support[] = fourPost.lift.supports.map((s) => ({ ...s }));
    const scissor: Job = { ...fourPost, lift: { ...fourPost.lift, kind: "scissor", supports: ends } };
    expect(word(scissor).checks.length).toBeGreaterThan(6);
    const stated: Job = {
      ...fourPost,
      lift: { ...fourPost.lift, kind: "other", supports: ends.map((s) => ({ ...s, P: known(20_000) })) },
    };
    expect(word(stated).verdict).not.toBe("not-computed");
    const shares: Job = {
      ...fourPost,
      lift: { ...fourPost.lift, kind: "other", supports: ends.map((s) => ({ ...s, share: known(0.3) })) },
    };
    expect(word(shares).verdict).not.toBe("not-computed");
    for (const lift of [
      { ...fourPost.lift, kind: "other" as const },
      { ...fourPost.lift, supports: ends.slice(0, 3) },
      { ...rolling.lift, supports: rolling.lift.supports.slice(0, 7) },
    ]) {
      const margin = word({ ...fourPost, lift });
      expect(margin.verdict).toBe("not-computed");
      expect(margin.sentence).toMatch(/maker's load of each/);
      expect(margin.checks).toEqual([]);
    }
  });

  test("shares that leave load out, and two supports of one name, are told", () => {
    const { supports } = fourPost.lift;
    const of = (changed: readonly Support[]): string =>
      word({ ...fourPost, lift: { ...fourPost.lift, kind: "other", supports: changed } }).sentence;
    expect(of(supports.map((s) => ({ ...s, share: known(0.2) })))).toContain("80 % of the load");
    expect(of(supports.map((s) => ({ ...s, id: "post", share: known(0.3) })))).toContain('called "post"');
  });

  test("a one-post lift stands at `left` and looks at `right`: the two-post column with the whole load", () => {
    const { supports: _, ...lift } = twoPost.lift;
    const one: Job = { ...twoPost, lift: { ...lift, supports: [], kind: "one-post", rated: known(20_000) } };
    const margin = word(one);
    expect(margin.checks.some((c) => c.id.startsWith("slab-first-crack"))).toBe(true);
    expect(margin.verdict).not.toBe("not-computed");
  });

  test("no number is missing or infinite by accident in either demo", () => {
    for (const job of [fourPost, rolling])
      expect(
        JSON.stringify(whole(job), (_, v) => (typeof v === "number" && Number.isNaN(v) ? "NaN!" : v)),
      ).not.toContain("NaN!");
  });
});

test("anchors of a column turned about its axis are judged along the plate's own sides", () => {
  const own = { joints: [], cracks: [] };
  const straight = word(turned(0, own));
  // the same lift at another angle in the bay: the breakout bodies turn with it
  for (const { id, ratio: r, group } of word(turned(31, own)).checks)
    if (group === "anchors" && !id.includes("edge"))
      expect(Math.abs(r / ratio(straight, id) - 1), id).toBeLessThan(0.01);
});

test("a pad counts by its upright part, and the demand says so", () => {
  const heated = example("new-heated-shop.yaml");
  const sloped = (sideSlope: number): Job => ({
    ...heated,
    floor: { ...heated.floor, zones: heated.floor.zones.map((z) => ({ ...z, sideSlope })) },
  });
  expect(crack(sloped(1))).toBeCloseTo(crack(sloped(0)), 9);
  const said = word(sloped(1)).checks.find((c) => c.id === "slab-first-crack")!.demand.from ?? [];
  expect(said.some((t) => t.words.includes("upright part only"))).toBe(true);
});
