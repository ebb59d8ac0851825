import { planSurvey, tapeWords } from "@floorworthy/assess/survey";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { type Drawing, drawingToSvg, drillCard, type Paper, referralSheet } from "@floorworthy/papers";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { surveyBays } from "../survey-bays.ts";
import { assessmentOf, newPour, standing, strip } from "./fixtures.ts";
import { overlaps, strays, wordsOf } from "./reading-back.ts";

const unmeasured: Job = {
  ...standing,
  floor: {
    ...standing.floor,
    readings: [],
    heat: { known: false },
    utilities: { known: false },
    postTension: { known: false },
  },
};

const pageOf = (sheet: typeof drillCard, job: Job, paper: Paper = "letter", more = {}): Drawing => {
  const pages = sheet.draw(job, assessmentOf(job, more), { date: "2026-05-05", paper });
  if (isUnable(pages)) throw new Error(pages.reason);
  expect(pages).toHaveLength(1);
  return pages[0]!;
};

const clean = (page: Drawing): void => {
  expect(strays(page, 7.9)).toEqual([]);
  expect(overlaps(page)).toEqual([]);
  expect(wordsOf(page).join(" ")).not.toMatch(/approved|certified|passed|sealed/i);
  expect(drawingToSvg(page)).not.toMatch(/NaN|Infinity|undefined/);
};

const stop = {
  id: "post-tension",
  outcome: "refuse",
  reason: "The slab is stamped.",
  next: "An engineer looks first.",
} as const;

describe("drill card", () => {
  test.each(["letter", "a4"] as const)(
    "one clean %s page with every hole's tape figures, the mark and the stops",
    (paper) => {
      const page = pageOf(drillCard, unmeasured, paper);
      clean(page);
      const words = wordsOf(page).join(" ");
      const plan = planSurvey(unmeasured, assessmentOf(unmeasured));
      if (isUnable(plan)) throw new Error(plan.reason);
      expect(plan.holes.length).toBe(9);
      for (const { at } of plan.holes) {
        expect(words).toContain(tapeWords(at.x, "inch-pound"));
        expect(words).toContain(tapeWords(at.y, "inch-pound"));
      }
      expect(words).toContain("5 1/2 in from its tip");
      expect(words).toContain("Look first: no tick, no hole");
      expect(words).toContain("Stop at once");
      expect(words).toContain("Why a reading at the edge lies");
    },
  );

  test("the bit is drawn full size: from tip to tape as long as the mark", () => {
    const page = pageOf(drillCard, unmeasured);
    const lines = page.items.flatMap((item) =>
      item.kind === "dimension" && item.tag === "bit" ? [Math.abs(item.to.x - item.from.x)] : [],
    );
    expect(lines.length).toBe(3);
    expect(lines.reduce((a, b) => a + b, 0)).toBeCloseTo(5.5 * 25.4, 9);
  });

  test("none under a stop, none where nothing is to be drilled, each with the reason", () => {
    const refused = (job: Job, more = {}) => {
      const pages = drillCard.draw(job, assessmentOf(job, more), { date: "2026-05-05", paper: "letter" });
      return isUnable(pages) ? pages.reason : "drawn";
    };
    expect(refused(unmeasured, { stops: [stop] })).toContain("An engineer looks first.");
    expect(refused(newPour)).toContain("located");
    expect(refused({ ...newPour, floor: { ...newPour.floor, heat: unmeasured.floor.heat } })).toContain("poured");
  });

  test("any bay: one clean page", () => {
    fc.assert(
      fc.property(surveyBays, (job) => {
        const pages = drillCard.draw(job, assessmentOf(job), { date: "2026-05-05", paper: "letter" });
        if (isUnable(pages)) expect(pages.reason.length).toBeGreaterThan(10);
        else clean(pages[0]!);
      }),
      { numRuns: 12, endOnFailure: true },
    );
  });
});

describe("referral sheet", () => {
  test.each([
    ["standing", standing],
    ["new pour", newPour],
    ["strip", strip],
  ] as const)("%s: one clean page, with and without a stop", (_, job) => {
    clean(pageOf(referralSheet, job));
    const page = pageOf(referralSheet, job, "a4", { stops: [stop] });
    clean(page);
    const words = wordsOf(page).join(" ");
    expect(words).toContain("The customer was told: The slab is stamped.");
    expect(words).toContain("Not verified by anybody");
    expect(words).toMatch(/no strength of this floor is set against them/);
    expect(words).not.toMatch(/\b(ample|enough|meets)\b/);
  });

  test("nothing known: still a page", () => {
    const bare: Job = {
      ...standing,
      position: undefined,
      bay: { ...standing.bay, outline: undefined, walls: [], doors: [], obstacles: [] },
      floor: { ...standing.floor, joints: [], cracks: [], pipes: [], zones: [], readings: [] },
    };
    clean(pageOf(referralSheet, bare, "letter", { stops: [stop] }));
  });

  test("any bay: one clean page", () => {
    fc.assert(
      fc.property(surveyBays, (job) => clean(pageOf(referralSheet, job, "letter", { stops: [stop] }))),
      { numRuns: 12, endOnFailure: true },
    );
  });
});
