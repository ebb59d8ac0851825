import type { Rect } from "@floorworthy/engine/geometry";
import type { Drawing, Item, Words } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { corners } from "../plan/extents.ts";
import { type Cell, titleBlock } from "./title-block.ts";

export type Paper = "letter" | "a4";

/** The short and the long side, mm. */
const sides = { letter: [215.9, 279.4], a4: [210, 297] } as const;

const MARGIN = 8;
const HEAD = 12.5;
const STRIP = 5.5;

/** Said on every sheet. */
export const standing =
  "This sheet compares the floor with the maker's stated requirements and gives advice. It is not an engineer's design or approval. Local codes and licensed practice come first.";

/** Words on the paper, regular and from the left unless said otherwise. */
export const words = (
  tag: string,
  x: number,
  y: number,
  what: string,
  size: number,
  rest: Partial<Words> = {},
): Words => ({
  kind: "text",
  tag,
  at: { x, y },
  words: what,
  size,
  align: "start",
  lettering: "regular",
  reads: "across",
  ...rest,
});

export const rule = (
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  pen: "rule" | "frame" | "thin" = "rule",
): Item => ({
  kind: "line",
  tag: "frame",
  from: { x: x0, y: y0 },
  to: { x: x1, y: y1 },
  pen,
});

/** The sentence on at most two lines, or two small ones. */
const headline = (sentence: string, width: number): { lines: readonly string[]; size: number } => {
  for (let size = 2.4; size > 1.65; size -= 0.1) {
    const lines = wrapText(sentence, size, "regular", width);
    if (lines.length * size * 1.15 <= 5.6) return { lines, size };
  }
  return { lines: [...wrapText(sentence, 1.7, "regular", width - 3).slice(0, 2), "…"], size: 1.7 };
};

const head = (title: string, sentence: string, aside: string, box: Rect): readonly Item[] => {
  const { lines, size } = headline(sentence, box.x1 - box.x0 - 4);
  return [
    words("note-head-heading", box.x0 + 2, box.y0 + 5.2, title, 4.2, { lettering: "bold" }),
    words("note-head-scale", box.x1 - 2, box.y0 + 4.6, aside, 2.1, { align: "end" }),
    ...lines.map((line, i) => words("note-head", box.x0 + 2, box.y0 + 6.2 + (i + 1) * size * 1.15, line, size)),
    rule(box.x0, box.y1, box.x1, box.y1, "frame"),
  ];
};

export interface SheetFrame {
  readonly paper: Paper;
  /** which way the paper lies */
  readonly lies: "upright" | "on-its-side";
  readonly title: string;
  /** what must be read first, in a sentence */
  readonly sentence: string;
  /** small, at the right of the title, e.g. that the drawing is to scale */
  readonly aside: string;
  /** what a person who cannot see the sheet must be told */
  readonly description: string;
  /** the foot: columns of cells; a cell without words is a field to fill in by hand */
  readonly cells: readonly { readonly share: number; readonly cells: readonly Cell[] }[];
  /** height of the foot's cells, mm; 17.5 unless given */
  readonly foot?: number;
}

/** Room left between head and foot, mm of paper. */
export const bodyOf = ({ paper, lies, foot = 17.5 }: Pick<SheetFrame, "paper" | "lies" | "foot">): Rect => {
  const { width, height } = sizeOf(paper, lies);
  return { x0: MARGIN, y0: MARGIN + HEAD, x1: width - MARGIN, y1: height - MARGIN - STRIP - foot };
};

const sizeOf = (paper: Paper, lies: SheetFrame["lies"]) => {
  const [short, long] = sides[paper];
  return lies === "upright" ? { width: short, height: long } : { width: long, height: short };
};

/** One page in the house's frame: head, the given items in the body, foot cells, the standing sentence. */
export const framed = (frame: SheetFrame, items: readonly Item[]): Drawing => {
  const { width, height } = sizeOf(frame.paper, frame.lies);
  const box = bodyOf(frame);
  const edge = { x0: MARGIN, y0: MARGIN, x1: width - MARGIN, y1: height - MARGIN };
  return {
    title: frame.title,
    description: frame.description,
    width,
    height,
    items: [
      { kind: "polygon", tag: "frame", points: corners(edge), pen: "frame", hatch: "none" },
      ...head(frame.title, frame.sentence, frame.aside, { ...edge, y1: box.y0 }),
      ...items,
      rule(edge.x0, box.y1, edge.x1, box.y1, "frame"),
      ...titleBlock({ x0: edge.x0, x1: edge.x1, y0: box.y1, y1: edge.y1 - STRIP }, frame.cells),
      ...standingLine(edge),
    ],
  };
};

const standingLine = ({ x0, x1, y1 }: Rect): readonly Item[] => {
  const width = x1 - x0 - 4;
  const size = [2.25, 2.1, 1.95, 1.8].find((s) => wrapText(standing, s, "bold", width).length === 1) ?? 1.7;
  const lines = wrapText(standing, size, "bold", width);
  return lines.map((line, i) =>
    words("note-standing", (x0 + x1) / 2, y1 - (lines.length === 1 ? 1.8 : 3.1 - i * 2.1), line, size, {
      align: "middle",
      lettering: "bold",
    }),
  );
};
