import { isUnable } from "@floorworthy/engine/quantities";
import { installerSheet } from "@floorworthy/papers";
import { templateDrawing, templatePages } from "@floorworthy/papers/base-template";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import { recordSheets } from "@floorworthy/papers/records";
import DxfParser from "dxf-parser";
import { describe, expect, test } from "vitest";
import { assessmentOf, jobOf } from "../installing/jobs.ts";
import { overlaps, strays, wordsOf } from "./reading-back.ts";

const examples = [
  "records-in-hand",
  "steel-in-the-way",
  "floor-that-falls",
  "nine-cold-days",
  "stamp-at-the-door",
  "saw-cut-in-the-way",
];
const options = (paper: "letter" | "a4") => ({ date: "2026-05-05", paper });
const sheets = [{ name: "installer", draw: installerSheet }, ...recordSheets];

describe.each(examples)("%s", (name) => {
  const job = jobOf(name);
  const assessment = assessmentOf(name);
  test.each(
    sheets.flatMap(({ name: sheet, draw }) =>
      (["letter", "a4"] as const).map((paper) => [sheet, paper, draw] as const),
    ),
  )("%s on %s: one clean page without a word of approval, or a reason", (sheet, paper, draw) => {
    const pages = draw(job, assessment, options(paper));
    const always = sheet === "inspection" || sheet === "out-of-service";
    const open = assessment.outcome === "accept" || assessment.outcome === "accept-if";
    if (isUnable(pages)) {
      expect(always || open).toBe(false);
      expect(pages.reason.length).toBeGreaterThan(20);
      return;
    }
    expect(pages).toHaveLength(1);
    expect(strays(pages[0]!, 7.9)).toEqual([]);
    expect(overlaps(pages[0]!)).toEqual([]);
    const words = wordsOf(pages[0]!).join(" ");
    expect(words.replace(/not an engineer's design or approval/g, "")).not.toMatch(
      /approv|certified|passed|NaN|undefined|\bseal\b/i,
    );
    if (assessment.stops.length > 0) expect(always).toBe(true);
  });
});

describe("marks only", () => {
  test.each(["nine-cold-days", "steel-in-the-way"])("%s: says so, and has no depth, bit or torque", (name) => {
    const pages = installerSheet(jobOf(name), assessmentOf(name), options("letter"));
    if (isUnable(pages)) throw new Error(pages.reason);
    const words = wordsOf(pages[0]!).join(" ");
    expect(words).toMatch(/MARKS ONLY/);
    expect(words).not.toMatch(/lb-ft|Bit marked|drill \d/);
  });
});

describe("template of the base plate", () => {
  const job = jobOf("records-in-hand");
  const { bases } = assessmentOf("records-in-hand").layout;

  test.each(["left", "right"])("%s: read back from DXF in mm, every hole has its place and size", (side) => {
    const base = bases.find((b) => b.side === side)!;
    const dxf = new DxfParser().parseSync(drawingToDxf(templateDrawing(job, base), "template"))!;
    expect(dxf.header.$INSUNITS).toBe(4);
    const circles = dxf.entities.filter((e) => e.type === "CIRCLE") as unknown as {
      layer: string;
      radius: number;
      center: { x: number; y: number };
    }[];
    expect(circles).toHaveLength(base.anchors.length);
    for (const { at } of base.anchors) {
      const hole = circles.find(
        (c) => Math.hypot(c.center.x - (at.x - base.centre.x), c.center.y + (at.y - base.centre.y)) < 1e-6,
      )!;
      expect(hole.radius).toBeCloseTo((0.75 * 25.4) / 2, 9);
      expect(hole.layer).toBe("HOLES");
    }
    const plate = dxf.entities.find((e) => e.layer === "PLATE") as unknown as { vertices: { x: number; y: number }[] };
    const width = Math.max(...plate.vertices.map((v) => v.x)) - Math.min(...plate.vertices.map((v) => v.x));
    expect(width).toBeCloseTo(19 * 25.4, 6);
    expect(new Set(dxf.entities.map((e) => e.layer))).toEqual(
      new Set(["PLATE", "HOLES", "HOLE_CENTRES", "AXES", "NAMES"]),
    );
  });

  test.each(["letter", "a4"] as const)(
    "%s: pages at 1:1 with a 100 mm line each; match marks agree; every hole is whole on a page or shared",
    (paper) => {
      const base = bases[0]!;
      const pages = templatePages(job, base, paper);
      expect(pages.length).toBeGreaterThan(1);
      const seen = new Map<string, number>();
      for (const page of pages) {
        const lines = page.items.flatMap((i) => (i.kind === "line" ? [i] : []));
        const check = lines
          .filter((l) => l.tag === "check-line")
          .map((l) => Math.hypot(l.to.x - l.from.x, l.to.y - l.from.y));
        expect(Math.max(...check)).toBeCloseTo(100, 9);
        expect(strays(page, 7)).toEqual([]);
        for (const item of page.items)
          if (item.kind === "text" && item.tag === "match-marks") seen.set(item.words, (seen.get(item.words) ?? 0) + 1);
      }
      expect([...seen.values()].every((n) => n >= 2)).toBe(true);
      // all strokes of the holes together are at least the circles' lengths
      const drawn = pages
        .flatMap((p) => p.items)
        .flatMap((i) =>
          i.kind === "line" && i.tag === "holes" ? [Math.hypot(i.to.x - i.from.x, i.to.y - i.from.y)] : [],
        )
        .reduce((sum, l) => sum + l, 0);
      expect(drawn).toBeGreaterThanOrEqual(base.anchors.length * Math.PI * 0.75 * 25.4 * 0.999);
    },
  );
});

test("the installer's sheet prints the set-out's own figures", () => {
  const pages = installerSheet(jobOf("records-in-hand"), assessmentOf("records-in-hand"), options("letter"));
  if (isUnable(pages)) throw new Error(pages.reason);
  const words = wordsOf(pages[0]!);
  for (const figure of [`8'-3/4"`, `19'-5 1/2"`, `19'-11 1/4"`, `20'-6 1/2"`]) expect(words).toContain(figure);
  const ground = pages[0]!.items.find((i) => i.kind === "ground" && i.name === "hole");
  expect(ground?.kind === "ground" && ground.scale).toBe(4);
});
