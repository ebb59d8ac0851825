import { findCandidates } from "./candidates/index.ts";
import { type GlyphReading, troubles } from "./glyphs/index.ts";
import { layOut } from "./layout/index.ts";
import type { ManualReading } from "./manual-reading.ts";

/** The second and third stage after the first: glyphs → reading. Pure; a page can run it in a worker. */
export const readingOf = (glyphs: GlyphReading): ManualReading => {
  if (!glyphs.ok) return glyphs;
  if (glyphs.pages.every(({ source }) => source === "picture")) return { ok: false, trouble: troubles["no-text"] };
  const pages = layOut(glyphs.pages);
  return {
    ok: true,
    pages: pages.map(({ blocks: _, ...page }) => page),
    unread: glyphs.unread,
    ...findCandidates(pages),
  };
};
