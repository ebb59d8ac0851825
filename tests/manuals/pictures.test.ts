import { drawLines, readManual } from "@floorworthy/manuals/node";
import { describe, expect, test } from "vitest";
import { LETTER, Pen } from "./corpus/pen.ts";

const SHEET = { x: 0, y: 0, width: LETTER[0], height: LETTER[1] };

/** A page that is a picture of text. */
const scanned = async (lines: readonly string[]): Promise<Uint8Array> => {
  const typed = new Pen({ size: LETTER });
  typed.sheet();
  lines.forEach((line, i) => {
    typed.line(line, 70, 105 + 28 * i, { size: 14 });
  });
  const [image] = await drawLines(await typed.bytes(), [{ page: 1, box: SHEET }]);
  const pen = new Pen({ size: LETTER });
  pen.sheet();
  pen.paper.image(Buffer.from(image!), 0, 0, { width: LETTER[0], height: LETTER[1] });
  return pen.bytes();
};

describe("pages that are pictures", () => {
  test("are told apart; recognised, their values are doubtful whatever they say", async () => {
    const bytes = await scanned([
      "The concrete must be at least 6 in. thick.",
      "Concrete compressive strength: 3,000 psi minimum.",
    ]);
    expect(await readManual(bytes)).toMatchObject({ ok: false, trouble: { code: "no-text" } });
    const reading = await readManual(bytes, { pictures: "recognised" });
    if (!reading.ok) throw new Error(reading.trouble.message);
    expect(reading.pages[0]!.source).toBe("recognised");
    expect(reading.candidates.map(({ field }) => field)).toEqual(["asks.thickness", "asks.strength"]);
    for (const { confidence, remarks, evidence } of reading.candidates) {
      expect(confidence).toBe("doubtful");
      expect(remarks.map(({ code }) => code)).toContain("recognised");
      expect(evidence.box.y).toBeGreaterThan(90);
      expect(evidence.box.y).toBeLessThan(160);
    }
  });

  test("the picture of a line holds its ink and little else", async () => {
    const pen = new Pen({ size: LETTER });
    pen.sheet();
    pen.line("The slab must be at least 5 in. thick.", 100, 300, { size: 12 });
    const bytes = await pen.bytes();
    const reading = await readManual(bytes);
    if (!reading.ok) throw new Error(reading.trouble.message);
    const { box } = reading.candidates[0]!.evidence;
    const width = pen.width("The slab must be at least 5 in. thick.", { size: 12 });
    expect(box.x).toBeGreaterThan(94);
    expect(box.x + box.width).toBeLessThan(100 + width + 6);
    const [image] = await drawLines(bytes, [{ page: 1, box }]);
    const size = new DataView(image!.buffer, image!.byteOffset);
    expect(size.getUint32(16)).toBe(Math.ceil((box.width * 150) / 72));
    expect(size.getUint32(20)).toBe(Math.ceil((box.height * 150) / 72));
  });
});
