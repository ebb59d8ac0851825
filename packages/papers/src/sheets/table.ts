import type { Rect } from "@floorworthy/engine/geometry";
import type { Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { rule, words } from "./frame.ts";

export interface Column {
  readonly heading: string;
  /** share of the width */
  readonly share: number;
  readonly align?: "start" | "end" | "middle";
}

/** Figures that line up: "" is a field to fill in by hand; columns none of which has a heading have no head row. */
export interface Table {
  /** tag of its words; a screen reader hears tags that begin with "note-" as text */
  readonly tag: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  readonly size: number;
  /** least height of a row, mm: large where it is filled in by hand */
  readonly rowHeight: number;
}

const PAD = 0.9;

interface Set {
  readonly items: readonly Item[];
  /** y under the last row, mm of paper */
  readonly bottom: number;
}

/** A ruled table from the top of the box downward, cells wrapped. The caller looks at `bottom` to see whether it fitted. */
export const setTable = ({ tag, columns, rows, size, rowHeight }: Table, box: Rect): Set => {
  const whole = columns.reduce((sum, column) => sum + column.share, 0);
  const width = box.x1 - box.x0;
  const lefts = columns.map(
    (_, i) => box.x0 + (columns.slice(0, i).reduce((sum, column) => sum + column.share, 0) / whole) * width,
  );
  const right = (i: number) => lefts[i + 1] ?? box.x1;
  const items: Item[] = [];
  const setRow = (cells: readonly string[], y: number, lettering: "regular" | "bold", least: number): number => {
    const wrapped = columns.map((_, i) => wrapText(cells[i] ?? "", size, lettering, right(i) - lefts[i]! - 2 * PAD));
    const height = Math.max(least, Math.max(...wrapped.map((lines) => lines.length)) * size * 1.2 + 2 * PAD);
    for (const [i, lines] of wrapped.entries()) {
      const { align = "start" } = columns[i]!;
      const x = align === "start" ? lefts[i]! + PAD : align === "end" ? right(i) - PAD : (lefts[i]! + right(i)) / 2;
      const top = y + (height - lines.length * size * 1.2) / 2;
      for (const [k, line] of lines.entries())
        items.push(words(tag, x, top + size * 0.92 + k * size * 1.2, line, size, { align, lettering }));
    }
    return y + height;
  };
  const lines = [box.y0];
  let y = box.y0;
  if (columns.some((column) => column.heading !== "")) {
    y = setRow(
      columns.map((column) => column.heading),
      box.y0,
      "bold",
      0,
    );
    lines.push(y);
  }
  for (const row of rows) {
    y = setRow(row, y, "regular", rowHeight);
    lines.push(y);
  }
  return {
    items: [
      ...items,
      ...lines.map((at, i) => rule(box.x0, at, box.x1, at, i < 2 || i === lines.length - 1 ? "frame" : "rule")),
      ...[...lefts, box.x1].map((x) => rule(x, box.y0, x, y)),
    ],
    bottom: y,
  };
};
