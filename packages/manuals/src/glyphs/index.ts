export * from "./glyph-run.ts";
export { harmless, type PdfLibrary, readGlyphs } from "./read-glyphs.ts";
export { MOST_BYTES, MOST_PAGES, troubles } from "./troubles.ts";
