import { readLift } from "@floorworthy/job";
import { type Candidate, changed, confirmed, findCandidates, liftSheet } from "@floorworthy/manuals";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { foundIn, pageOf, paragraph } from "./said.ts";

const liftOf = (text: string) => {
  const read = readLift(text);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.lift;
};

const twoPages = () =>
  findCandidates([
    pageOf([
      paragraph("The concrete must be at least 5 in. thick."),
      paragraph("Torque the anchors to 90 ft-lb.", 1, 1),
    ]),
    pageOf([paragraph("Slab thickness: 6 in. minimum.", 2), paragraph("Anchor torque 120 ft-lb.", 2, 1)], 2),
  ]).candidates;

const only = (candidates: readonly Candidate[], written: string) => candidates.find((c) => c.written === written)!;

describe("the lift sheet", () => {
  test("of two pages the more demanding thickness is proposed; of two torques none", () => {
    const { text, asked, doubts } = liftSheet(twoPages(), undefined, { name: "Invented", document: "m.pdf" });
    const lift = liftOf(text);
    expect(lift.asks.thickness).toMatchObject({
      written: "6 in",
      basis: { kind: "documented", document: "m.pdf", page: "2" },
    });
    expect(lift.anchors.torque.known).toBe(false);
    expect(asked.find(({ field }) => field === "anchors.torque")!.question).toBe(
      "Open: the torque of the anchors. The manual says 90 lb-ft (page 1) or 120 lb-ft (page 2).",
    );
    expect(doubts.join(" ")).toContain("page 1 says 5 in. The more demanding one is proposed.");
  });

  test("what is doubtful is asked for, never written", () => {
    const { text, asked, doubts } = liftSheet(foundIn("Use 3,000 lb concrete for the floor."), undefined, {
      name: "Invented",
    });
    expect(liftOf(text).asks.strength.known).toBe(false);
    expect(asked.map(({ field }) => field)).toContain("asks.strength");
    expect(doubts[0]).toMatch(/^the least compressive strength of the concrete, page 1: 3,000 psi\. /);
  });

  test("a range of torque is kept as a range; a rectangle of four holes becomes holes", () => {
    const { text } = liftSheet(
      foundIn(
        "Torque the anchors to 85 to 110 ft-lb.",
        "Each column is held by 4 anchors.",
        "The base plate has a hole pattern of 14 in. x 12 in.",
      ),
      undefined,
      { name: "Invented" },
    );
    const { anchors } = liftOf(text);
    expect(
      anchors.torque.known && [anchors.torque.low, anchors.torque.high].map((t) => Math.round(t / 1355.818)),
    ).toEqual([85, 110]);
    expect(anchors.holes.map(({ at }) => [at.x, at.y].map((mm) => Number((mm / 25.4).toFixed(2))))).toEqual([
      [-7, -6],
      [-7, 6],
      [7, -6],
      [7, 6],
    ]);
  });

  test("text of the manual cannot break the sheet's form", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.string({ maxLength: 30 }), (line, document) => {
        const candidates = foundIn(`${line} concrete slab 6 in. thick`);
        const name = document.trim() === "" ? "x" : "Invented";
        expect(readLift(liftSheet(candidates, undefined, { name, document: `m${document}` }).text).ok).toBe(true);
      }),
      { numRuns: 150 },
    );
  });
});

describe("a person confirms", () => {
  test("an accepted value stands alone, a rejected one is gone, a changed one is as written", () => {
    const candidates = twoPages();
    const [five, ninety] = [only(candidates, "5 in"), only(candidates, "90 lb-ft")];
    const change = changed(ninety, "95 lb-ft");
    if (!change.ok) throw new Error(change.message);
    const after = confirmed(
      candidates,
      new Map([
        [five.id, { kind: "accepted" as const }],
        [ninety.id, { kind: "changed" as const, to: change.candidate }],
      ]),
    );
    const lift = liftOf(liftSheet(after, undefined, { name: "Invented" }).text);
    expect(lift.asks.thickness).toMatchObject({ written: "5 in" });
    expect(lift.anchors.torque).toMatchObject({ written: "95 lb-ft" });
    expect(
      confirmed(candidates, new Map([[five.id, { kind: "rejected" as const }]])).map(({ id }) => id),
    ).not.toContain(five.id);
  });

  test("a change that is no such quantity is refused in words", () => {
    expect(changed(only(twoPages(), "5 in"), "5 lb")).toMatchObject({
      ok: false,
      message: '"5 lb" is a weight or force; a length was expected.',
    });
    expect(changed(only(twoPages(), "5 in"), "0")).toMatchObject({ ok: false });
  });
});

test("no text makes the reader fall over or print a number that is none", () => {
  const scraps = fc.constantFrom(
    "concrete",
    "slab",
    "6",
    "1/2",
    "4-",
    "in.",
    "mm",
    "psi",
    "thick",
    "anchor",
    "torque",
    "x",
    "to",
    ",",
    ":",
    "M16",
    "C25/30",
    "¼",
    "%",
    "±",
    "(",
    ")",
    "lb",
    "ft",
    "'",
    '"',
    "edge",
    "10 000",
    "99999999999999999999",
  );
  fc.assert(
    fc.property(fc.array(fc.oneof(scraps, fc.string({ maxLength: 6 })), { maxLength: 30 }), (words) => {
      for (const { found } of foundIn(words.join(" ")))
        if (found.kind === "number") expect(Number.isFinite(found.value)).toBe(true);
    }),
    { numRuns: 400 },
  );
});
