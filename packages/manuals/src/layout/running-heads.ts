import type { GlyphPage, GlyphRun } from "../glyphs/index.ts";

/** The strips at the top and foot of a page where heads and page numbers stand, as a share of its height. */
const STRIP = 0.09;
const NUMBER = /^[-–—\s]*(?:page|sheet|p\.)?\s*(\d{1,3}(?:-\d{1,3})?)\s*(?:(?:of|\/)\s*\d{1,3})?[-–—\s]*$/i;

export interface CleanPage extends GlyphPage {
  readonly printed?: string;
}

const inStrip = (run: GlyphRun, page: GlyphPage): boolean =>
  run.direction === 0 && (run.y < STRIP * page.height || run.y > (1 - STRIP) * page.height);

const bare = (text: string): string => text.replace(/\d+/g, "#").replace(/\s+/g, " ").trim().toLowerCase();

/** Takes off page numbers, and heads that come again on other pages at the same height. */
export const withoutRunningHeads = (pages: readonly GlyphPage[]): readonly CleanPage[] => {
  const seen = new Map<string, Set<number>>();
  const keyOf = (run: GlyphRun) => `${bare(run.text)}@${Math.round(run.y / 6)}`;
  for (const page of pages)
    for (const run of page.runs)
      if (inStrip(run, page)) {
        const key = keyOf(run);
        seen.set(key, (seen.get(key) ?? new Set()).add(page.number));
      }
  const often = Math.max(2, Math.min(4, Math.ceil(pages.length / 4)));
  return pages.map((page) => {
    const edge = page.runs.filter((run) => inStrip(run, page));
    const numbers = edge.filter((run) => NUMBER.test(run.text));
    const heads = edge.filter((run) => numbers.includes(run) || (seen.get(keyOf(run))?.size ?? 0) >= often);
    const printed = numbers.length > 0 ? NUMBER.exec(numbers.at(-1)!.text)![1] : undefined;
    return {
      ...page,
      runs: page.runs.filter((run) => !heads.includes(run)),
      ...(printed !== undefined && { printed }),
    };
  });
};
