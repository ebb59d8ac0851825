import { createRequire } from "node:module";
import PDFDocument from "pdfkit";
import type { Drawing } from "../drawing/drawing.ts";
import { type Mark, onPaper, penOf } from "../drawing/marks.ts";
import { inks } from "../drawing/pens.ts";

export interface PdfMeta {
  readonly title: string;
  readonly author?: string;
  /** calendar date put into the file, YYYY-MM-DD; the same input gives the same bytes */
  readonly date: string;
  readonly language?: string;
}

type Document = InstanceType<typeof PDFDocument>;

/** Points of 1/72 in per mm of paper. */
const PT = 72 / 25.4;

const fontFile = (name: string): string => createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

const stroked = (doc: Document, mark: Mark & { kind: "path" | "circle" }) => {
  if (mark.pen) {
    const { width, dashes, ink } = penOf(mark.pen);
    doc.lineWidth(width).strokeColor(inks[ink]);
    if (dashes.length) doc.dash([...dashes] as unknown as number, {});
    else doc.undash();
  }
  const fill = mark.fill === "none" ? undefined : inks[mark.fill];
  if (mark.pen && fill) doc.fillAndStroke(fill, inks[penOf(mark.pen).ink]);
  else if (mark.pen) doc.stroke();
  else if (fill) doc.fill(fill);
};

const draw = (doc: Document, mark: Mark) => {
  if (mark.kind === "text") {
    const { at, words, size, align, lettering, reads } = mark;
    // kerning off: the drawing was fitted with the plain advance widths
    const options = { lineBreak: false, baseline: "alphabetic", features: { kern: false } } as unknown as {
      lineBreak: false;
    };
    doc.font(lettering).fontSize(size).fillColor(inks.ink);
    const width = doc.widthOfString(words, options);
    const before = align === "start" ? 0 : align === "middle" ? width / 2 : width;
    doc.save();
    if (reads === "upward") doc.rotate(-90, { origin: [at.x, at.y] });
    doc.text(words, at.x - before, at.y, options).restore();
    return;
  }
  if (mark.kind === "circle") doc.circle(mark.centre.x, mark.centre.y, mark.radius);
  else {
    for (const [i, p] of mark.points.entries()) i ? doc.lineTo(p.x, p.y) : doc.moveTo(p.x, p.y);
    if (mark.ends === "closed") doc.closePath();
  }
  stroked(doc, mark);
};

const isNote = (mark: Mark): boolean => mark.kind === "text" && mark.tag.startsWith("note");

/** Runs of neighbours of which either all or none are notes. */
const runsOf = (marks: readonly Mark[]): readonly (readonly Mark[])[] => {
  const runs: Mark[][] = [];
  for (const mark of marks) {
    const last = runs.at(-1);
    if (last && last[0]!.tag === mark.tag && isNote(mark)) last.push(mark);
    else if (last && !isNote(last[0]!) && !isNote(mark)) last.push(mark);
    else runs.push([mark]);
  }
  return runs;
};

const page = (doc: Document, whole: PDFKit.PDFStructureElement, drawing: Drawing) => {
  doc.addPage({ size: [drawing.width * PT, drawing.height * PT], margin: 0 });
  const section = doc.struct("Sect");
  whole.add(section);
  doc.save().scale(PT).lineCap("round").lineJoin("round");
  for (const run of runsOf(onPaper(drawing))) {
    const type = isNote(run[0]!) ? (run[0]!.tag.endsWith("heading") ? "H2" : "P") : "Figure";
    const content = doc.markStructureContent(type);
    for (const mark of run) draw(doc, mark);
    doc.endMarkedContent();
    section.add(
      type === "Figure" ? doc.struct(type, { alt: drawing.description }, [content]) : doc.struct(type, {}, [content]),
    );
  }
  section.end();
  doc.restore();
};

/**
 * Drawings as the pages of one PDF: paths, embedded fonts, tagged, with each drawing's description as the alternative text.
 * Deterministic: the only date is the one in `meta`.
 */
export const drawingToPdf = (pages: readonly Drawing[], meta: PdfMeta): Promise<Uint8Array> => {
  const day = new Date(`${meta.date}T12:00:00Z`);
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: "1.7",
    tagged: true,
    displayTitle: true,
    lang: meta.language ?? "en-US",
    info: {
      Title: meta.title,
      Author: meta.author ?? "Floorworthy",
      Creator: "Floorworthy",
      CreationDate: day,
      ModDate: day,
    },
  });
  doc.registerFont("regular", fontFile("DejaVuSansCondensed"));
  doc.registerFont("bold", fontFile("DejaVuSansCondensed-Bold"));
  const chunks: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    doc.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    doc.on("end", () => resolve(new Uint8Array(Buffer.concat(chunks))));
    doc.on("error", reject);
    const whole = doc.struct("Document");
    doc.addStructure(whole);
    for (const drawing of pages) page(doc, whole, drawing);
    whole.end();
    doc.end();
  });
};
