import type { GlyphPage } from "../glyphs/index.ts";
import type { Block, LaidOutPage } from "./blocks.ts";
import { readingRegions } from "./columns.ts";
import { paragraphsOf } from "./paragraphs.ts";
import { type CleanPage, withoutRunningHeads } from "./running-heads.ts";
import { median, rowsOf, type Segment, type TextRow } from "./segment.ts";
import { tableOf } from "./tables.ts";
import { toSegments } from "./to-segments.ts";
import { byDirection, turningOf } from "./turning.ts";

/** A row further below the last than this (letter heights) is not of the same table. */
const TABLE_GAP = 4;
/** Letters of a page beyond this many are not laid out: no page of type holds them. */
const MOST_RUNS = 20_000;

/** Glyphs with places → lines, columns, tables, captions and page numbers, in reading order. */
export const layOut = (pages: readonly GlyphPage[]): readonly LaidOutPage[] =>
  withoutRunningHeads(pages).map(layOutPage);

const layOutPage = (page: CleanPage): LaidOutPage => {
  const blocks = byDirection(page.runs.slice(0, MOST_RUNS)).flatMap(([direction, runs]) => {
    const turning = turningOf(direction, page);
    const segments = toSegments(runs, turning);
    const body = median(segments.map(({ size }) => size));
    return readingRegions(segments).flatMap((region) => blocksOf(region, page.number, body, turning.toPage));
  });
  const { number, printed, width, height, source } = page;
  return { number, width, height, source, blocks, ...(printed !== undefined && { printed }) };
};

const blocksOf = (
  region: readonly Segment[],
  page: number,
  body: number,
  toPage: Parameters<typeof tableOf>[2],
): readonly Block[] =>
  stretchesOf(rowsOf(region)).flatMap(({ kind, rows }) =>
    kind === "table" ? [tableOf(rows, page, toPage)] : paragraphsOf(rows, page, body, toPage),
  );

interface Stretch {
  readonly kind: "table" | "text";
  readonly rows: TextRow[];
}

/** Rows with more than one segment make a table, with the lone lines that belong to its cells. */
const stretchesOf = (rows: readonly TextRow[]): readonly Stretch[] => {
  const stretches: Stretch[] = [];
  rows.forEach((row, i) => {
    const open = stretches.at(-1);
    const near = open && row.v - open.rows.at(-1)!.v < TABLE_GAP * row.size;
    const kind =
      row.segments.length > 1 || (near && open.kind === "table" && belongs(row, open.rows, rows[i + 1]))
        ? "table"
        : "text";
    if (open && open.kind === kind && (kind === "text" || near)) open.rows.push(row);
    else if (kind === "table" && open?.kind === "text" && leadsIn(open.rows.at(-1)!, row)) {
      const lead = open.rows.pop()!;
      if (open.rows.length === 0) stretches.pop();
      stretches.push({ kind, rows: [lead, row] });
    } else stretches.push({ kind, rows: [row] });
  });
  return stretches;
};

/** A lone line inside a table: half a label, or the rest of a value, close to the row above or below it. */
const belongs = (row: TextRow, table: readonly TextRow[], next: TextRow | undefined): boolean => {
  const segment = row.segments[0]!;
  const above = table.at(-1)!;
  const aligned = table.some(({ segments }) => segments.some((s) => Math.abs(s.from - segment.from) < 4));
  const narrow = table.some(({ segments }) => segments.length > 1 && segment.to < segments.at(-1)!.to + 4);
  const close =
    row.v - above.v < 1.4 * row.size ||
    (next !== undefined && next.segments.length > 1 && next.v - row.v < 1.1 * row.size);
  const first = table[0]!.segments[0]!;
  const label = Math.abs(segment.from - first.from) < 4;
  const crosses = label && above.segments.length > 1 && segment.to > above.segments[1]!.from;
  return aligned && narrow && close && !crosses;
};

/** The first line of a label whose value stands half a line lower. */
const leadsIn = (lone: TextRow, row: TextRow): boolean =>
  row.v - lone.v < 0.95 * row.size && Math.abs(lone.segments[0]!.from - row.segments[0]!.from) < 4;
