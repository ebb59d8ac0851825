import { createCanvas } from "@napi-rs/canvas";
import type { PDFPageProxy } from "pdfjs-dist";
import { type Box, harmless } from "../glyphs/index.ts";
import { pdfForNode } from "./pdf-for-node.ts";

export interface Crop {
  /** counted from 1 */
  readonly page: number;
  readonly box: Box;
}

/** Pixels per point: 150 dots per inch. */
const SCALE = 150 / 72;
/** Pixels in one direction; a larger crop is drawn smaller. */
const MOST_PIXELS = 4000;

/** A part of a page as PNG. */
export const drawCrop = async (page: PDFPageProxy, box: Box, wanted = SCALE): Promise<Uint8Array> => {
  const scale = Math.min(wanted, MOST_PIXELS / Math.max(box.width, box.height, 1));
  const [width, height] = [Math.max(1, Math.ceil(box.width * scale)), Math.max(1, Math.ceil(box.height * scale))];
  const canvas = createCanvas(width, height);
  const canvasContext = canvas.getContext("2d");
  canvasContext.fillStyle = "white";
  canvasContext.fillRect(0, 0, width, height);
  const viewport = page.getViewport({ scale, offsetX: -box.x * scale, offsetY: -box.y * scale });
  await page.render({ canvas: null, canvasContext: canvasContext as never, viewport }).promise;
  return new Uint8Array(await canvas.encode("png"));
};

/** Pictures of lines of a manual, in the order asked for; a page that cannot be drawn gives undefined. */
export const drawCrops = async (
  bytes: Uint8Array,
  crops: readonly Crop[],
): Promise<readonly (Uint8Array | undefined)[]> => {
  const { pdf, options } = await pdfForNode();
  const loading = pdf.getDocument({ ...options, ...harmless, data: bytes.slice() });
  try {
    const document = await loading.promise;
    const drawn: (Uint8Array | undefined)[] = [];
    for (const { page, box } of crops)
      drawn.push(
        await document
          .getPage(page)
          .then((p) => drawCrop(p, box))
          .catch(() => undefined),
      );
    return drawn;
  } finally {
    await loading.destroy().catch(() => {});
  }
};
