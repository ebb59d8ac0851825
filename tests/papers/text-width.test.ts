/** The table of advance widths laid beside the font files it was read from: DejaVu Sans Condensed 2.37 (dejavu-fonts-ttf). */
import { createRequire } from "node:module";
import { boxOfText, widthOfText, wrapText } from "@floorworthy/papers";
import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";

const file = (name: string) => createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);
const off = { features: { kern: false, liga: false } } as unknown as PDFKit.Mixins.TextOptions;

describe("advance widths", () => {
  test.each([
    ["regular", "DejaVuSansCondensed"],
    ["bold", "DejaVuSansCondensed-Bold"],
  ] as const)("%s letters are as wide as in the font file", (lettering, name) => {
    const doc = new PDFDocument().font(file(name)).fontSize(1000);
    for (const letter of "ABCXYZabcmxyz0123456789 .,;:-/'\"#×³²°·≥≤–—…éöüß") {
      expect(widthOfText(letter, 1000, lettering)).toBeCloseTo(doc.widthOfString(letter, off), 1);
    }
  });

  test("a sentence is as wide as its letters", () => {
    const doc = new PDFDocument().font(file("DejaVuSansCondensed")).fontSize(10);
    const words = "Net 10.98 cu yd; with 7 % waste 11.75";
    expect(widthOfText(words, 10, "regular")).toBeCloseTo(doc.widthOfString(words, off), 2);
  });

  test("an unknown letter counts a full em, never nothing", () => {
    expect(widthOfText("漢", 3, "regular")).toBe(3);
  });
});

describe("wrapping", () => {
  const words = "Cylinder strength at 28 days at least 4,000 psi and 5 5/8 in at the left base";

  test("no line is wider than the column and no word is lost", () => {
    for (const width of [12, 20, 35, 60]) {
      const lines = wrapText(words, 2.5, "regular", width);
      for (const line of lines) expect(widthOfText(line, 2.5, "regular")).toBeLessThanOrEqual(width);
      expect(lines.join(" ")).toBe(words);
    }
  });

  test("a number stays with its fraction and its unit", () => {
    for (let width = 14; width < 60; width++) {
      for (const line of wrapText(words, 2.5, "regular", width)) expect(line).not.toMatch(/(^| )5$|4,000$|5\/8$/);
    }
  });

  test("a word longer than the column is cut", () => {
    const lines = wrapText("a".repeat(80), 3, "bold", 10);
    expect(lines.length).toBeGreaterThan(5);
    expect(lines.join("")).toBe("a".repeat(80));
  });
});

test("the box of upward text is the box of level text turned", () => {
  const text = { words: "11'-0\"", size: 2, align: "middle", lettering: "regular", at: { x: 0, y: 0 } } as const;
  const level = boxOfText({ ...text, reads: "across" });
  const upward = boxOfText({ ...text, reads: "upward" });
  expect(upward.x1 - upward.x0).toBeCloseTo(level.y1 - level.y0, 9);
  expect(upward.y1 - upward.y0).toBeCloseTo(level.x1 - level.x0, 9);
  expect(upward.x0).toBeCloseTo(level.y0, 9);
});
