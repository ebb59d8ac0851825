import type { Point } from "@floorworthy/engine/geometry";
import { type Placement, windowThrough } from "@floorworthy/engine/placement";
import type { Job } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import { blockerNames, blockersOf } from "./blockers.ts";
import type { Constraint } from "./constraints.ts";
import type { PlaceRange } from "./placing.ts";

const axes = [
  { axis: "y", way: { x: 0, y: 1 }, words: ["toward the back wall", "toward the door"] },
  { axis: "x", way: { x: 1, y: 0 }, words: ["to the left", "to the right"] },
] as const;

/** How far a feasible place may be moved along both axes of the plan, counted from the wanted place. */
export const rangesOf = (
  job: Job,
  placement: Placement,
  constraints: readonly Constraint[],
  at: Point,
  wanted: Point,
): PlaceRange[] =>
  axes.flatMap(({ axis, way, words }): PlaceRange[] => {
    const window = windowThrough(placement, at, way);
    if (!window) return [];
    const start = at[axis] - wanted[axis];
    const [from, to] = [start + window.from, start + window.to];
    const heldBackBy = blockersOf(job, constraints, window.heldBackBy, at);
    const heldOnBy = blockersOf(job, constraints, window.heldOnBy, at);
    const say = (mm: number): string =>
      Math.abs(mm) < 0.5 ? "where it is" : `${shown(Math.abs(mm), "length", job.units)} ${words[mm < 0 ? 0 : 1]}`;
    const held = (names: string): string => (names ? ` (${names})` : "");
    const sentence = `From ${say(from)}${held(blockerNames(heldBackBy))} to ${say(to)}${held(blockerNames(heldOnBy))}.`;
    return [{ axis, from, to, heldBackBy, heldOnBy, sentence }];
  });
