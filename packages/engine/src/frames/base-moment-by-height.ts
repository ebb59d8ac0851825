import { findRoot } from "../numerics/index.ts";
import { isUnable, type Unable } from "../quantities/index.ts";
import { baseReactions } from "./base-reactions.ts";
import type { ColumnFrame, LiftLoad } from "./column-frame.ts";
import type { Side } from "./to-plan.ts";

/** Base moments (inward positive) and strut force with the carriages at `height`. */
export interface HeightPoint {
  /** mm */
  readonly height: number;
  /** N·mm */
  readonly left: number;
  readonly right: number;
  /** N, compression positive */
  readonly strutForce: number;
}

/** How the inward base moment runs with carriage height. */
export interface MomentByHeight {
  readonly points: readonly HeightPoint[];
  /** of the heights asked for: where each base is tipped inward most, and least (or outward most) */
  readonly most: Readonly<Record<Side, HeightPoint>>;
  readonly least: Readonly<Record<Side, HeightPoint>>;
  /** heights, mm, at which the base moment changes sign, so that the other anchor row takes over */
  readonly signChanges: Readonly<Record<Side, readonly number[]>>;
}

/** @param heights - carriage heights, mm, ascending, at least one; `load.carriageHeight` is not used */
export const baseMomentByHeight = (
  frame: ColumnFrame,
  load: LiftLoad,
  heights: readonly number[],
): MomentByHeight | Unable => {
  const points: HeightPoint[] = [];
  for (const height of heights) {
    const point = at(frame, load, height);
    if (isUnable(point)) return point;
    points.push(point);
  }
  const extreme = (side: Side, sign: 1 | -1): HeightPoint =>
    points.reduce((best, point) => (sign * point[side] > sign * best[side] ? point : best));
  return {
    points,
    most: { left: extreme("left", 1), right: extreme("right", 1) },
    least: { left: extreme("left", -1), right: extreme("right", -1) },
    signChanges: { left: changes(frame, load, points, "left"), right: changes(frame, load, points, "right") },
  };
};

const at = (frame: ColumnFrame, load: LiftLoad, height: number): HeightPoint | Unable => {
  const result = baseReactions(frame, { ...load, carriageHeight: height });
  if (isUnable(result)) return result;
  const { left, right, strutForce } = result;
  return { height, left: left.inwardMoment, right: right.inwardMoment, strutForce };
};

const changes = (frame: ColumnFrame, load: LiftLoad, points: readonly HeightPoint[], side: Side): number[] => {
  const moment = (height: number): number => {
    const point = at(frame, load, height);
    return isUnable(point) ? Number.NaN : point[side];
  };
  return points.slice(1).flatMap((point, i) => {
    const before = points[i]!;
    return before[side] * point[side] < 0 ? [findRoot(moment, before.height, point.height)] : [];
  });
};
