import { parentPort, workerData } from "node:worker_threads";
import { readGlyphs, type Trouble, troubles } from "../glyphs/index.ts";
import type { ManualReading } from "../manual-reading.ts";
import { readingOf } from "../reading-of.ts";
import { pdfForNode } from "./pdf-for-node.ts";
import { type Crop, drawCrops } from "./pictures.ts";

export type Errand =
  | { readonly kind: "read"; readonly bytes: Uint8Array; readonly pictures: "as-they-are" | "recognised" }
  | { readonly kind: "draw"; readonly bytes: Uint8Array; readonly crops: readonly Crop[] };

export type Brought =
  | { readonly kind: "read"; readonly reading: ManualReading }
  | { readonly kind: "drawn"; readonly images: readonly (Uint8Array | undefined)[] }
  | { readonly kind: "failed"; readonly trouble: Trouble };

/** What a worker does with a manual. Nothing in the file is trusted: an error of any kind means a broken file. */
export const runErrand = async (errand: Errand): Promise<Brought> => {
  try {
    if (errand.kind === "draw") return { kind: "drawn", images: await drawCrops(errand.bytes, errand.crops) };
    const { pdf, options } = await pdfForNode();
    const glyphs = await readGlyphs(pdf, errand.bytes, options);
    if (errand.pictures === "as-they-are") return { kind: "read", reading: readingOf(glyphs) };
    const { withPicturesRecognised } = await import("./recognise.ts");
    return { kind: "read", reading: readingOf(await withPicturesRecognised(glyphs, errand.bytes)) };
  } catch {
    return { kind: "failed", trouble: troubles.broken };
  }
};

/** Runs the errand this worker was started with and sends back what it brought. */
export const serveErrand = async (): Promise<void> => {
  const errand = (workerData as { readonly errand?: Errand } | null)?.errand;
  if (parentPort && errand) parentPort.postMessage(await runErrand(errand));
};
