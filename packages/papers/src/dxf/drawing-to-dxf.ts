import type { Point } from "@floorworthy/engine/geometry";
import {
  DxfWriter,
  LWPolylineFlags,
  point2d,
  point3d,
  TextHorizontalAlignment,
  TextVerticalAlignment,
  Units,
} from "@tarikjabiri/dxf";
import type { Drawing, Ground } from "../drawing/drawing.ts";
import { type Mark, marksOf } from "../drawing/marks.ts";

/** DXF y runs up, the plan's y runs down the page. */
const up = (p: Point) => ({ x: p.x, y: 0 - p.y });

const layerOf = (tag: string): string => tag.toUpperCase().replace(/[^A-Z0-9]+/g, "_");

const write = (dxf: DxfWriter, mark: Mark) => {
  const options = { layerName: layerOf(mark.tag) };
  if (mark.kind === "circle") {
    const c = up(mark.centre);
    dxf.addCircle(point3d(c.x, c.y, 0), mark.radius, options);
  } else if (mark.kind === "path") {
    if (mark.tag === "clearing" || (!mark.pen && mark.fill === "paper")) return;
    const points = mark.points.map((p) => ({ point: point2d(up(p).x, up(p).y) }));
    const flags = mark.ends === "closed" ? LWPolylineFlags.Closed : LWPolylineFlags.None;
    dxf.addLWPolyline(points, { ...options, flags });
  } else {
    const p = up(mark.at);
    const align = {
      start: TextHorizontalAlignment.Left,
      middle: TextHorizontalAlignment.Center,
      end: TextHorizontalAlignment.Right,
    };
    dxf.addText(point3d(p.x, p.y, 0), mark.size * 0.73, mark.words, {
      ...options,
      rotation: mark.reads === "upward" ? 90 : 0,
      ...(mark.align === "start"
        ? {}
        : {
            horizontalAlignment: align[mark.align],
            verticalAlignment: TextVerticalAlignment.BaseLine,
            secondAlignmentPoint: point3d(p.x, p.y, 0),
          }),
    });
  }
};

/**
 * The scaled part of a drawing (its first `Ground`, or the one named) at full size in mm, one layer per tag. Dimensions are
 * lines and text, because readers that audit a file drop dimension objects without their own blocks.
 */
export const drawingToDxf = (drawing: Drawing, name?: string): string => {
  const ground = drawing.items.find((item): item is Ground => item.kind === "ground" && (!name || item.name === name));
  const marks = ground
    ? marksOf(ground.items, { k: 1, s: ground.scale, origin: { x: 0, y: 0 } })
    : marksOf(drawing.items);
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const layer of new Set(marks.map((mark) => layerOf(mark.tag)))) dxf.addLayer(layer, 7, "CONTINUOUS");
  for (const mark of marks) write(dxf, mark);
  return dxf.stringify();
};
