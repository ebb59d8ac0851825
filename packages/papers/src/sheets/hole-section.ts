import type { HoleDetail } from "@floorworthy/assess/setout";
import type { Point, Rect } from "@floorworthy/engine/geometry";
import { type Term, toBase } from "@floorworthy/engine/quantities";
import type { Dimension, Ground, Item } from "../drawing/drawing.ts";
import { marksOf } from "../drawing/marks.ts";
import { placeLabels } from "../drawing/place-labels.ts";
import { boxOfText } from "../drawing/text-width.ts";
import { FIGURES } from "../plan/chain.ts";
import type { Scale } from "../plan/scales.ts";
import { printLength, type UnitSystem } from "../print/measure.ts";

export const mmOf = (term: Term | undefined): number | undefined => term && toBase(term.value, term.unit);

const HALF = 46;
const margins = { left: 15, right: 24, top: 3, bottom: 3 } as const;

/** Scales of a detail, largest first. */
const details: Readonly<Record<UnitSystem, readonly Scale[]>> = {
  "inch-pound": [
    { ratio: 2, written: "half size" },
    { ratio: 3, written: "4 in = 1 ft" },
    { ratio: 4, written: "3 in = 1 ft" },
    { ratio: 6, written: "2 in = 1 ft" },
    { ratio: 8, written: "1 1/2 in = 1 ft" },
    { ratio: 12, written: "1 in = 1 ft" },
  ],
  si: [2, 2.5, 5, 10, 20].map((ratio) => ({ ratio, written: `1:${ratio}` })),
};

const rectangle = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** One hole in section to scale: slab, hole, anchor, shims, plate, washer and nut. Undefined while a size is not known. */
export const holeSection = (hole: HoleDetail, units: UnitSystem, zone: Rect): Ground | undefined => {
  const [d0, h1, hnom, h, plate, washer, nut, length, shims] = [
    hole.diameter,
    hole.depth,
    hole.nominal,
    hole.thickness,
    hole.plate,
    hole.washer,
    hole.nut,
    hole.length,
    hole.shims,
  ].map(mmOf);
  if (d0 === undefined || h1 === undefined || hnom === undefined || h === undefined) return undefined;
  const [s, t, w, n] = [shims ?? 0, plate ?? 19, washer ?? 4, nut ?? 16];
  const top = length === undefined ? s + t + w + n + 6 : length - hnom;
  const height = h + Math.max(top, s + t + w + n) + 4;
  const free = {
    width: zone.x1 - zone.x0 - margins.left - margins.right,
    height: zone.y1 - zone.y0 - margins.top - margins.bottom,
  };
  const { ratio, written } =
    details[units].find((scale) => (2 * HALF) / scale.ratio <= free.width && height / scale.ratio <= free.height) ??
    details[units].at(-1)!;
  const k = 1 / ratio;
  const origin = {
    x: zone.x0 + margins.left + free.width / 2,
    y: zone.y0 + margins.top + (free.height - height * k) / 2 + (height - h) * k,
  };
  const da = d0 * 0.97;
  const part = (
    tag: string,
    points: Point[],
    pen: "wall" | "thin" | "edge",
    hatch: "none" | "blank" | "ink" | "concrete" | "diagonal",
  ): Exclude<Item, Ground> => ({
    kind: "polygon",
    tag,
    points,
    pen,
    hatch,
  });
  const drawn: Exclude<Item, Ground>[] = [
    part("concrete", rectangle(-HALF, 0, HALF, h), "edge", "concrete"),
    part("hole", rectangle(-d0 / 2, 0, d0 / 2, h1), "wall", "blank"),
    ...[-1, 1].flatMap((side) => [
      ...(s > 0 ? [part("shims", rectangle(side * (d0 / 2 + 2), -s, side * 36, 0), "thin", "diagonal")] : []),
      part("plate", rectangle(side * (d0 / 2 + 1), -s - t, side * HALF * 0.9, -s), "wall", "blank"),
    ]),
    part("washer", rectangle(-d0 * 1.3, -s - t - w, d0 * 1.3, -s - t), "thin", "blank"),
    part("nut", rectangle(-d0 * 0.85, -s - t - w - n, d0 * 0.85, -s - t - w), "wall", "blank"),
    part("anchor", rectangle(-da / 2, -top, da / 2, hnom), "wall", "blank"),
    ...[-0.25, 0.25].map(
      (x) =>
        ({
          kind: "line",
          tag: "anchor",
          from: { x: x * da, y: -top },
          to: { x: x * da, y: hnom * 0.55 },
          pen: "thin",
        }) as const,
    ),
  ];
  const dimensions = [
    tall(-HALF, 0, h1, -4.5, `drill ${printLength(h1, units)}`, "along"),
    tall(-HALF, 0, hnom, -10.5, `set ${printLength(hnom, units)}`, "along"),
    tall(HALF, 0, h, 4, `slab ${printLength(h, units)}`, "across"),
    ...(length === undefined ? [] : [tall(HALF, -top, 0, 4, `stud ${printLength(top, units)}`, "across")]),
  ];
  const items = [...drawn, ...dimensions];
  const marks = marksOf(items, { k, s: 1, origin });
  const wanted = [
    ...(s > 0 ? [{ words: `shims ${printLength(s, units)} at most`, at: { x: 34, y: -s / 2 } }] : []),
    {
      words: plate === undefined ? "base plate" : `plate ${printLength(t, units)}`,
      at: { x: -HALF * 0.8, y: -s - t / 2 },
    },
    { words: `${printLength(h - h1, units)} left below`, at: { x: 0, y: (h + h1) / 2 } },
    { words: `hole ${printLength(d0, units)}`, at: { x: d0 / 2, y: h1 * 0.8 } },
  ];
  const labels = placeLabels(
    wanted.map(({ words, at }) => ({
      tag: "labels",
      lettering: "regular" as const,
      size: 2.1,
      words,
      at,
      target: { x: at.x * k + origin.x, y: at.y * k + origin.y },
    })),
    {
      boxes: marks.flatMap((mark) => (mark.kind === "text" ? [boxOfText(mark)] : [])),
      lines: marks.flatMap((mark) =>
        mark.kind === "path" && mark.pen && mark.tag !== "hatch" && mark.tag !== "clearing"
          ? mark.points.slice(1).map((b, i) => ({ a: mark.points[i]!, b }))
          : [],
      ),
      within: zone,
    },
  );
  return {
    kind: "ground",
    tag: "hole-section",
    name: "hole",
    scale: ratio,
    written,
    origin,
    items: [...items, ...labels],
  };
};

const tall = (
  x: number,
  from: number,
  to: number,
  offsetPaper: number,
  words: string,
  figure: "along" | "across",
): Dimension => ({
  kind: "dimension",
  tag: "dimensions",
  axis: "y",
  from: { x, y: from },
  to: { x, y: to },
  base: x,
  offsetPaper,
  words,
  row: 0,
  figure,
  size: FIGURES,
});
