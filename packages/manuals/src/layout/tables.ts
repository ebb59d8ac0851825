import type { Box } from "../glyphs/index.ts";
import type { Block, Cell, PrintedLine, Row } from "./blocks.ts";
import { runTogether } from "./running-text.ts";
import { coverOf, type Segment, type TextRow } from "./segment.ts";

/** Baselines nearer than this (letter heights) are lines of one cell when the table's rows lie further apart. */
const TIGHT = 1.4;
const LOOSE = 1.45;
/** Nearer than a line can follow a line: cells set in the middle of their row. */
const WITHIN = 0.95;

type Column = { readonly from: number; readonly to: number };

/** Rows of text as a table: columns from the fullest rows, lines of one cell run together. */
export const tableOf = (rows: readonly TextRow[], page: number, toPage: (cover: Box) => Box): Block => {
  const columns = columnsOf(rows);
  return {
    kind: "table",
    columns: columns.length,
    rows: groupRows(rows, columns).map((group) => rowOf(group, columns, page, toPage)),
  };
};

const columnsOf = (rows: readonly TextRow[]): readonly Column[] => {
  const most = Math.max(...rows.map(({ segments }) => segments.length));
  const full = rows.filter(({ segments }) => segments.length === most);
  return Array.from({ length: most }, (_, i) => ({
    from: Math.min(...full.map(({ segments }) => segments[i]!.from)),
    to: Math.max(...full.map(({ segments }) => segments[i]!.to)),
  })).sort((a, b) => a.from - b.from);
};

const overlap = (a: Column, b: Column): number => Math.min(a.to, b.to) - Math.max(a.from, b.from);

/** Columns a segment stands in: those it covers by half their width, else the nearest. */
const spanOf = (segment: Segment, columns: readonly Column[]): readonly [number, number] => {
  const inside = columns.flatMap((column, i) =>
    overlap(segment, column) > 0.5 * Math.min(column.to - column.from, segment.to - segment.from) ? [i] : [],
  );
  if (inside.length > 0) return [inside[0]!, inside.at(-1)! + 1];
  const away = (c: Column) => -overlap(segment, c);
  const nearest = columns.reduce((best, column, i) => (away(column) < away(columns[best]!) ? i : best), 0);
  return [nearest, nearest + 1];
};

const groupRows = (rows: readonly TextRow[], columns: readonly Column[]): readonly (readonly TextRow[])[] => {
  const gap = (i: number) => (rows[i]!.v - rows[i - 1]!.v) / rows[i]!.size;
  const gaps = rows.slice(1).map((_, i) => gap(i + 1));
  const airy = gaps.filter((g) => g > LOOSE).length >= 0.3 * gaps.length;
  const groups: TextRow[][] = [];
  rows.forEach((row, i) => {
    const open = groups.at(-1);
    const joins =
      i > 0 && (gap(i) < WITHIN || (airy ? gap(i) < TIGHT : gap(i) < TIGHT && continues(row, rows[i - 1]!, columns)));
    if (open && joins) open.push(row);
    else groups.push([row]);
  });
  return groups;
};

/** In a close-set table a line goes on with the one above when it has no label of its own, or half a label. */
const continues = (row: TextRow, above: TextRow, columns: readonly Column[]): boolean => {
  const first = row.segments[0]!;
  const [column] = spanOf(first, columns);
  if (column > 0) return true;
  const ahead = above.segments[0]!.text;
  return (
    row.segments.length === 1 && (/^[\p{Ll}(]/u.test(first.text) || /[,(/&]$|\b(?:of|for|and|or|to|the)$/.test(ahead))
  );
};

const rowOf = (
  group: readonly TextRow[],
  columns: readonly Column[],
  page: number,
  toPage: (cover: Box) => Box,
): Row => {
  const all = group.flatMap(({ segments }) => segments);
  const parts = new Map<string, Segment[]>();
  for (const segment of all) {
    const key = spanOf(segment, columns).join("-");
    parts.set(key, [...(parts.get(key) ?? []), segment]);
  }
  const entries = [...parts].map(([key, list]) => ({ span: key.split("-").map(Number) as [number, number], list }));
  entries.sort((a, b) => a.span[0] - b.span[0]);
  const text = entries.map(({ list }) => list.map((s) => s.text).join(" ")).join("   ");
  const line: PrintedLine = { page, text, box: toPage(coverOf(all)) };
  const cells: readonly Cell[] = entries.map(({ span, list }) => ({
    ...runTogether(list.map((s) => ({ text: s.text, line }))),
    from: span[0],
    to: span[1],
  }));
  return { cells };
};
