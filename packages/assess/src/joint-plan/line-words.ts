import { distanceToSegment, type Point } from "@floorworthy/engine/geometry";
import { fromBase, type Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { tape } from "./tape.ts";

interface Stretch {
  readonly from: Point;
  readonly to: Point;
}

/** Names of lines in order: A … Z, AA, AB … */
export const lineName = (i: number): string =>
  (i >= 26 ? lineName(Math.floor(i / 26) - 1) : "") + String.fromCharCode(65 + (i % 26));

/** Where a line lies, from the left and the back wall. */
export const whereWords = ({ from, to }: Stretch, units: Job["units"]): string => {
  const t = (mm: number) => tape(mm, units);
  if (Math.abs(from.x - to.x) < 1) {
    const [low, high] = [Math.min(from.y, to.y), Math.max(from.y, to.y)];
    return `${t(from.x)} from the left wall, from ${low < 1 ? "the back wall" : `${t(low)} off the back wall`} to ${t(high)}`;
  }
  if (Math.abs(from.y - to.y) < 1) {
    const [low, high] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
    return `${t(from.y)} from the back wall, from ${low < 1 ? "the left wall" : `${t(low)} off the left wall`} to ${t(high)}`;
  }
  const place = ({ x, y }: Point) => `${t(x)} from the left and ${t(y)} from the back wall`;
  return `from ${place(from)} to ${place(to)}`;
};

/** Feet or metres. */
export const longTerm = (symbol: string, words: string, mm: number, units: Job["units"]): Term => {
  const unit = units === "si" ? "m" : "ft";
  return { symbol, words, value: fromBase(mm, unit), unit };
};

/** From a line to the anchor nearest to it, in inches or mm. */
export const anchorDistance = (
  { from, to }: Stretch,
  { layout }: Assessment,
  units: Job["units"],
): Term | undefined => {
  const reach = layout.bases.flatMap(({ side, anchors }) =>
    anchors.map(({ id, at }) => ({ id, side, distance: distanceToSegment(at, { a: from, b: to }) })),
  );
  if (reach.length === 0) return undefined;
  const nearest = reach.reduce((p, q) => (q.distance < p.distance ? q : p));
  const unit = units === "si" ? "mm" : "in";
  return {
    symbol: "c",
    words: `to the nearest anchor, ${nearest.id} of the ${nearest.side} column`,
    value: fromBase(nearest.distance, unit),
    unit,
  };
};
