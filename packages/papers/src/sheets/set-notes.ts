import type { Rect } from "@floorworthy/engine/geometry";
import type { Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import type { Note } from "./note.ts";

const LEADING = 1.2;
const INDENT = 1.15;

interface Row {
  readonly kind: "heading" | "first" | "more";
  readonly words: string;
  readonly note: number;
  readonly mark: Note["mark"];
}

const rowsOf = (notes: readonly Note[], size: number, width: number): readonly Row[] =>
  notes.flatMap(({ heading, lines, mark }, i): Row[] =>
    lines.length === 0
      ? []
      : [
          ...wrapText(heading, size * 1.06, "bold", width).map(
            (words): Row => ({ kind: "heading", words, note: i, mark }),
          ),
          ...lines.flatMap((line) =>
            wrapText(line, size, "regular", width - INDENT * size).map(
              (words, k): Row => ({ kind: k ? "more" : "first", words, note: i, mark }),
            ),
          ),
        ],
  );

const heightOf = (row: Row, size: number, top: "top" | "below"): number =>
  row.kind === "heading"
    ? size * (top === "top" ? 1.3 : 2.0)
    : row.kind === "first"
      ? size * (LEADING + 0.1)
      : size * LEADING;

/** The row with all that must stay on its column: a heading with its first entry, an entry with all its lines. */
const blockFrom = (rows: readonly Row[], i: number): readonly Row[] => {
  let end = i + 1;
  if (rows[i]?.kind === "heading")
    while (rows[end]?.kind === "heading" || (rows[end]?.kind === "first" && rows[end - 1]?.kind === "heading")) end++;
  while (rows[end]?.kind === "more") end++;
  return rows.slice(i, end);
};

const flow = (notes: readonly Note[], columns: readonly Rect[], size: number): readonly Item[] | undefined => {
  const width = Math.min(...columns.map((c) => c.x1 - c.x0));
  const rows = rowsOf(notes, size, width);
  const items: Item[] = [];
  let column = 0;
  let y = columns[0]?.y0 ?? 0;
  for (const [i, row] of rows.entries()) {
    let box = columns[column];
    if (!box) return undefined;
    let top: "top" | "below" = y === box.y0 ? "top" : "below";
    const needed = (row.kind === "more" ? [row] : blockFrom(rows, i)).reduce(
      (sum, r, k) => sum + heightOf(r, size, k ? "below" : top),
      0.25 * size,
    );
    if (y + needed > box.y1) {
      column++;
      box = columns[column];
      if (!box) return undefined;
      y = box.y0;
      top = "top";
    }
    y += heightOf(row, size, top);
    const tag = `note-${row.note + 1}`;
    if (row.kind === "heading") {
      items.push({
        kind: "text",
        tag: `${tag}-heading`,
        at: { x: box.x0, y },
        words: row.words,
        size: size * 1.06,
        align: "start",
        lettering: "bold",
        reads: "across",
      });
      items.push({
        kind: "line",
        tag: "rules",
        from: { x: box.x0, y: y + 0.28 * size },
        to: { x: box.x1, y: y + 0.28 * size },
        pen: "rule",
      });
      y += 0.15 * size;
      continue;
    }
    if (row.kind === "first") {
      const s = size * 0.62;
      const m = { x: box.x0 + size * 0.05, y: y - s };
      items.push(
        row.mark === "box"
          ? {
              kind: "polygon",
              tag: "ticks",
              points: [m, { x: m.x + s, y: m.y }, { x: m.x + s, y: m.y + s }, { x: m.x, y: m.y + s }],
              pen: "rule",
              hatch: "none",
            }
          : {
              kind: "circle",
              tag: "ticks",
              centre: { x: box.x0 + size * 0.35, y: y - 0.3 * size },
              radius: size * 0.13,
              pen: "thin",
              hatch: "ink",
            },
      );
    }
    items.push({
      kind: "text",
      tag,
      at: { x: box.x0 + INDENT * size, y },
      words: row.words,
      size,
      align: "start",
      lettering: "regular",
      reads: "across",
    });
  }
  return items;
};

/** Sizes tried, largest first, mm. The smallest is what can still be read on a clipboard. */
const LARGEST = 2.6;
export const SMALLEST = 1.75;

/** Notes flowed through columns at the largest size at which they all fit; undefined when they do not fit at the smallest. */
export const setNotes = (
  notes: readonly Note[],
  columns: readonly Rect[],
  largest = LARGEST,
): { readonly items: readonly Item[]; readonly size: number } | undefined => {
  for (let size = largest; size >= SMALLEST - 1e-9; size -= 0.05) {
    const items = flow(notes, columns, size);
    if (items) return { items, size };
  }
  return undefined;
};
