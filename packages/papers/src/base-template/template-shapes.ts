import type { PlacedBase } from "@floorworthy/assess";
import { type Point, polygonCentroid } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { boundsOf } from "../drawing/hatch.ts";
import type { PenName } from "../drawing/pens.ts";

/** A base plate at full size, mm about the column's centre: x toward the right, y toward the door. */
export interface TemplateShapes {
  readonly outlines: readonly Outline[];
  readonly circles: readonly { readonly tag: string; readonly centre: Point; readonly radius: number }[];
  readonly lines: readonly Stroke[];
  readonly words: readonly TemplateWords[];
}

export interface Stroke {
  readonly tag: string;
  readonly from: Point;
  readonly to: Point;
  readonly pen: PenName;
}

interface Outline {
  readonly tag: string;
  readonly points: readonly Point[];
  readonly pen: PenName;
}

export interface TemplateWords {
  readonly tag: string;
  readonly at: Point;
  readonly words: string;
  readonly size: number;
  readonly align: "start" | "middle" | "end";
}

/** Beyond the plate on every side, mm. */
export const ROUND = 12;

const cross = (tag: string, { x, y }: Point, r: number): Stroke[] => [
  { tag, from: { x: x - r, y }, to: { x: x + r, y }, pen: "thin" },
  { tag, from: { x, y: y - r }, to: { x, y: y + r }, pen: "thin" },
];

export const templateShapes = (job: Job, base: PlacedBase): TemplateShapes => {
  const local = (p: Point): Point => ({ x: p.x - base.centre.x, y: p.y - base.centre.y });
  const holes = base.anchors.map(({ id, at }) => ({ id, at: local(at) }));
  const outline = base.outline.map(local);
  const box = boundsOf([...outline, ...holes.map(({ at }) => at), { x: 0, y: 0 }]);
  const { holeDiameter, diameter } = job.lift.anchors.product;
  const d = holeDiameter.known ? holeDiameter.value : diameter.known ? diameter.value : undefined;
  const middle = outline.length > 2 ? polygonCentroid(outline) : { x: 0, y: 0 };
  const inward = base.side === "left" ? "to the vehicle →" : "← to the vehicle";
  return {
    outlines: outline.length > 2 ? [{ tag: "plate", points: outline, pen: "edge" }] : [],
    circles: d === undefined ? [] : holes.map(({ at }) => ({ tag: "holes", centre: at, radius: d / 2 })),
    lines: [
      ...holes.flatMap(({ at }) => cross("hole-centres", at, (d ?? 12) / 2 + 8)),
      { tag: "axes", from: { x: box.x0 - ROUND, y: 0 }, to: { x: box.x1 + ROUND, y: 0 }, pen: "centre-line" },
      { tag: "axes", from: { x: 0, y: box.y0 - ROUND }, to: { x: 0, y: box.y1 + ROUND }, pen: "centre-line" },
    ],
    words: [
      ...holes.map(({ id, at }) => ({
        tag: "names",
        at: { x: at.x + (at.x > middle.x ? -1 : 1) * ((d ?? 12) / 2 + 9), y: at.y - 4 },
        words: id,
        size: 7,
        align: at.x > middle.x ? ("end" as const) : ("start" as const),
      })),
      { tag: "names", at: { x: 4, y: box.y0 + 9 }, words: "↑ to the back wall", size: 4.5, align: "start" },
      {
        tag: "names",
        at: { x: base.side === "left" ? box.x1 - 4 : box.x0 + 4, y: -3 },
        words: inward,
        size: 4.5,
        align: base.side === "left" ? "end" : "start",
      },
      {
        tag: "names",
        at: { x: 4, y: box.y1 - 5 },
        words: `${base.side.toUpperCase()} column, seen from above`,
        size: 4.5,
        align: "start",
      },
    ],
  };
};

export const shapesBox = ({ outlines, circles, lines }: TemplateShapes) =>
  boundsOf([
    ...outlines.flatMap((o) => o.points),
    ...circles.flatMap(({ centre: c, radius: r }) => [
      { x: c.x - r, y: c.y - r },
      { x: c.x + r, y: c.y + r },
    ]),
    ...lines.flatMap((l) => [l.from, l.to]),
  ]);
