import type { PDFDocumentProxy, PDFPageProxy } from "pdfjs-dist";
import type { Direction, GlyphPage, GlyphReading, GlyphRun, Trouble } from "./glyph-run.ts";
import { MOST_BYTES, MOST_PAGES, troubles } from "./troubles.ts";

/** The part of pdf.js that is used; its build for Node or for the browser is handed in. */
export interface PdfLibrary {
  getDocument(options: object): { readonly promise: Promise<PDFDocumentProxy>; destroy(): Promise<void> };
}

/** Nothing in the file runs, nothing is fetched, large pictures stay closed. */
export const harmless = {
  isEvalSupported: false,
  enableXfa: false,
  disableFontFace: true,
  useSystemFonts: false,
  useWorkerFetch: false,
  disableAutoFetch: true,
  disableRange: true,
  disableStream: true,
  maxImageSize: 40_000_000,
  verbosity: 0,
} as const;

/** Fewer letters than this are a stamp or a page number, not a page of text. */
const FEW_LETTERS = 12;

/**
 * Bytes → glyphs with their places. The same in Node and in the browser.
 * @param options - added to the ones that keep pdf.js harmless (folders of its own fonts and character maps)
 * @param tell - called after each page
 */
export const readGlyphs = async (
  pdf: PdfLibrary,
  bytes: Uint8Array,
  options: object = {},
  tell: (done: number, of: number) => void = () => {},
): Promise<GlyphReading> => {
  if (bytes.length > MOST_BYTES) return no(troubles["too-large"]);
  if (!hasPdfMark(bytes)) return no(troubles["not-a-pdf"]);
  const loading = pdf.getDocument({ ...options, ...harmless, data: bytes.slice() });
  try {
    const document = await loading.promise;
    if (document.numPages > MOST_PAGES) return no(troubles["too-many-pages"]);
    return await readPages(document, tell);
  } catch (error) {
    return no(error instanceof Error && error.name === "PasswordException" ? troubles.encrypted : troubles.broken);
  } finally {
    await loading.destroy().catch(() => {});
  }
};

const no = (trouble: Trouble): GlyphReading => ({ ok: false, trouble });

const hasPdfMark = (bytes: Uint8Array): boolean =>
  new TextDecoder("latin1").decode(bytes.subarray(0, 1024)).includes("%PDF-");

const readPages = async (
  document: PDFDocumentProxy,
  tell: (done: number, of: number) => void,
): Promise<GlyphReading> => {
  const pages: GlyphPage[] = [];
  const unread: number[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    try {
      const page = await document.getPage(number);
      pages.push(await readPage(page, number));
      page.cleanup();
    } catch {
      unread.push(number);
    }
    tell(number, document.numPages);
  }
  return pages.length === 0 ? no(troubles.broken) : { ok: true, pages, unread };
};

const readPage = async (page: PDFPageProxy, number: number): Promise<GlyphPage> => {
  const { width, height, transform } = page.getViewport({ scale: 1 });
  const content = await page.getTextContent();
  const runs = content.items.flatMap((item) =>
    "str" in item && item.height !== 0 && item.str.trim() !== "" ? [runOf(item, transform as unknown as Matrix)] : [],
  );
  const letters = runs.reduce((count, { text }) => count + text.trim().length, 0);
  return { number, width, height, source: letters < FEW_LETTERS ? "picture" : "text", runs };
};

type Matrix = readonly [number, number, number, number, number, number];

const runOf = (
  item: { readonly str: string; readonly width: number; readonly transform: readonly number[] },
  view: Matrix,
): GlyphRun => {
  const [a, b, c, d, e, f] = item.transform as unknown as Matrix;
  const [ux, uy] = [view[0] * a + view[2] * b, view[1] * a + view[3] * b];
  const size = Math.hypot(view[0] * c + view[2] * d, view[1] * c + view[3] * d);
  const quarters = Math.round(Math.atan2(uy, ux) / (Math.PI / 2));
  return {
    text: item.str,
    x: view[0] * e + view[2] * f + view[4],
    y: view[1] * e + view[3] * f + view[5],
    width: item.width,
    size,
    direction: ((((quarters % 4) + 4) % 4) * 90) as Direction,
  };
};
