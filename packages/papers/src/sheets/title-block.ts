import type { Rect } from "@floorworthy/engine/geometry";
import type { Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";

export interface Cell {
  readonly caption: string;
  /** lines of text; none leaves a field to be filled in by hand */
  readonly words: readonly string[];
}

const CAPTION = 1.75;
const VALUE = 2.3;

const fitted = (
  words: readonly string[],
  width: number,
  height: number,
): { lines: readonly string[]; size: number } => {
  for (let size = VALUE; size >= 1.7; size -= 0.1) {
    const lines = words.flatMap((line) => wrapText(line, size, "regular", width));
    if (lines.length * size * 1.2 <= height) return { lines, size };
  }
  const size = 1.7;
  const most = Math.max(1, Math.floor(height / (size * 1.2)));
  const lines = words.flatMap((line) => wrapText(line, size, "regular", width - 2)).slice(0, most);
  return { lines: lines.map((line, i) => (i === most - 1 ? `${line}…` : line)), size };
};

const cellItems = ({ caption, words }: Cell, box: Rect): readonly Item[] => {
  const points = [
    { x: box.x0, y: box.y0 },
    { x: box.x1, y: box.y0 },
    { x: box.x1, y: box.y1 },
    { x: box.x0, y: box.y1 },
  ];
  const top = box.y0 + CAPTION + 0.4;
  const { lines, size } = fitted(words, box.x1 - box.x0 - 2.4, box.y1 - top - 0.9);
  return [
    { kind: "polygon", tag: "title-block", points, pen: "rule", hatch: "none" },
    {
      kind: "text",
      tag: "note-title-block",
      at: { x: box.x0 + 1.2, y: top },
      words: caption,
      size: CAPTION,
      align: "start",
      lettering: "regular",
      reads: "across",
    },
    ...lines.map(
      (line, i): Item => ({
        kind: "text",
        tag: "note-title-block",
        at: { x: box.x0 + 1.2, y: top + (i + 1) * size * 1.2 },
        words: line,
        size,
        align: "start",
        lettering: i === 0 && words.length > 1 ? "bold" : "regular",
        reads: "across",
      }),
    ),
  ];
};

/** Columns of cells, each column with a share of the width and its cells stacked evenly. */
export const titleBlock = (
  box: Rect,
  columns: readonly { readonly share: number; readonly cells: readonly Cell[] }[],
): readonly Item[] => {
  const whole = columns.reduce((sum, column) => sum + column.share, 0);
  let x = box.x0;
  return columns.flatMap(({ share, cells }) => {
    const width = ((box.x1 - box.x0) * share) / whole;
    const height = (box.y1 - box.y0) / cells.length;
    const left = x;
    x += width;
    return cells.flatMap((cell, i) =>
      cellItems(cell, { x0: left, x1: left + width, y0: box.y0 + i * height, y1: box.y0 + (i + 1) * height }),
    );
  });
};
