import type { PlacedBase } from "@floorworthy/assess";
import type { Point, Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { boxOfText } from "../drawing/text-width.ts";
import { type Paper, words } from "../sheets/frame.ts";
import { checkLine } from "./check-line.ts";
import { clipSegment } from "./clip-segment.ts";
import { describeTemplate, templateWords } from "./template-drawing.ts";
import { type Stroke, shapesBox, type TemplateShapes, templateShapes } from "./template-shapes.ts";

const sides = { letter: [215.9, 279.4], a4: [210, 297] } as const;
/** Unprintable edge, strip for the check line, and what neighbouring pages share, mm. */
const EDGE = 9;
const STRIP = 17;
const SHARED = 14;

interface Tiling {
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
}

const tilingOf = (box: Rect, width: number, height: number): Tiling => {
  const count = (length: number, window: number) =>
    length <= window ? 1 : Math.ceil((length - SHARED) / (window - SHARED));
  return {
    width,
    height,
    columns: count(box.x1 - box.x0, width - 2 * EDGE),
    rows: count(box.y1 - box.y0, height - 2 * EDGE - STRIP),
  };
};

/** Circles as many-sided outlines: off the true circle by less than 0.02 mm at the sizes of anchor holes. */
const SIDES = 72;

const strokesOf = ({ outlines, circles, lines }: TemplateShapes): Stroke[] => [
  ...outlines.flatMap(({ tag, points, pen }) =>
    points.map((from, i) => ({ tag, from, to: points[(i + 1) % points.length]!, pen })),
  ),
  ...circles.flatMap(({ tag, centre, radius }) =>
    Array.from({ length: SIDES }, (_, i) => {
      const on = (k: number): Point => ({
        x: centre.x + radius * Math.cos((2 * Math.PI * k) / SIDES),
        y: centre.y + radius * Math.sin((2 * Math.PI * k) / SIDES),
      });
      return { tag, from: on(i), to: on(i + 1), pen: "wall" as const };
    }),
  ),
  ...lines,
];

/** One column's template at 1:1: one page where it fits, else pages that overlap, with match marks where they meet. */
export const templatePages = (job: Job, base: PlacedBase, paper: Paper): readonly Drawing[] => {
  const shapes = templateShapes(job, base);
  const box = shapesBox(shapes);
  const [short, long] = sides[paper];
  const tilings = [tilingOf(box, short, long), tilingOf(box, long, short)];
  const tiling = tilings.reduce((a, b) => (b.columns * b.rows < a.columns * a.rows ? b : a));
  const { width, height, columns, rows } = tiling;
  const window = { width: width - 2 * EDGE, height: height - 2 * EDGE - STRIP };
  const step = { x: window.width - SHARED, y: window.height - SHARED };
  const marks = matchMarks(box, step, columns, rows);
  const strokes = [...strokesOf(shapes), ...marks.strokes];
  const named = [...shapes.words, ...marks.words];
  return Array.from({ length: columns * rows }, (_, n): Drawing => {
    const [column, row] = [n % columns, Math.floor(n / columns)];
    const x0 = box.x0 + column * step.x;
    const y0 = box.y0 + row * step.y;
    const seen: Rect = { x0, y0, x1: x0 + window.width, y1: y0 + window.height };
    const put = (p: Point): Point => ({ x: p.x - x0 + EDGE, y: p.y - y0 + EDGE });
    const items: Item[] = [
      ...strokes.flatMap(({ tag, from, to, pen }): Item[] => {
        const cut = clipSegment(from, to, seen);
        return cut ? [{ kind: "line", tag, from: put(cut[0]), to: put(cut[1]), pen }] : [];
      }),
      ...named
        .filter((w) => within(boxOfText({ ...w, lettering: "bold", reads: "across" }), seen))
        .map(
          (w): Item => words(w.tag, put(w.at).x, put(w.at).y, w.words, w.size, { align: w.align, lettering: "bold" }),
        ),
    ];
    const page = `Page ${n + 1} of ${columns * rows}${columns * rows > 1 ? `: column ${column + 1}, row ${row + 1}. Lay mark on mark` : ""}.`;
    return {
      title: `Template, ${base.side} column: ${job.title}`,
      description: `${describeTemplate(job, base)} ${page}`,
      width,
      height,
      items: [
        ...items,
        ...checkLine({ x: EDGE, y: height - EDGE - 3 }),
        words("note-page", width - EDGE, height - EDGE - 7, page, 2.6, { align: "end", lettering: "bold" }),
        words("note-page", width - EDGE, height - EDGE - 2.5, fitting(templateWords(job, base), width), 2.1, {
          align: "end",
        }),
      ],
    };
  });
};

/** The line beside the check line on a narrow page. */
const fitting = (sentence: string, width: number): string =>
  width < 250 ? sentence.replace(/^.*?, full size/, "Full size") : sentence;

const within = (inner: Rect, outer: Rect): boolean =>
  inner.x0 >= outer.x0 && inner.x1 <= outer.x1 && inner.y0 >= outer.y0 && inner.y1 <= outer.y1;

/** Crosses in the strips that neighbouring pages share, numbered, the same on both. */
const matchMarks = (box: Rect, step: Point, columns: number, rows: number) => {
  const places: Point[] = [];
  for (let c = 0; c + 1 < columns; c++)
    for (let r = 0; r < rows; r++)
      for (const share of [0.25, 0.75])
        places.push({ x: box.x0 + (c + 1) * step.x + SHARED / 2, y: box.y0 + (r + share) * step.y });
  for (let r = 0; r + 1 < rows; r++)
    for (let c = 0; c < columns; c++)
      for (const share of [0.25, 0.75])
        places.push({ x: box.x0 + (c + share) * step.x, y: box.y0 + (r + 1) * step.y + SHARED / 2 });
  return {
    strokes: places.flatMap(({ x, y }): Stroke[] => [
      { tag: "match-marks", from: { x: x - 5, y }, to: { x: x + 5, y }, pen: "wall" },
      { tag: "match-marks", from: { x, y: y - 5 }, to: { x, y: y + 5 }, pen: "wall" },
    ]),
    words: places.map(({ x, y }, i) => ({
      tag: "match-marks",
      at: { x: x + 1.2, y: y - 1.2 },
      words: String(i + 1),
      size: 3,
      align: "start" as const,
    })),
  };
};
