import type { Floor, Joint, Side } from "./floor.ts";

/**
 * A line of the grid that has to be there. The multiplicity of its knot says how smooth the floor is across it:
 * 1 smooth, 2 jump of curvature (thickness), 3 hinge, 4 broken.
 */
export interface BreakLine {
  readonly at: number;
  readonly multiplicity: 1 | 2 | 3 | 4;
}

/** Lines nearer than this, mm, are one line. */
export const sameLine = 1;

/** The lines that the floor and its base plates ask for across one axis, sorted, both ends of the outline included. */
export const breakLines = (floor: Floor, axis: "x" | "y", focus: Floor["outline"][]): BreakLine[] => {
  const [low, high]: [Side, Side] = axis === "x" ? ["x0", "x1"] : ["y0", "y1"];
  const lines: BreakLine[] = [];
  for (const { rect } of floor.zones) for (const side of [low, high]) lines.push({ at: rect[side], multiplicity: 2 });
  for (const joint of floor.joints) {
    if (joint.axis === axis) lines.push({ at: joint.at, multiplicity: isWholeHinge(floor, joint) ? 3 : 4 });
    else for (const at of [joint.from, joint.to]) if (at !== undefined) lines.push({ at, multiplicity: 1 });
  }
  for (const rect of focus) for (const side of [low, high]) lines.push({ at: rect[side], multiplicity: 1 });
  const inside = lines.filter((l) => l.at > floor.outline[low] + sameLine && l.at < floor.outline[high] - sameLine);
  const end = (side: Side): BreakLine => ({ at: floor.outline[side], multiplicity: 4 });
  return [end(low), ...merged(inside), end(high)];
};

/** Strongest first, so that a joint or pad edge keeps its place when a base plate's edge falls beside it. */
const merged = (lines: readonly BreakLine[]): BreakLine[] => {
  const kept: BreakLine[] = [];
  for (const line of lines.toSorted((a, b) => b.multiplicity - a.multiplicity || a.at - b.at))
    if (!kept.some((other) => Math.abs(other.at - line.at) < sameLine)) kept.push(line);
  return kept.sort((a, b) => a.at - b.at);
};

/** A hinge over the whole line needs no springs: a triple knot is one. */
const isWholeHinge = (floor: Floor, joint: Joint): boolean =>
  joint.transfer.kind === "hinge" &&
  runsThrough(floor, joint) &&
  floor.joints.every(
    (other) => other === joint || other.axis !== joint.axis || Math.abs(other.at - joint.at) >= sameLine,
  );

export const runsThrough = ({ outline }: Floor, { axis, from, to }: Joint): boolean => {
  const [start, end] = axis === "x" ? [outline.y0, outline.y1] : [outline.x0, outline.x1];
  return (from ?? start) <= start + sameLine && (to ?? end) >= end - sameLine;
};
