/** Pages made of plain sentences and tables, for tests of the third stage alone. */
import { type Block, type Candidate, findCandidates, type LaidOutPage, type PrintedLine } from "@floorworthy/manuals";

const boxAt = (i: number) => ({ x: 72, y: 80 + 15 * i, width: 400, height: 12 });

const lineOf = (page: number, i: number, text: string): PrintedLine => ({ page, text, box: boxAt(i) });

export const paragraph = (text: string, page = 1, i = 0): Block => ({
  kind: "paragraph",
  text,
  starts: [0],
  lines: [lineOf(page, i, text)],
});

export const note = (text: string): Block => ({ kind: "note", text, starts: [0], lines: [lineOf(1, 30, text)] });

export const heading = (text: string): Block => ({ kind: "heading", text, starts: [0], lines: [lineOf(1, 0, text)] });

export const table = (rows: readonly (readonly string[])[], page = 1): Block => ({
  kind: "table",
  columns: Math.max(...rows.map((row) => row.length)),
  rows: rows.map((row, i) => {
    const line = lineOf(page, i, row.filter(Boolean).join("   "));
    return {
      cells: row.flatMap((text, c) => (text ? [{ text, from: c, to: c + 1, starts: [0], lines: [line] }] : [])),
    };
  }),
});

export const pageOf = (blocks: readonly Block[], number = 1): LaidOutPage => ({
  number,
  width: 612,
  height: 792,
  source: "text",
  blocks,
});

/** What is found when a manual says just these sentences. */
export const foundIn = (...sentences: readonly string[]): readonly Candidate[] =>
  findCandidates([pageOf(sentences.map((text, i) => paragraph(text, 1, i)))]).candidates;
