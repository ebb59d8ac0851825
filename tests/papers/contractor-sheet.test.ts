import type { Assessment } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { contractorSheet, type Drawing, onPaper, type Paper } from "@floorworthy/papers";
import { describe, expect, test } from "vitest";
import { assessmentOf, newPour, standing, standingAssessment, strip } from "./fixtures.ts";
import { dimensionsOf, groundOf, overlaps, readFigure, strays, wordsOf } from "./reading-back.ts";

const sheetOf = (job: Job, assessment: Assessment, paper: Paper = "letter"): Drawing => {
  const sheet = contractorSheet(job, assessment, { date: "2026-05-05", paper });
  if (isUnable(sheet)) throw new Error(sheet.reason);
  expect(sheet).toHaveLength(1);
  return sheet[0]!;
};

const cases = [
  ["new pour", newPour, assessmentOf(newPour)],
  ["standing floor", standing, standingAssessment],
  ["strip in an old floor", strip, assessmentOf(strip)],
] as const;

describe.each(cases)("%s", (_, job, assessment) => {
  test.each(["letter", "a4"] as const)("one %s page, nothing outside the margin, no words over words", (paper) => {
    const sheet = sheetOf(job, assessment, paper);
    expect(strays(sheet, 7.9)).toEqual([]);
    expect(overlaps(sheet)).toEqual([]);
  });

  test("every figure equals what it measures, to half a sixteenth of an inch or half a millimetre", () => {
    const sheet = sheetOf(job, assessment);
    const figures = dimensionsOf(groundOf(sheet)).filter((d) => d.axis !== "aligned");
    expect(figures.length).toBeGreaterThan(6);
    for (const { axis, from, to, words } of figures) {
      const length = axis === "x" ? to.x - from.x : to.y - from.y;
      expect(Math.abs(readFigure(words) - Math.abs(length))).toBeLessThanOrEqual(
        job.units === "si" ? 0.5 : 25.4 / 32 + 1e-9,
      );
    }
  });

  test("the columns are set out from the left and the back wall", () => {
    const sheet = sheetOf(job, assessment);
    const figures = dimensionsOf(groundOf(sheet));
    const { left, right } = job.position!;
    const has = (axis: "x" | "y", a: number, b: number) =>
      figures.some((d) => d.axis === axis && Math.abs(d.from[axis] - a) < 0.01 && Math.abs(d.to[axis] - b) < 0.01);
    expect(has("x", 0, left.x)).toBe(true);
    expect(has("x", left.x, right.x)).toBe(true);
    expect(has("y", 0, left.y)).toBe(true);
  });

  test("what is drawn is to the scale that is written", () => {
    const sheet = sheetOf(job, assessment);
    const ground = groundOf(sheet);
    const slab = onPaper(sheet).find((m) => m.kind === "path" && m.tag === "slab");
    const bay = job.bay.outline!;
    const widths = slab?.kind === "path" ? slab.points.map((p) => p.x) : [];
    const drawn = Math.max(...widths) - Math.min(...widths);
    expect(drawn * ground.scale).toBeCloseTo(bay[1]!.x - bay[0]!.x, 6);
    const ratio = /1:(\d+)/.exec(ground.written)?.[1];
    const fraction = /^(\d+)?\s?(?:(\d+)\/(\d+))? in = 1 ft$/.exec(ground.written);
    const inches = fraction
      ? Number(fraction[1] ?? 0) + (fraction[3] ? Number(fraction[2]) / Number(fraction[3]) : 0)
      : 0;
    expect(ground.scale).toBe(ratio ? Number(ratio) : 12 / inches);
  });

  test("it says what it is not, and leaves fields to be signed by hand", () => {
    const words = wordsOf(sheetOf(job, assessment)).join(" ");
    expect(words).toContain("It is not an engineer's design or approval.");
    expect(words).toContain("Checked on site by");
    expect(words).not.toMatch(/approved|certified|sealed/i);
    for (const caution of assessment.cautions) expect(words).toContain(caution);
    for (const condition of assessment.conditions) expect(words).toContain(condition);
  });
});

test("the figures of the pour are on the sheet", () => {
  const words = wordsOf(sheetOf(newPour, assessmentOf(newPour))).join(" ");
  for (const figure of [
    "5'-0\" × 5'-0\" × 12 in",
    "4,000 psi",
    "8 in from any anchor",
    "2026-06-15",
    "12.00 cu yd",
    "3 in beyond",
  ]) {
    expect(words).toContain(figure);
  }
});

test("a standing floor that is accepted gets no concrete", () => {
  const words = wordsOf(sheetOf(standing, standingAssessment)).join(" ");
  expect(words).toContain("no concrete is to be poured");
  expect(words).not.toContain("cu yd");
  expect(words).toContain("5 5/8 in");
});

describe("no sheet where the tool must stop", () => {
  const stop = {
    id: "post-tension",
    outcome: "refer",
    reason: "A post-tension stamp was seen.",
    next: "Ask a licensed engineer before any hole.",
  } as const;
  const refused = (job: Job, more: Partial<Assessment>) => {
    const sheet = contractorSheet(job, assessmentOf(job, more), { date: "2026-05-05", paper: "letter" });
    return isUnable(sheet) ? sheet.reason : undefined;
  };

  test("a stop refuses whatever the outcome says", () => {
    for (const outcome of ["accept", "accept-if", "pour", "wait", "refer", "refuse", "hold"] as const) {
      expect(refused(newPour, { outcome, stops: [stop] })).toContain("post-tension stamp");
      expect(refused(standing, { outcome, stops: [stop] })).toContain("licensed engineer");
    }
  });

  test.each(["refer", "refuse", "out-of-service", "hold", "shift", "lighter-lift"] as const)(
    "%s refuses with its reason",
    (outcome) => {
      expect(refused(newPour, { outcome, reasons: ["Because of this."] })).toContain("Because of this.");
    },
  );

  test("a pour without a pad drawn is refused, not guessed", () => {
    expect(refused(standing, { outcome: "pour" })).toContain("none is drawn");
  });

  test("a job without any place is refused", () => {
    const bare: Job = { ...standing, bay: { ...standing.bay, outline: undefined, walls: [] }, position: undefined };
    expect(refused(bare, { outcome: "accept" })).toContain("place");
  });
});

test("regression only: the words of the sheet and where they stand", async () => {
  const marks = onPaper(sheetOf(newPour, assessmentOf(newPour))).flatMap((m) =>
    m.kind === "text" ? [`${m.at.x.toFixed(1)} ${m.at.y.toFixed(1)} ${m.tag}: ${m.words}`] : [],
  );
  await expect(`${marks.join("\n")}\n`).toMatchFileSnapshot("../golden/contractor-sheet-new-pour.txt");
});
