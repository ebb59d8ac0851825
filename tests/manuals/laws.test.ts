import { readLift } from "@floorworthy/job";
import { type Candidate, findCandidates, layOut, liftSheet, readGlyphs, readingOf } from "@floorworthy/manuals";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pdfLibrary, reportFamilies } from "./corpus/index.ts";
import { pageOf, paragraph } from "./said.ts";

interface Asked {
  readonly thickness: number;
  readonly psi: number;
  readonly edge: number;
  readonly embedment: number;
  readonly torque: number;
  readonly load: number;
}

const asked: fc.Arbitrary<Asked> = fc.record({
  thickness: fc.integer({ min: 20, max: 40 }).map((quarters) => quarters / 4),
  psi: fc.integer({ min: 5, max: 12 }).map((n) => 500 * n),
  edge: fc.integer({ min: 8, max: 40 }).map((halves) => halves / 2),
  embedment: fc.integer({ min: 20, max: 32 }).map((eighths) => eighths / 8),
  torque: fc.integer({ min: 60, max: 180 }),
  load: fc.integer({ min: 12, max: 40 }).map((n) => 500 * n),
});

const sentences = (a: Asked, system: "inch-pound" | "si"): readonly string[] => {
  const si = system === "si";
  const length = (n: number) => (si ? `${(25.4 * n).toFixed(2)} mm` : `${n} in.`);
  const strength = si ? `${(a.psi * 0.006894757293168).toFixed(3)} MPa` : `${a.psi} psi`;
  const torque = si ? `${(a.torque * 1.3558179483314).toFixed(2)} N·m` : `${a.torque} ft-lb`;
  const load = si ? `${(a.load * 0.45359237).toFixed(2)} kg` : `${a.load} lb`;
  return [
    `The lift has a rated capacity of ${load}.`,
    `The slab must be at least ${length(a.thickness)} thick and have a compressive strength of ${strength} or greater.`,
    `Anchors shall be no closer than ${length(a.edge)} to a slab edge.`,
    `Minimum anchor embedment is ${length(a.embedment)}; torque the anchors to ${torque}.`,
  ];
};

const sheetOf = (lines: readonly string[]) => {
  const { candidates } = findCandidates([pageOf(lines.map((text, i) => paragraph(text, 1, i)))]);
  const read = readLift(liftSheet(candidates, undefined, { name: "Invented" }).text);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.lift;
};

const numbersOf = (lift: ReturnType<typeof sheetOf>): readonly number[] =>
  [
    lift.rated,
    lift.asks.thickness,
    lift.asks.strength,
    lift.asks.edge,
    lift.anchors.product.nominalEmbedment,
    lift.anchors.torque,
  ].map((fact) => (fact.known ? fact.value : Number.NaN));

describe("laws", () => {
  test("the same manual in psi and in MPa gives the same sheet", () => {
    fc.assert(
      fc.property(asked, (a) => {
        const [inch, si] = [numbersOf(sheetOf(sentences(a, "inch-pound"))), numbersOf(sheetOf(sentences(a, "si")))];
        inch.forEach((value, i) => {
          expect(si[i]! / value).toBeCloseTo(1, 3);
        });
      }),
      { numRuns: 40 },
    );
  });

  test("the order of sentences does not matter", () => {
    fc.assert(
      fc.property(asked, fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4, maxLength: 4 }), (a, order) => {
        const lines = sentences(a, "inch-pound");
        expect(numbersOf(sheetOf(order.map((i) => lines[i]!)))).toEqual(numbersOf(sheetOf(lines)));
      }),
      { numRuns: 30 },
    );
  });

  test("the order of pages does not matter", async () => {
    for (const family of reportFamilies.filter(({ name }) => /margin keys|lettered|disagree/.test(name))) {
      const manual = await family.build(31, "si");
      const glyphs = await readGlyphs(await pdfLibrary(), manual.bytes);
      if (!glyphs.ok) throw new Error("not read");
      const said = (list: readonly Candidate[]) =>
        list.map((c) => `${c.field} ${c.found.value} ${c.model ?? ""}`).sort();
      const forth = findCandidates(layOut(glyphs.pages));
      const back = findCandidates(layOut([...glyphs.pages].reverse()));
      expect(said(back.candidates)).toEqual(said(forth.candidates));
    }
  });

  test("a sheet made from a manual can be read, and cites page and document", async () => {
    for (const family of reportFamilies) {
      const manual = await family.build(32, family.systems[0]!);
      const reading = readingOf(await readGlyphs(await pdfLibrary(), manual.bytes));
      if (!reading.ok) throw new Error("not read");
      for (const model of reading.models) {
        const read = readLift(liftSheet(reading.candidates, model, { document: "invented.pdf" }).text);
        expect(read.ok ? [] : read.issues.map(({ message }) => message)).toEqual([]);
        if (!read.ok || !read.lift.asks.strength.known) continue;
        expect(read.lift.asks.strength.basis).toMatchObject({ kind: "documented", document: "invented.pdf" });
      }
    }
  });
});
