import type { Point } from "@floorworthy/engine/geometry";
import type { Turn } from "@floorworthy/engine/placement";
import type { Bay, Position } from "@floorworthy/job";
import { baySides } from "./bay-sides.ts";
import { type Pose, rotate } from "./footprint.ts";
import type { Place, Stand } from "./placing.ts";

/** How a vehicle gets to a lift that stands one way: tail last, backed in, or nobody can say from the plan. */
export type WayIn = "driven-in" | "backed-in" | "not-looked-at" | "none";

const turns: Readonly<Record<Stand, Turn>> = {
  "as-wanted": { mirror: "as-drawn", angle: 0 },
  "turned-about": { mirror: "as-drawn", angle: Math.PI },
  "quarter-left": { mirror: "as-drawn", angle: Math.PI / 2 },
  "quarter-right": { mirror: "as-drawn", angle: -Math.PI / 2 },
};

export const turnOf = (stand: Stand): Turn => turns[stand];

export const standWords: Readonly<Record<Stand, string>> = {
  "as-wanted": "standing as wanted",
  "turned-about": "turned about, the nose where the tail was",
  "quarter-left": "a quarter turn, its back to the left",
  "quarter-right": "a quarter turn, its back to the right",
};

/** Straight in only: through a door in the wall behind the tail, else through one before the nose. */
export const wayIn = (bay: Bay, pose: Pose, stand: Stand): WayIn => {
  const behind = rotate({ x: 0, y: 1 }, pose.angle + turnOf(stand).angle);
  const ahead = { x: -behind.x, y: -behind.y };
  if (opens(bay, behind)) return "driven-in";
  if (opens(bay, ahead)) return "backed-in";
  if (bay.doors.length === 0) return stand.startsWith("quarter") ? "none" : "not-looked-at";
  return stand === "as-wanted" ? "not-looked-at" : "none";
};

/** Whether a side of the floor that faces this way has a door or is open. */
const opens = (bay: Bay, way: Point): boolean =>
  baySides(bay).some(({ a, b, what }) => {
    if (what === "wall") return false;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const facing = ((b.y - a.y) * way.x - (b.x - a.x) * way.y) / length; // outline counter-clockwise: outward normal
    return facing > 0.8;
  });

/** Where the columns come to stand when the lift's middle is put at `middle`. */
export const placeAt = (wanted: Position, pose: Pose, stand: Stand, middle: Point): Place => {
  const { angle } = turnOf(stand);
  const put = (p: Point): Point => {
    const [x, y] = [p.x - pose.middle.x, p.y - pose.middle.y];
    const turned = rotate({ x, y }, angle);
    return { x: middle.x + turned.x, y: middle.y + turned.y };
  };
  return { stand, middle, position: { left: put(wanted.left), right: put(wanted.right) } };
};
