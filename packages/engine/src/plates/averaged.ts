import type { Point, Rect } from "../geometry/index.ts";
import { curvatures, momentsFrom, principalMoments, probeAt, probesAt } from "./field.ts";
import type { Floor, Moments, StressPeak } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { insideFloor } from "./rim.ts";

/** How many of the worst points are averaged round; an average never exceeds the peak inside it. */
const candidates = 32;

/**
 * The largest principal tensile stress after averaging the moments over a square of side h (the local thickness): the
 * slab's own depth spreads what a thin plate concentrates. The square is clipped to the panel, and to the part of it
 * that has the same thickness.
 */
export const averagedPeak = (
  floor: Floor,
  grid: Grid,
  c: Float64Array,
  peaks: readonly StressPeak[],
  face: "bottom" | "top",
): StressPeak => {
  let best: StressPeak | undefined;
  for (const { value, at, thickness } of worst(peaks)) {
    if (best && value <= best.value) break;
    const peak = stressPeak(averageMoments(floor, grid, c, at, thickness), face, thickness, at);
    if (!best || peak.value > best.value) best = peak;
  }
  return best!;
};

/** The worst few, worst first. */
const worst = (peaks: readonly StressPeak[]): StressPeak[] => {
  const limit = Float64Array.from(peaks, (p) => p.value)
    .sort()
    .at(-Math.min(candidates, peaks.length))!;
  return peaks.filter((p) => p.value >= limit).sort((a, b) => b.value - a.value);
};

/** The principal tension of one face that given moments make. */
export const stressPeak = (moments: Moments, face: "bottom" | "top", thickness: number, at: Point): StressPeak => {
  const [large, small] = principalMoments(moments);
  const moment = face === "bottom" ? large : -small;
  return { value: (6 * moment) / thickness ** 2, at, face, moment, thickness };
};

const points = [0.125, 0.375, 0.625, 0.875];

const averageMoments = (floor: Floor, grid: Grid, c: Float64Array, at: Point, h: number): Moments => {
  const box = within(floor, { x0: at.x - h / 2, x1: at.x + h / 2, y0: at.y - h / 2, y1: at.y + h / 2 }, at);
  const sum = { Mx: 0, My: 0, Mxy: 0 };
  let count = 0;
  const inside = insideFloor(floor);
  const xs = points.map((u) => box.x0 + u * (box.x1 - box.x0));
  const ys = points.map((v) => box.y0 + v * (box.y1 - box.y0));
  for (const probe of probesAt(grid, xs, ys)) {
    if (grid.thickness[probe.cell] !== h || !inside(probe.at)) continue;
    const { Mx, My, Mxy } = momentsFrom(floor.E, floor.nu, h, curvatures(grid, c, probe));
    sum.Mx += Mx;
    sum.My += My;
    sum.Mxy += Mxy;
    count++;
  }
  if (count === 0) return momentsFrom(floor.E, floor.nu, h, curvatures(grid, c, probeAt(grid, at)));
  return { Mx: sum.Mx / count, My: sum.My / count, Mxy: sum.Mxy / count };
};

/** The part of a square on the same side of every edge and joint as its middle. */
const within = ({ outline, joints }: Floor, square: Rect, at: Point): Rect => {
  let [x0, x1] = [Math.max(square.x0, outline.x0), Math.min(square.x1, outline.x1)];
  let [y0, y1] = [Math.max(square.y0, outline.y0), Math.min(square.y1, outline.y1)];
  for (const { axis, at: line } of joints) {
    if (axis === "x" && line > x0 && line < x1) [x0, x1] = at.x < line ? [x0, line] : [line, x1];
    if (axis === "y" && line > y0 && line < y1) [y0, y1] = at.y < line ? [y0, line] : [line, y1];
  }
  return { x0, x1, y0, y1 };
};
