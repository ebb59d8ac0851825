import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import type { PdfLibrary } from "../glyphs/index.ts";

const root = dirname(createRequire(import.meta.url).resolve("pdfjs-dist/package.json"));

/** pdf.js with its own fonts and character maps, all from this machine. */
export const pdfForNode = async (): Promise<{ readonly pdf: PdfLibrary; readonly options: object }> => {
  const pdf = (await import("pdfjs-dist/legacy/build/pdf.mjs")) as unknown as PdfLibrary;
  const folder = (name: string) => `${join(root, name)}/`;
  return {
    pdf,
    options: {
      standardFontDataUrl: folder("standard_fonts"),
      cMapUrl: folder("cmaps"),
      cMapPacked: true,
      wasmUrl: folder("wasm"),
      iccUrl: folder("iccs"),
    },
  };
};
