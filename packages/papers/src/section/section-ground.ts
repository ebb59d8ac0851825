import type { Assessment } from "@floorworthy/assess";
import type { Point, Polygon, Rect, Segment } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Dimension, Ground } from "../drawing/drawing.ts";
import { marksOf } from "../drawing/marks.ts";
import { placeLabels } from "../drawing/place-labels.ts";
import { boxOfText } from "../drawing/text-width.ts";
import { chain, FIGURES } from "../plan/chain.ts";
import type { Part } from "../plan/part.ts";
import { together } from "../plan/part.ts";
import { scaleToFit } from "../plan/scales.ts";
import { printLength, type UnitSystem } from "../print/measure.ts";
import { type Cut, cutOf } from "./cut.ts";
import { anchorsPart, barsPart } from "./steel.ts";

const STUB = 130;
const margins = { left: 17, right: 15, top: 8, bottom: 8 } as const;

/** Where no thickness is known the slab is drawn this deep, dashed, and said to be not known. */
const NOT_KNOWN = 100;

interface Shape {
  readonly side: number;
  readonly run: number;
  readonly slab: number;
  readonly pad: number;
  readonly x0: number;
  readonly x1: number;
  readonly end: number;
  readonly course: number;
}

const shapeOf = (cut: Cut, course: number): Shape => {
  const slab = cut.slab ?? NOT_KNOWN;
  const pad = cut.pad ? (cut.pad.thickness ?? slab) : slab;
  const run = cut.pad ? Math.max(0, pad - slab) * cut.pad.slope : 0;
  const side = cut.pad ? 300 + run : 0;
  const width = cut.pad?.width ?? (cut.base ? cut.base.to + 450 : 1500);
  return { side, run, slab, pad, x0: 0, x1: width, end: width + side, course };
};

const underside = ({ side, run, slab, pad, x0, x1, end }: Shape): readonly Point[] =>
  pad === slab
    ? [
        { x: end, y: slab },
        { x: -side, y: slab },
      ]
    : [
        { x: end, y: slab },
        { x: x1 + run, y: slab },
        { x: x1, y: pad },
        { x: x0, y: pad },
        { x: x0 - run, y: slab },
        { x: -side, y: slab },
      ];

const concretePart = (cut: Cut, shape: Shape): Part => {
  const { side, end, slab, pad, x0, x1, run, course } = shape;
  const below = underside(shape);
  const whole: Polygon = [{ x: -side, y: 0 }, { x: end, y: 0 }, ...below];
  const bed: Polygon = [...[...below].reverse(), ...below.map((p) => ({ x: p.x, y: p.y + course }))];
  const pen = cut.slab === undefined ? "planned" : "edge";
  const apart = cut.pad?.tied === "apart";
  const seam = (x: number, aside: number) =>
    ({
      kind: "line",
      tag: "joints",
      from: { x: x + aside, y: 0 },
      to: { x: x + aside, y: slab },
      pen: "isolation",
    }) as const;
  return {
    items: [
      ...(course > 0
        ? [{ kind: "polygon", tag: "base-course", points: bed, pen: "thin", hatch: "stone" } as const]
        : []),
      { kind: "polygon", tag: "concrete", points: whole, pen, hatch: "concrete" },
      ...(apart ? [seam(x0, pad > slab ? -run : 0), seam(x1, pad > slab ? run : 0)] : []),
      { kind: "symbol", tag: "breaks", name: "break", at: { x: -side, y: slab / 2 }, size: 4 },
      { kind: "symbol", tag: "breaks", name: "break", at: { x: end, y: slab / 2 }, size: 4 },
    ],
    wanted: [
      ...(course > 0
        ? [
            {
              tag: "labels",
              words: "compacted base",
              lettering: "regular",
              at: { x: x0 + (x1 - x0) * 0.2, y: pad + course / 2 },
            } as const,
          ]
        : []),
      ...(apart
        ? [
            {
              tag: "labels",
              words: "joint to old slab",
              lettering: "regular",
              at: { x: x1 + run, y: slab / 2 },
            } as const,
          ]
        : []),
      ...(run > 0
        ? [
            {
              tag: "labels",
              words: `sides slope ${cut.pad?.slope} to 1`,
              lettering: "regular",
              at: { x: x1 + run / 2, y: (slab + pad) / 2 },
            } as const,
          ]
        : []),
    ],
  };
};

const columnPart = (cut: Cut, plate: number): Part => {
  if (!cut.base) return { items: [], wanted: [] };
  const { from, to } = cut.base;
  const [a, b] = [from + (to - from) * 0.3, to - (to - from) * 0.3];
  const upright = (x: number) =>
    ({ kind: "line", tag: "column", from: { x, y: -plate }, to: { x, y: -STUB }, pen: "wall" }) as const;
  const points = [
    { x: from, y: -plate },
    { x: to, y: -plate },
    { x: to, y: 0 },
    { x: from, y: 0 },
  ];
  return {
    items: [upright(a), upright(b), { kind: "polygon", tag: "plate", points, pen: "wall", hatch: "ink" }],
    wanted: [{ tag: "labels", words: "column base", lettering: "regular", at: { x: a, y: -STUB * 0.7 } }],
  };
};

const depth = (x: number, thickness: number, offsetPaper: number, words: string): Dimension => ({
  kind: "dimension",
  tag: "dimensions",
  axis: "y",
  from: { x, y: 0 },
  to: { x, y: thickness },
  base: x,
  offsetPaper,
  words,
  row: 0,
  figure: "across",
  size: FIGURES,
});

const dimensionsOf = (cut: Cut, shape: Shape, ratio: number, units: UnitSystem): readonly Dimension[] => {
  const { side, end, slab, pad, x0, x1, course } = shape;
  const anchors = cut.base?.anchors ?? [];
  const of = { axis: "x", ratio, units } as const;
  return [
    depth(-side, slab, -5, cut.slab === undefined ? "not known" : printLength(slab, units)),
    ...(cut.pad?.thickness === undefined ? [] : [depth(end, pad, 5, printLength(pad, units))]),
    ...(cut.pad ? chain({ ...of, base: pad + course, side: 1, offsetPaper: 4, stops: [x0, x1] }).items : []),
    ...(anchors.length
      ? chain({ ...of, base: -STUB, side: -1, offsetPaper: 1.5, stops: cut.pad ? [x0, ...anchors, x1] : anchors }).items
      : []),
  ];
};

const linesOf = (marks: ReturnType<typeof marksOf>): readonly Segment[] =>
  marks.flatMap((mark) =>
    mark.kind === "path" && mark.pen && mark.tag !== "hatch" && mark.tag !== "clearing"
      ? mark.points.slice(1).map((b, i) => ({ a: mark.points[i]!, b }))
      : [],
  );

/** Section through the concrete under a column, to the largest standard scale that fits; undefined without a base or a pad. */
export const sectionGround = (job: Job, assessment: Assessment, zone: Rect): Ground | undefined => {
  const cut = cutOf(job, assessment);
  if (!cut) return undefined;
  const { units, floor, lift } = job;
  const stone = floor.ground.base.known ? floor.ground.base.value !== "none" : floor.state === "to-be-poured";
  const shape = shapeOf(cut, stone ? 100 : 0);
  const [width, height] = [shape.end + shape.side, STUB + shape.pad + shape.course];
  const free = {
    width: zone.x1 - zone.x0 - margins.left - margins.right,
    height: zone.y1 - zone.y0 - margins.top - margins.bottom,
  };
  const { ratio, written } = scaleToFit(width, height, free, units);
  const k = 1 / ratio;
  const origin = {
    x: zone.x0 + margins.left + (free.width - width * k) / 2 + shape.side * k,
    y: zone.y0 + margins.top + (free.height - height * k) / 2 + STUB * k,
  };
  const plate = lift.base.thickness.known ? lift.base.thickness.value : 19;
  const parts = together([
    concretePart(cut, shape),
    barsPart(cut, floor.bars, shape, units),
    columnPart(cut, plate),
    anchorsPart(cut, lift.anchors.product, cut.pad ? shape.pad : cut.slab, plate, units),
  ]);
  const drawn = [...parts.items, ...dimensionsOf(cut, shape, ratio, units)];
  const marks = marksOf(drawn, { k, s: 1, origin });
  const toPaper = (p: Point): Point => ({ x: p.x * k + origin.x, y: p.y * k + origin.y });
  const labels = placeLabels(
    parts.wanted.map((w) => ({ ...w, size: 2.1, target: toPaper(w.at) })),
    {
      boxes: marks.flatMap((mark) => (mark.kind === "text" ? [boxOfText(mark)] : [])),
      avoid: [
        {
          x0: toPaper({ x: -shape.side, y: 0 }).x,
          x1: toPaper({ x: shape.end, y: 0 }).x,
          y0: origin.y,
          y1: origin.y + (shape.slab + shape.course) * k,
        },
        {
          x0: toPaper({ x: shape.x0, y: 0 }).x,
          x1: toPaper({ x: shape.x1, y: 0 }).x,
          y0: origin.y,
          y1: origin.y + (shape.pad + shape.course) * k,
        },
      ],
      lines: linesOf(marks),
      within: zone,
    },
  );
  return {
    kind: "ground",
    tag: "section",
    name: "section",
    scale: ratio,
    written,
    origin,
    items: [...drawn, ...labels],
  };
};
