import { type Candidate, findCandidates } from "@floorworthy/manuals";
import { expect, test } from "vitest";
import { heading, note, pageOf, paragraph, table } from "./said.ts";

const short = ({ field, written, model, confidence }: Candidate) => [field, written, model, confidence] as const;

test("one column per model", () => {
  const { candidates, models } = findCandidates([
    pageOf([
      table([
        ["Model", "QZ-9", "QZ-12"],
        ["Minimum concrete thickness", "5 in.", "6 in."],
        ["Anchors per column", "5", "6"],
      ]),
    ]),
  ]);
  expect(models).toEqual(["QZ-9", "QZ-12"]);
  expect(candidates.map(short)).toEqual([
    ["asks.thickness", "5 in", "QZ-9", "sure"],
    ["asks.thickness", "6 in", "QZ-12", "sure"],
    ["anchors.count", "5", "QZ-9", "sure"],
    ["anchors.count", "6", "QZ-12", "sure"],
  ]);
});

test("a row that says the same for every model holds for all", () => {
  const { candidates } = findCandidates([
    pageOf([
      table([
        ["Model", "QZ-9", "QZ-12"],
        ["Concrete thickness", "6 in.", "6 in."],
      ]),
    ]),
  ]);
  expect(candidates.map(short)).toEqual([["asks.thickness", "6 in", undefined, "sure"]]);
});

test("one model per row", () => {
  const { candidates } = findCandidates([
    pageOf([
      table([
        ["Model", "Rated capacity", "Slab thickness"],
        ["QZ-9", "9,000 lb", "5 in."],
        ["QZ-12", "12,000 lb", "6 in."],
      ]),
    ]),
  ]);
  expect(candidates.filter(({ model }) => model === "QZ-12").map(short)).toEqual([
    ["rated", "12,000 lb", "QZ-12", "sure"],
    ["asks.thickness", "6 in", "QZ-12", "sure"],
  ]);
});

test("the unit in the label, and in a column of its own", () => {
  const { candidates } = findCandidates([
    pageOf([
      table([
        ["Technical data", "Unit", "Value"],
        ["Anchor torque", "N·m", "110"],
      ]),
      table([
        ["Concrete thickness [mm]", "160"],
        ["Embedment (mm)", "90"],
      ]),
    ]),
  ]);
  expect(candidates.map(({ written }) => written)).toEqual(["90 mm", "110 N·m", "160 mm"]);
});

test("a note changes one model's value: both are kept, the note is proposed", () => {
  const { candidates } = findCandidates([
    pageOf([
      paragraph("Models QZ-9 and QZ-12."),
      table([
        ["Concrete thickness *", "5 in."],
        ["Anchor torque", "100 ft-lb"],
      ]),
      note("* 6 in. for model QZ-12."),
    ]),
  ]);
  expect(candidates.filter(({ field }) => field === "asks.thickness").map(short)).toEqual([
    ["asks.thickness", "5 in", undefined, "sure"],
    ["asks.thickness", "6 in", "QZ-12", "sure"],
  ]);
});

test("a heading that names one model holds until the next heading, over the page's end", () => {
  const { candidates } = findCandidates([
    pageOf([paragraph("Models QZ-9 and QZ-12."), heading("Model QZ-12")]),
    pageOf(
      [
        paragraph("The concrete must be 6 in. thick.", 2),
        heading("All models"),
        paragraph("Torque the anchors to 100 ft-lb.", 2),
      ],
      2,
    ),
  ]);
  expect(candidates.map(short)).toEqual([
    ["anchors.torque", "100 lb-ft", undefined, "sure"],
    ["asks.thickness", "6 in", "QZ-12", "sure"],
  ]);
});

test("two pages that disagree stand side by side and neither stays sure", () => {
  const { candidates } = findCandidates([
    pageOf([paragraph("The concrete must be at least 5 in. thick.")]),
    pageOf([paragraph("Slab thickness: 6 in. minimum.", 2)], 2),
  ]);
  expect(candidates.map(({ confidence, conflicts }) => [confidence, conflicts.length])).toEqual([
    ["likely", 1],
    ["likely", 1],
  ]);
  expect(candidates[0]!.reasons).toContain("page 2 says 6 in");
});
