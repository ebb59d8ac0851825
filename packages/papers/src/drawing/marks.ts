/**
 * From items to marks: paths, circles and lines of text, all a renderer has to know. Symbols, dimensions, labels and
 * hatches are resolved here once, so that every renderer shows the same shapes.
 */
import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Circle, Dimension, Drawing, Item, Label, Polyline, Region, Sign, Words } from "./drawing.ts";
import { baseStones, concreteStones, diagonalStrokes, irregular } from "./hatch.ts";
import { type PenName, pens } from "./pens.ts";
import { boxOfText, type Lettering, widthOfText } from "./text-width.ts";

export type Mark = PathMark | CircleMark | TextMark;

export interface PathMark {
  readonly kind: "path";
  readonly tag: string;
  readonly points: readonly Point[];
  readonly ends: "open" | "closed";
  readonly pen?: PenName;
  readonly fill: "none" | "paper" | "ink" | "accent";
}

export interface CircleMark {
  readonly kind: "circle";
  readonly tag: string;
  readonly centre: Point;
  readonly radius: number;
  readonly pen: PenName;
  readonly fill: "none" | "paper" | "ink";
}

export interface TextMark {
  readonly kind: "text";
  readonly tag: string;
  readonly at: Point;
  readonly words: string;
  readonly size: number;
  readonly align: "start" | "middle" | "end";
  readonly lettering: Lettering;
  readonly reads: "across" | "upward";
}

/** How model points become output points (`p · k + origin`) and how large 1 mm of paper is there (`s`). */
export interface Placing {
  readonly k: number;
  readonly s: number;
  readonly origin: Point;
}

const paper: Placing = { k: 1, s: 1, origin: { x: 0, y: 0 } };

const put = (p: Point, { k, origin }: Placing): Point => ({ x: p.x * k + origin.x, y: p.y * k + origin.y });

const path = (
  tag: string,
  points: readonly Point[],
  ends: PathMark["ends"],
  pen: PenName | undefined,
  fill: PathMark["fill"] = "none",
): PathMark => ({ kind: "path", tag, points, ends, fill, ...(pen ? { pen } : {}) });

const ofPolyline = ({ tag, points, pen, course }: Polyline, place: Placing): Mark[] => {
  const placed = points.map((p) => put(p, place));
  return [path(tag, course === "irregular" ? irregular(placed, place.s) : placed, "open", pen)];
};

const ofRegion = ({ tag, points, pen, hatch }: Region, place: Placing): Mark[] => {
  const outline: Polygon = points.map((p) => put(p, place));
  const fill = hatch === "ink" ? "ink" : hatch === "none" ? "none" : "paper";
  const inside: Mark[] =
    hatch === "concrete"
      ? concreteStones(outline, place.s).map((stone) => path("hatch", stone, "closed", "hatch"))
      : hatch === "stone"
        ? baseStones(outline, place.s).map((stone) => path("hatch", stone, "closed", "hatch"))
        : hatch === "diagonal"
          ? diagonalStrokes(outline, place.s).map((stroke) => path("hatch", stroke, "open", "hatch"))
          : [];
  const ground = fill === "none" ? [] : [path(tag, outline, "closed", undefined, fill)];
  return [...ground, ...inside, ...(pen ? [path(tag, outline, "closed", pen)] : [])];
};

const ofCircle = ({ tag, centre, radius, pen, hatch }: Circle, place: Placing): Mark => ({
  kind: "circle",
  tag,
  centre: put(centre, place),
  radius: radius * place.k,
  pen,
  fill: hatch === "blank" ? "paper" : hatch,
});

const clearing = (text: TextMark, s: number): PathMark => {
  const { x0, y0, x1, y1 } = boxOfText(text);
  const m = 0.3 * s;
  const corners = [
    { x: x0 - m, y: y0 - m },
    { x: x1 + m, y: y0 - m },
    { x: x1 + m, y: y1 + m },
    { x: x0 - m, y: y1 + m },
  ];
  return path("clearing", corners, "closed", undefined, "paper");
};

const ofWords = ({ tag, at, nudge, words, size, align, lettering, reads, behind }: Words, place: Placing): Mark[] => {
  const p = put(at, place);
  const moved = { x: p.x + (nudge?.x ?? 0) * place.s, y: p.y + (nudge?.y ?? 0) * place.s };
  const text: TextMark = { kind: "text", tag, at: moved, words, size: size * place.s, align, lettering, reads };
  return behind === "cleared" ? [clearing(text, place.s), text] : [text];
};

const tick = (tag: string, p: Point, s: number): Mark => {
  const r = 0.75 * s;
  return path(
    tag,
    [
      { x: p.x - r, y: p.y + r },
      { x: p.x + r, y: p.y - r },
    ],
    "open",
    "tick",
  );
};

/** Extension line from just off the base to just beyond the dimension line. */
const extension = (tag: string, base: Point, end: Point, s: number): Mark[] => {
  const length = Math.hypot(end.x - base.x, end.y - base.y);
  if (length < 2 * s) return [];
  const u = { x: (end.x - base.x) / length, y: (end.y - base.y) / length };
  const from = { x: base.x + u.x * 0.8 * s, y: base.y + u.y * 0.8 * s };
  return [path(tag, [from, { x: end.x + u.x * 0.9 * s, y: end.y + u.y * 0.9 * s }], "open", "dimension")];
};

const ofDimension = (item: Dimension, place: Placing): Mark[] => {
  const { tag, axis, words, row, size } = item;
  const { s } = place;
  const from = put(item.from, place);
  const to = put(item.to, place);
  if (axis === "aligned") {
    return [path(tag, [from, to], "open", "dimension"), tick(tag, from, s), tick(tag, to, s)];
  }
  const base = put({ x: item.base, y: item.base }, place);
  const away = (0.7 + row * (size + 0.5)) * s;
  const across = axis === "x";
  const level = (across ? base.y : base.x) + item.offsetPaper * s;
  const a = across ? { x: from.x, y: level } : { x: level, y: from.y };
  const b = across ? { x: to.x, y: level } : { x: level, y: to.y };
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const figure: Pick<TextMark, "at" | "reads" | "align"> =
    item.figure === "across" && !across
      ? {
          at: { x: level + Math.sign(item.offsetPaper) * 1.1 * s, y: middle.y + 0.3 * size * s },
          reads: "across",
          align: item.offsetPaper < 0 ? "end" : "start",
        }
      : across
        ? { at: { x: middle.x, y: level - away }, reads: "across", align: "middle" }
        : { at: { x: level - away, y: middle.y }, reads: "upward", align: "middle" };
  const text: TextMark = { kind: "text", tag: "figures", words, size: size * s, lettering: "regular", ...figure };
  return [
    path(tag, [a, b], "open", "dimension"),
    ...extension(tag, across ? { x: from.x, y: base.y } : { x: base.x, y: from.y }, a, s),
    ...extension(tag, across ? { x: to.x, y: base.y } : { x: base.x, y: to.y }, b, s),
    tick(tag, a, s),
    tick(tag, b, s),
    clearing(text, 0),
    text,
  ];
};

const ofLabel = ({ tag, at, nudge, words, size, align, lettering }: Label, place: Placing): Mark[] => {
  const { s } = place;
  const target = put(at, place);
  const moved = { x: target.x + nudge.x * s, y: target.y + nudge.y * s };
  const text: TextMark = { kind: "text", tag, at: moved, words, size: size * s, align, lettering, reads: "across" };
  const elbow = { x: moved.x + (align === "start" ? -0.5 : 0.5) * s, y: moved.y - 0.3 * size * s };
  const far = Math.hypot(elbow.x - target.x, elbow.y - target.y) > 1.2 * s;
  const leader: Mark[] = [
    path("leaders", [target, elbow], "open", "thin"),
    { kind: "circle", tag: "leaders", centre: target, radius: 0.28 * s, pen: "thin", fill: "ink" },
  ];
  return [...(far ? leader : []), clearing(text, s), text];
};

const cross = (tag: string, p: Point, r: number, pen: PenName): Mark[] => [
  path(
    tag,
    [
      { x: p.x - r, y: p.y },
      { x: p.x + r, y: p.y },
    ],
    "open",
    pen,
  ),
  path(
    tag,
    [
      { x: p.x, y: p.y - r },
      { x: p.x, y: p.y + r },
    ],
    "open",
    pen,
  ),
];

const ofSign = ({ tag, name, at, size }: Sign, place: Placing): Mark[] => {
  const p = put(at, place);
  const r = (size / 2) * place.s;
  switch (name) {
    case "anchor":
      return cross(tag, p, r, "anchor");
    case "centre":
      return [
        ...cross(tag, p, r, "thin"),
        { kind: "circle", tag, centre: p, radius: r * 0.55, pen: "thin", fill: "none" },
      ];
    case "reading":
      return [
        path(
          tag,
          [
            { x: p.x, y: p.y },
            { x: p.x + r, y: p.y - 2 * r },
            { x: p.x - r, y: p.y - 2 * r },
          ],
          "closed",
          "thin",
          "ink",
        ),
      ];
    case "arrow-up":
      return [
        path(
          tag,
          [
            { x: p.x, y: p.y + 4 * r },
            { x: p.x, y: p.y },
          ],
          "open",
          "wall",
        ),
        path(
          tag,
          [
            { x: p.x, y: p.y - r },
            { x: p.x + r, y: p.y + r },
            { x: p.x - r, y: p.y + r },
          ],
          "closed",
          "thin",
          "ink",
        ),
      ];
    case "break":
      return [
        path(
          tag,
          [
            { x: p.x, y: p.y - 2 * r },
            { x: p.x, y: p.y - 0.5 * r },
            { x: p.x - 0.6 * r, y: p.y - 0.2 * r },
            { x: p.x + 0.6 * r, y: p.y + 0.2 * r },
            { x: p.x, y: p.y + 0.5 * r },
            { x: p.x, y: p.y + 2 * r },
          ],
          "open",
          "thin",
        ),
      ];
  }
};

const marksOfItem = (item: Item, place: Placing): readonly Mark[] => {
  switch (item.kind) {
    case "line":
      return [path(item.tag, [put(item.from, place), put(item.to, place)], "open", item.pen)];
    case "polyline":
      return ofPolyline(item, place);
    case "polygon":
      return ofRegion(item, place);
    case "circle":
      return [ofCircle(item, place)];
    case "text":
      return ofWords(item, place);
    case "dimension":
      return ofDimension(item, place);
    case "label":
      return ofLabel(item, place);
    case "symbol":
      return ofSign(item, place);
    case "ground":
      return marksOf(item.items, { k: 1 / item.scale, s: 1, origin: item.origin });
  }
};

/** Marks of items in drawing order. A `Ground` inside keeps its own scale. */
export const marksOf = (items: readonly Item[], place: Placing = paper): readonly Mark[] =>
  items.flatMap((item) => marksOfItem(item, place));

/** The marks of a drawing in mm of its paper; words last, so that no line runs over them. */
export const onPaper = (drawing: Drawing): readonly Mark[] => {
  const marks = marksOf(drawing.items);
  const isWords = (m: Mark) => m.kind === "text" || m.tag === "clearing";
  return [
    ...marks.filter((m) => !isWords(m)),
    ...marks.filter((m) => m.tag === "clearing"),
    ...marks.filter((m) => m.kind === "text"),
  ];
};

export const penOf = (name: PenName) => pens[name];

export const textLengthOf = (mark: TextMark): number => widthOfText(mark.words, mark.size, mark.lettering);
