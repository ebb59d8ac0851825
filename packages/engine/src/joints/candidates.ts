/** Places a line may take: an even grid, and every place that means something. */
import type { JointTask, LineAxis } from "./joint-plan.ts";

/** Boxes of the search are pairs of places in x times pairs in y; the step is doubled until there are no more than these. */
const MOST_BOXES = 2_500_000;

export interface Candidates {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  readonly step: number;
}

const NEAR = 1e-6;

export const candidates = (task: JointTask): Candidates => {
  if (task.places)
    return { xs: given(task, "x", task.places.xs), ys: given(task, "y", task.places.ys), step: task.step };
  const all = (step: number): Candidates => ({ xs: places(task, "x", step), ys: places(task, "y", step), step });
  let found = all(task.step);
  while (boxes(found) > MOST_BOXES) found = all(found.step * 2);
  return found;
};

const boxes = ({ xs, ys }: Candidates): number => (xs.length * (xs.length - 1) * ys.length * (ys.length - 1)) / 4;

const columnMiddles = ({ columns }: JointTask, axis: LineAxis): readonly number[] =>
  columns.map(({ rect }) => (axis === "x" ? (rect.x0 + rect.x1) / 2 : (rect.y0 + rect.y1) / 2));

/** Corners of the slab, lines of building columns and the places given. */
const given = (task: JointTask, axis: LineAxis, wanted: readonly number[]): readonly number[] => {
  const corners = task.slab.map((p) => p[axis]);
  const [low, high] = [Math.min(...corners), Math.max(...corners)];
  const inside = [...columnMiddles(task, axis), ...wanted].filter((v) => v > low && v < high);
  return apart([...corners, ...inside]);
};

const apart = (values: readonly number[]): readonly number[] =>
  [...new Set(values)].toSorted((a, b) => a - b).filter((v, i, list) => i === 0 || v - list[i - 1]! > NEAR);

const places = (task: JointTask, axis: LineAxis, step: number): readonly number[] => {
  const corners = task.slab.map((p) => p[axis]);
  const [low, high] = [Math.min(...corners), Math.max(...corners)];
  const even = Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, i) => low + i * step);
  const special = specialPlaces(task, axis).filter((v) => v > low && v < high);
  // a grid place hard by a special one would only make slivers
  const kept = even.filter((v) => corners.includes(v) || special.every((s) => Math.abs(s - v) > step / 4));
  return apart([...corners, ...special, ...kept]);
};

/** Lines of building columns, wanted lines, rims of keep-outs, nearest lines past an anchor, and thirds, halves... of the slab. */
export const specialPlaces = (task: JointTask, axis: LineAxis): readonly number[] => {
  const edge = (r: { x0: number; y0: number; x1: number; y1: number }) => (axis === "x" ? [r.x0, r.x1] : [r.y0, r.y1]);
  return [
    ...task.slab.map((p) => p[axis]),
    ...columnMiddles(task, axis),
    ...task.wanted.filter((w) => w.axis === axis).map((w) => w.at),
    ...task.keepOuts.flatMap(({ rect }) => edge(rect)),
    ...anchorRims(task, axis),
    ...evenDivision(task, axis),
  ];
};

/** Only the outermost rims of the anchors' reach: those between lie within another anchor's. */
const anchorRims = (task: JointTask, axis: LineAxis): readonly number[] => {
  const rims = task.anchors.flatMap(({ at, distance }) => [at[axis] - distance, at[axis] + distance]);
  return rims.filter((r) => task.anchors.every(({ at, distance }) => Math.abs(at[axis] - r) >= distance - NEAR));
};

/** The fewest equal parts no wider than the spacing. */
export const evenDivision = (
  { slab, spacing }: Pick<JointTask, "slab" | "spacing">,
  axis: LineAxis,
): readonly number[] => {
  const corners = slab.map((p) => p[axis]);
  const [low, high] = [Math.min(...corners), Math.max(...corners)];
  const parts = Math.max(1, Math.ceil((high - low) / spacing - 1e-9));
  return Array.from({ length: parts - 1 }, (_, i) => low + ((high - low) * (i + 1)) / parts);
};
