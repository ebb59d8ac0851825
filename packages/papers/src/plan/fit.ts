import type { Assessment } from "@floorworthy/assess";
import type { Point, Polygon, Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Dimension } from "../drawing/drawing.ts";
import { marksOf } from "../drawing/marks.ts";
import { boxOfText } from "../drawing/text-width.ts";
import { settingOut } from "./dimensions.ts";
import { type Scale, scaleToFit } from "./scales.ts";

interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Paper kept around the plan for its dimensions at least, mm. */
const LEAST: Margins = { left: 13.5, right: 9.5, top: 13.5, bottom: 9.5 };

interface Fitted {
  readonly scale: Scale;
  readonly origin: Point;
  readonly dimensions: readonly Dimension[];
}

/** How far the dimensions and their figures reach out of the drawn extents, mm of paper. */
const reachOf = ({ dimensions, scale, origin }: Fitted, extents: Rect): Margins => {
  const k = 1 / scale.ratio;
  const boxes = marksOf(dimensions, { k, s: 1, origin }).flatMap((mark) => {
    if (mark.kind === "text") return [boxOfText(mark)];
    return mark.kind === "path" ? mark.points.map(({ x, y }) => ({ x0: x, x1: x, y0: y, y1: y })) : [];
  });
  const most = (of: (box: Rect) => number) => Math.max(0, ...boxes.map(of)) + 0.6;
  return {
    left: most((b) => extents.x0 * k + origin.x - b.x0),
    right: most((b) => b.x1 - extents.x1 * k - origin.x),
    top: most((b) => extents.y0 * k + origin.y - b.y0),
    bottom: most((b) => b.y1 - extents.y1 * k - origin.y),
  };
};

const larger = (a: Margins, b: Margins): Margins => ({
  left: Math.max(a.left, b.left),
  right: Math.max(a.right, b.right),
  top: Math.max(a.top, b.top),
  bottom: Math.max(a.bottom, b.bottom),
});

/** The largest standard scale at which the plan with its dimensions fits the zone, and where its origin then lies. */
export const fitted = (
  job: Job,
  assessment: Assessment,
  outline: Polygon,
  extents: Rect,
  zone: Rect,
  wanted: Scale | undefined,
): Fitted => {
  const [width, height] = [extents.x1 - extents.x0, extents.y1 - extents.y0];
  const attempt = (m: Margins): Fitted => {
    const free = { width: zone.x1 - zone.x0 - m.left - m.right, height: zone.y1 - zone.y0 - m.top - m.bottom };
    const scale = wanted ?? scaleToFit(width, height, free, job.units);
    const k = 1 / scale.ratio;
    const origin = {
      x: zone.x0 + m.left + (free.width - width * k) / 2 - extents.x0 * k,
      y: zone.y0 + m.top + (free.height - height * k) / 2 - extents.y0 * k,
    };
    return {
      scale,
      origin,
      dimensions: settingOut(assessment, job.floor.joints, outline, extents, scale.ratio, job.units),
    };
  };
  let margins = LEAST;
  let made = attempt(margins);
  // rows of narrow figures depend on the scale, and the scale on the room they need: three rounds settle it
  for (let round = 0; round < 3; round++) {
    margins = larger(margins, reachOf(made, extents));
    made = attempt(margins);
  }
  return made;
};
