import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inflateSync } from "node:zlib";
import { isUnable } from "@floorworthy/engine/quantities";
import { contractorSheet, type Drawing, drawingToSvg, padSection, planDrawing } from "@floorworthy/papers";
import { drawingToDxf } from "@floorworthy/papers/dxf";
import { drawingToPdf } from "@floorworthy/papers/pdf";
import DxfParser from "dxf-parser";
import { afterAll, describe, expect, test } from "vitest";
import { assessmentOf, newPour, strip } from "./fixtures.ts";
import { dimensionsOf, groundOf, wordsOf } from "./reading-back.ts";

const date = "2026-05-05";
const sheet = contractorSheet(newPour, assessmentOf(newPour), { date, paper: "letter" });
if (isUnable(sheet)) throw new Error(sheet.reason);
const page = sheet[0]!;

const folder = mkdtempSync(join(tmpdir(), "papers-"));
afterAll(() => rmSync(folder, { recursive: true }));
const poppler = spawnSync("pdftotext", ["-v"]).status === 0;

/** Tags open and close in order, attributes are quoted, no stray ampersand or angle bracket. */
const wellFormed = (xml: string): boolean => {
  const open: string[] = [];
  const rest = xml.replace(
    /<(\/?)([a-z]+)((?:\s[a-zA-Z:-]+="[^"<]*")*)\s*(\/?)>/g,
    (_, close, name, _attributes, empty) => {
      if (close) {
        if (open.pop() !== name) open.push("!");
      } else if (!empty) open.push(name);
      return "";
    },
  );
  return open.length === 0 && !/[<>]/.test(rest) && !/&(?!(amp|lt|gt|quot);)/.test(xml);
};

describe("SVG", () => {
  const drawings = [page, planDrawing(newPour, assessmentOf(newPour)), padSection(strip, assessmentOf(strip))];
  test.each(drawings.map((d) => [d.title, d] as const))(
    "%s is well formed, titled, described and has no NaN",
    (_, drawing) => {
      const svg = drawingToSvg(drawing);
      expect(wellFormed(svg)).toBe(true);
      expect(svg).toContain("<title>");
      expect(svg).toContain("<desc>");
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(svg).toContain(`viewBox="0 0 ${drawing.width} ${drawing.height}"`);
    },
  );

  test("words are escaped", () => {
    const svg = drawingToSvg({ ...page, title: `<b> & "x"`, items: [] });
    expect(svg).toContain("&lt;b&gt; &amp; &quot;x&quot;");
    expect(wellFormed(svg)).toBe(true);
  });

  test("the checker of this test is awake", () => {
    expect(wellFormed("<g><path/></svg>")).toBe(false);
    expect(wellFormed("<g>a & b</g>")).toBe(false);
  });
});

/** The page's content stream, inflated. */
const contentOf = (pdf: Uint8Array): string => {
  const bytes = Buffer.from(pdf);
  const parts: string[] = [];
  let at = bytes.indexOf("stream\n");
  while (at >= 0) {
    const end = bytes.indexOf("endstream", at);
    try {
      parts.push(inflateSync(bytes.subarray(at + 7, end)).toString("latin1"));
    } catch {
      // not a deflated stream
    }
    at = bytes.indexOf("stream\n", end + 9);
  }
  return parts.filter((part) => / re\n| l\n/.test(part)).join("\n");
};

describe("PDF", () => {
  test("the same sheet twice gives the same bytes", async () => {
    const [a, b] = await Promise.all([1, 2].map(() => drawingToPdf(sheet, { title: page.title, date })));
    expect(Buffer.compare(Buffer.from(a!), Buffer.from(b!))).toBe(0);
  });

  test("a 10 ft line at 1/4 in = 1 ft is 2 1/2 in, that is 180 points, long", async () => {
    const drawing: Drawing = {
      title: "line",
      description: "a line",
      width: 215.9,
      height: 279.4,
      items: [
        {
          kind: "ground",
          tag: "plan",
          name: "plan",
          scale: 48,
          written: "1/4 in = 1 ft",
          origin: { x: 20, y: 30 },
          items: [{ kind: "line", tag: "walls", from: { x: 0, y: 0 }, to: { x: 3048, y: 0 }, pen: "edge" }],
        },
      ],
    };
    const content = contentOf(await drawingToPdf([drawing], { title: "line", date }));
    const scale = Number(/([\d.]+) 0 0 [\d.]+ 0 0 cm/.exec(content.replace(/^1 0 0 -1 .*$/m, ""))?.[1]);
    const [, x0, x1] = /([\d.]+) [\d.]+ m\s+([\d.]+) [\d.]+ l/.exec(content) ?? [];
    expect((Number(x1) - Number(x0)) * scale).toBeCloseTo(180, 2);
  });

  test.skipIf(!poppler)(
    "one tagged letter page, fonts embedded, all figures and cautions readable as text inside it",
    async () => {
      const file = join(folder, "sheet.pdf");
      writeFileSync(file, await drawingToPdf(sheet, { title: page.title, date }));
      const info = execFileSync("pdfinfo", [file], { encoding: "utf8" });
      expect(info).toMatch(/Pages:\s+1\n/);
      expect(info).toMatch(/Tagged:\s+yes/);
      expect(info).toMatch(/792 x 612 pts/);
      const fonts = execFileSync("pdffonts", [file], { encoding: "utf8" }).split("\n").slice(2).filter(Boolean);
      for (const font of fonts) expect(font).toMatch(/yes yes yes/);
      const bag = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }).replace(/\s+/g, "");
      for (const words of wordsOf(page)) if (words.length < 40) expect(bag).toContain(words.replace(/\s+/g, ""));
      const boxes = execFileSync("pdftotext", ["-bbox", file, "-"], { encoding: "utf8" });
      const places = [...boxes.matchAll(/xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)"/g)];
      expect(places.length).toBeGreaterThan(300);
      for (const [, x0, y0, x1, y1] of places) {
        expect(Number(x0)).toBeGreaterThan(20);
        expect(Number(y0)).toBeGreaterThan(20);
        expect(Number(x1)).toBeLessThan(792 - 20);
        expect(Number(y1)).toBeLessThan(612 - 20);
      }
    },
  );

  test.skipIf(!poppler)("the picture's alternative text tells the setting out", async () => {
    const file = join(folder, "alt.pdf");
    writeFileSync(file, await drawingToPdf(sheet, { title: page.title, date }));
    const tree = execFileSync("pdfinfo", ["-struct-text", file], { encoding: "utf8" });
    expect(tree).toContain("Figure");
    expect(page.description).toContain("left column is 7'-0\" from the left wall and 11'-0\" from the back wall");
    expect(readFileSync(file).length).toBeLessThan(400_000);
  });
});

describe("DXF, read back by another program's parser", () => {
  const text = drawingToDxf(page, "plan");
  const dxf = new DxfParser().parseSync(text)!;
  type Entity = { type: string; layer: string; vertices?: { x: number; y: number }[]; text?: string };
  const entities = dxf.entities as unknown as Entity[];

  test("the slab's edge has the bay's corners, full size in mm", () => {
    const slab = entities.find((e) => e.type === "LWPOLYLINE" && e.layer === "SLAB")!;
    expect(slab.vertices!.map(({ x, y }) => [Math.round(x), 0 - Math.round(y)])).toEqual(
      newPour.bay.outline!.map(({ x, y }) => [Math.round(x), Math.round(y)]),
    );
    expect(dxf.header.$INSUNITS).toBe(4);
  });

  test("pads, columns and joints are on layers of their own", () => {
    const count = (layer: string) => entities.filter((e) => e.layer === layer).length;
    expect(count("PADS_TO_POUR")).toBe(2);
    expect(count("BASES")).toBe(2);
    expect(count("JOINTS_TO_CUT")).toBeGreaterThanOrEqual(2);
    expect(count("ANCHORS")).toBe(20);
  });

  test("every figure of the drawing is there as text", () => {
    const words = entities.filter((e) => e.type === "TEXT").map((e) => e.text);
    const figures = dimensionsOf(groundOf(page)).filter((d) => d.axis !== "aligned");
    for (const { words: figure } of figures) expect(words).toContain(figure);
  });
});
