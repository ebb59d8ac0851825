import type { Rect } from "../geometry/index.ts";
import { type Axis, splineAxis } from "./axis.ts";
import { breakLines } from "./break-lines.ts";
import type { Floor, FloorOptions } from "./floor.ts";
import { type Detail, gradedBreaks } from "./grading.ts";
import { relativeStiffness } from "./relative-stiffness.ts";

/**
 * The tensor-product grid. Unknown (i, j) = function i of x times function j of y, numbered i * strideX + j * strideY
 * with the shorter axis running fastest, so that the band is narrow. Cell (s, t) has number s * y.spans + t.
 */
export interface Grid {
  readonly x: Axis;
  readonly y: Axis;
  readonly strideX: number;
  readonly strideY: number;
  readonly unknowns: number;
  readonly halfBand: number;
  /** mm, of every cell */
  readonly thickness: Float64Array;
}

/** Longest span over l where nothing happens, and at the edge of a thickened zone or in a base plate over its width. */
const farSpan = 1.2;
const padEdgeSpan = 0.18;
const spansAcrossFocus = 8;
/** Shorter spans than this, over l, lose more to rounding than they gain: the matrix spreads as (l / span)⁴. */
const shortestSpan = 1 / 200;

export const floorGrid = (floor: Floor, options: FloorOptions): Grid => {
  const fineness = options.fineness ?? 1;
  const focus = options.focus.flatMap((rect) => clipped(rect, floor.outline));
  const x = floorAxis(floor, "x", focus, fineness);
  const y = floorAxis(floor, "y", focus, fineness);
  const [strideX, strideY] = x.count < y.count ? [1, x.count] : [y.count, 1];
  return {
    x,
    y,
    strideX,
    strideY,
    unknowns: x.count * y.count,
    halfBand: 3 * (Math.max(strideX, strideY) + 1),
    thickness: cellThickness(floor, x, y),
  };
};

const floorAxis = (floor: Floor, axis: "x" | "y", focus: Rect[], fineness: number): Axis => {
  const lines = breakLines(floor, axis, focus);
  const l = shortestLength(floor);
  const details: Detail[] = focus.map((rect) => {
    const [from, to] = axis === "x" ? [rect.x0, rect.x1] : [rect.y0, rect.y1];
    return { from, to, size: Math.min((to - from) / spansAcrossFocus, l / 2) };
  });
  for (const { at, multiplicity } of lines)
    if (multiplicity === 2) details.push({ from: at, to: at, size: padEdgeSpan * l });
  return splineAxis(
    gradedBreaks(lines, details, { largest: farSpan * l, smallest: shortestSpan * l, fineness }),
    lines,
  );
};

/** l of the thinnest part; a plate without bed is measured by its own size. */
const shortestLength = ({ outline, thickness, zones, E, nu, k }: Floor): number => {
  const size = Math.min(outline.x1 - outline.x0, outline.y1 - outline.y0) / 4;
  if (k <= 0) return size;
  const thinnest = Math.min(thickness, ...zones.map((zone) => zone.thickness));
  return relativeStiffness(E, nu, thinnest, k);
};

const clipped = (rect: Rect, to: Rect): Rect[] => {
  const part = {
    x0: Math.max(rect.x0, to.x0),
    y0: Math.max(rect.y0, to.y0),
    x1: Math.min(rect.x1, to.x1),
    y1: Math.min(rect.y1, to.y1),
  };
  return part.x1 - part.x0 > 1 && part.y1 - part.y0 > 1 ? [part] : [];
};

const cellThickness = (floor: Floor, x: Axis, y: Axis): Float64Array => {
  const out = new Float64Array(x.spans * y.spans);
  for (let s = 0; s < x.spans; s++)
    for (let t = 0; t < y.spans; t++) {
      const cx = (x.breaks[s]! + x.breaks[s + 1]!) / 2;
      const cy = (y.breaks[t]! + y.breaks[t + 1]!) / 2;
      const zone = floor.zones.findLast(({ rect: r }) => cx > r.x0 && cx < r.x1 && cy > r.y0 && cy < r.y1);
      out[s * y.spans + t] = zone?.thickness ?? floor.thickness;
    }
  return out;
};
