import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { createWorker, type Page } from "tesseract.js";
import { type GlyphPage, type GlyphReading, type GlyphRun, harmless } from "../glyphs/index.ts";
import { pdfForNode } from "./pdf-for-node.ts";
import { drawCrop } from "./pictures.ts";

const require = createRequire(import.meta.url);

const DOTS = 200 / 72;
/** Pages recognised in one manual; each takes about a second. */
const MOST_PICTURES = 120;

/** Pages without text, recognised on this machine; their values stay doubtful whatever the recogniser thinks of them. */
export const withPicturesRecognised = async (glyphs: GlyphReading, bytes: Uint8Array): Promise<GlyphReading> => {
  const pictures = glyphs.ok ? glyphs.pages.filter(({ source }) => source === "picture").slice(0, MOST_PICTURES) : [];
  if (!glyphs.ok || pictures.length === 0) return glyphs;
  const language = dirname(require.resolve("@tesseract.js-data/eng/package.json"));
  const reader = await createWorker("eng", 1, {
    langPath: join(language, "4.0.0_best_int"),
    cacheMethod: "none",
    gzip: true,
  });
  const { pdf, options } = await pdfForNode();
  const loading = pdf.getDocument({ ...options, ...harmless, data: bytes.slice() });
  try {
    const document = await loading.promise;
    const read = new Map<number, GlyphPage>();
    for (const page of pictures) {
      const sheet = await document.getPage(page.number);
      const image = await drawCrop(sheet, { x: 0, y: 0, width: page.width, height: page.height }, DOTS);
      const { data } = await reader.recognize(Buffer.from(image), {}, { text: false, blocks: true });
      read.set(page.number, { ...page, source: "recognised", runs: runsOf(data) });
    }
    return { ...glyphs, pages: glyphs.pages.map((page) => read.get(page.number) ?? page) };
  } finally {
    await loading.destroy().catch(() => {});
    await reader.terminate();
  }
};

const runsOf = ({ blocks }: Page): readonly GlyphRun[] =>
  (blocks ?? []).flatMap(({ paragraphs }) =>
    paragraphs.flatMap(({ lines }) =>
      lines.flatMap(({ words, bbox }): readonly GlyphRun[] => {
        const size = (bbox.y1 - bbox.y0) / DOTS;
        return words.map((word) => ({
          text: word.text,
          x: word.bbox.x0 / DOTS,
          y: (bbox.y1 - 0.22 * (bbox.y1 - bbox.y0)) / DOTS,
          width: (word.bbox.x1 - word.bbox.x0) / DOTS,
          size,
          direction: 0,
        }));
      }),
    ),
  );
