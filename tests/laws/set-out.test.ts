/** Geometry of the set-out, and what a hole and its anchor must leave. Laws; no published source. */
import type { Assessment } from "@floorworthy/assess";
import { setOut } from "@floorworthy/assess/setout";
import { distance, distanceToLine } from "@floorworthy/engine/geometry";
import { isUnable, toBase } from "@floorworthy/engine/quantities";
import { type Job, unknown } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assessmentOf, jobOf, known } from "../installing/jobs.ts";

const plain = jobOf("records-in-hand");
const accepted = assessmentOf("records-in-hand");

/** Bases of another position, turned about the middle by `turn`, with the ruling of the example. */
const placed = (job: Job, turn = 0, dx = 0, dy = 0): Assessment => {
  const [left, right] = accepted.layout.bases;
  const middle = { x: (left!.centre.x + right!.centre.x) / 2, y: left!.centre.y };
  const move = (p: { x: number; y: number }) => {
    const [x, y] = [p.x - middle.x, p.y - middle.y];
    return {
      x: middle.x + dx + x * Math.cos(turn) - y * Math.sin(turn),
      y: middle.y + dy + x * Math.sin(turn) + y * Math.cos(turn),
    };
  };
  return {
    ...accepted,
    title: job.title,
    layout: {
      ...accepted.layout,
      bases: accepted.layout.bases.map((base) => ({
        ...base,
        centre: move(base.centre),
        outline: base.outline.map(move),
        anchors: base.anchors.map(({ id, at }) => ({ id, at: move(at) })),
      })),
    },
  };
};

const made = (job: Job, assessment: Assessment = accepted) => {
  const answer = setOut(job, assessment);
  if (isUnable(answer)) throw new Error(answer.reason);
  return answer;
};

const mm = (term: { value: number; unit: Parameters<typeof toBase>[1] }) => toBase(term.value, term.unit);
const turns = fc.tuple(
  fc.double({ min: -0.6, max: 0.6, noNaN: true }),
  fc.double({ min: -500, max: 500, noNaN: true }),
  fc.double({ min: -500, max: 500, noNaN: true }),
);

describe("marks from two walls", () => {
  test("every hole's figures are its distances square to the walls", () =>
    fc.assert(
      fc.property(turns, ([turn, dx, dy]) => {
        const assessment = placed(plain, turn, dx, dy);
        const { holes, columns } = made(plain, assessment);
        const wall = (name: string) => plain.bay.walls.find((w) => w.name === name)!;
        const anchors = assessment.layout.bases.flatMap((base) => base.anchors);
        expect(holes.map((h) => h.id)).toEqual(anchors.map((a) => a.id));
        for (const mark of [...holes, ...columns]) {
          const at = anchors.find((a) => a.id === mark.id)?.at ?? mark.at;
          const left = wall("left wall");
          const back = wall("back wall");
          expect(mm(mark.x)).toBeCloseTo(Math.abs(distanceToLine(at, { a: left.from, b: left.to })), 6);
          expect(mm(mark.y)).toBeCloseTo(Math.abs(distanceToLine(at, { a: back.from, b: back.to })), 6);
        }
      }),
    ));

  test("diagonals are the distances between the marks; equal only where the lift stands square", () =>
    fc.assert(
      fc.property(turns, ([turn, dx, dy]) => {
        const { square, holes } = made(plain, placed(plain, turn, dx, dy));
        const at = (id: string) => holes.find((h) => h.id === id)!.at;
        const outer = square.find((s) => s.id === "outer-holes")!;
        for (const d of outer.diagonals) expect(mm(d.length)).toBeCloseTo(distance(at(d.from.id), at(d.to.id)), 6);
        expect(mm(outer.diagonals[0].length)).toBeCloseTo(mm(outer.diagonals[1].length), 6);
        expect(new Set(outer.diagonals.flatMap((d) => [d.from.id, d.to.id]))).toEqual(
          new Set(["L1", "R3", "L3", "R1"]),
        );
        const [a, b] = square.find((s) => s.id === "base-line")!.diagonals;
        if (Math.abs(turn) > 0.01) expect(Math.abs(mm(a.length) - mm(b.length))).toBeGreaterThan(6);
        else if (turn === 0) expect(mm(a.length)).toBeCloseTo(mm(b.length), 6);
      }),
    ));

  test("worked by hand: columns 128 in apart, 240 in from the back wall: both diagonals 272 in", () => {
    const [a, b] = made(plain).square[0]!.diagonals;
    expect(mm(a.length) / 25.4).toBeCloseTo(272, 9);
    expect(mm(b.length) / 25.4).toBeCloseTo(272, 9);
  });
});

test("nuts are drawn down crosswise: each nut once, the next never beside the last while a farther one is left", () => {
  for (const { side, order } of made(plain).torque.patterns) {
    const anchors = accepted.layout.bases.find((b) => b.side === side)!.anchors;
    expect(order.toSorted()).toEqual(anchors.map((a) => a.id).toSorted());
    order.slice(1).forEach((id, i) => {
      const at = (name: string) => anchors.find((a) => a.id === name)!.at;
      for (const later of order.slice(i + 1))
        expect(distance(at(order[i]!), at(id))).toBeGreaterThanOrEqual(distance(at(order[i]!), at(later)) - 1e-6);
    });
  }
});

describe("hole and anchor", () => {
  const withProduct = (
    change: Partial<Job["lift"]["anchors"]["product"]>,
    levels: Job["installation"] = plain.installation,
  ): Job => ({
    ...plain,
    installation: levels,
    lift: { ...plain.lift, anchors: { ...plain.lift.anchors, product: { ...plain.lift.anchors.product, ...change } } },
  });
  const levelled = (fall: number): Job["installation"] => ({
    ...plain.installation!,
    levels: (["left", "right"] as const).flatMap((base) =>
      (["back-left", "back-right", "front-left", "front-right"] as const).map((corner) => ({
        base,
        corner,
        level: known(corner.startsWith("back") ? fall : 0),
      })),
    ),
  });

  test("by hand: 6 1/2 - 4 - 3/4 - 0.177 - 0.665 - 2/10 in leaves 0.708 in for shims", () => {
    const { hole } = made(plain);
    expect(mm(hole.shimRoom!) / 25.4).toBeCloseTo(0.708, 9);
    expect(mm(hole.projection!) / 25.4).toBeCloseTo(2.5, 9);
    expect(mm(hole.coverBelow!) / 25.4).toBeCloseTo(6.625 - 4.5, 9);
  });

  test("an anchor too short for the shim stack takes the drilling away, and only then", () =>
    fc.assert(
      fc.property(fc.double({ min: 5, max: 8, noNaN: true }), fc.integer({ min: 0, max: 8 }), (length, sixteenths) => {
        const job = withProduct({ length: known(length * 25.4) }, levelled((sixteenths * 25.4) / 16));
        const answer = made(job);
        const stack = mm(answer.hole.shims) / 25.4;
        const short = length < 4 + 0.75 + 0.177 + 0.665 + 0.2 + stack - 1e-9;
        expect(answer.drilling).toBe(short ? "marks-only" : "may-drill");
        expect(answer.before.some((w) => w.includes("too short"))).toBe(short);
      }),
    ));

  test("a hole as deep as the slab, a slab under the sheet's thickness, a hole shallower than the anchor: nothing is drilled", () => {
    for (const change of [
      { holeDepth: known(6.7 * 25.4) },
      { minimumThickness: known(7 * 25.4) },
      { holeDepth: known(3.5 * 25.4) },
    ]) {
      const answer = made(withProduct(change));
      expect(answer.drilling).toBe("marks-only");
      expect(answer.order.join(" ")).not.toMatch(/bit of the anchor/);
    }
  });

  test("whatever is unknown is named, never guessed, and nothing is drilled", () => {
    for (const key of ["holeDiameter", "holeDepth", "nominalEmbedment", "length", "diameter"] as const) {
      const answer = made(withProduct({ [key]: unknown }));
      expect(answer.drilling, key).toBe("marks-only");
      expect(JSON.stringify(answer), key).not.toMatch(/null|NaN/);
    }
  });
});

describe("refused", () => {
  test("without the anchor's own sheet, known missing or not spoken of", () => {
    for (const sheet of [
      unknown,
      { known: true as const, value: "missing" as const, basis: { kind: "stated" as const } },
    ]) {
      const product = { ...plain.lift.anchors.product, sheet };
      const job = { ...plain, lift: { ...plain.lift, anchors: { ...plain.lift.anchors, product } } };
      const answer = setOut(job, accepted);
      expect(isUnable(answer) && answer.reason).toMatch(/anchor's own sheet/);
    }
  });

  test.each([
    "stamp-at-the-door",
    "store-room-below",
    "four-inches-that-are-not",
    "new-heated-shop",
    "saw-cut-in-the-way",
  ])("%s", (name) => expect(isUnable(setOut(jobOf(name), assessmentOf(name)))).toBe(true));

  test.each(["nine-cold-days", "steel-in-the-way"])("%s: marks only, with what is waited for", (name) => {
    const answer = setOut(jobOf(name), assessmentOf(name));
    expect(!isUnable(answer) && answer.drilling).toBe("marks-only");
    expect(!isUnable(answer) && answer.before[0]).toMatch(/2025-03-04|R4: the drill met a bar/);
  });
});
