import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Panel, UnmetRule } from "@floorworthy/engine/joints";
import type { Term } from "@floorworthy/engine/quantities";
import type { Joint } from "@floorworthy/job";

/** One straight joint of the floor, to be made or there already. Plan, mm. */
export interface PlannedLine {
  /** "A", "B", … for lines to be cut; the joint's own name on a standing floor */
  readonly name: string;
  readonly kind: Joint["kind"];
  readonly state: "to-make" | "there";
  readonly from: Point;
  readonly to: Point;
  readonly length: Term;
  /** its place from two walls, in words */
  readonly where: string;
  /** why it is there, one sentence each */
  readonly reasons: readonly string[];
  /** to the nearest anchor; undefined where no column is placed */
  readonly toAnchor: Term | undefined;
}

/** A line somebody asked for that is not in the plan. */
export interface NotMade {
  readonly what: string;
  readonly where: string;
  readonly reason: string;
}

/** Filler through the full depth: round a building column, or along a wall. */
export interface Isolation {
  readonly what: string;
  /** closed round a column, open along a wall */
  readonly outline: Polygon;
  readonly shape: "round" | "along";
  readonly length: Term;
}

/** The joints of one job's floor: where to cut, why, what was refused, which rule could not be kept. */
export interface JobJointPlan {
  /** `planned`: the cheapest layout of a floor to be poured; `as-it-is`: a standing floor's joints, taken as given */
  readonly basis: "planned" | "as-it-is";
  readonly lines: readonly PlannedLine[];
  /** full-depth cuts round the pads of a standing floor */
  readonly cutOuts: readonly { readonly what: string; readonly outline: Polygon; readonly length: Term }[];
  readonly isolation: readonly Isolation[];
  readonly panels: readonly Panel[];
  readonly notMade: readonly NotMade[];
  readonly unmet: readonly (Omit<UnmetRule, "words"> & { readonly words: string })[];
  /** ends of lines inside the slab */
  readonly stops: readonly Point[];
  readonly warnings: readonly string[];
  /** largest distance between joints, depth of cut, all saw cut; the first two only where the thickness is known */
  readonly spacing: Term | undefined;
  readonly depth: Term | undefined;
  readonly sawLength: Term;
}

/** How the layout may be steered. */
export interface JointWishes {
  /** joint spacing over thickness, 24 to 36 */
  readonly multiple?: number;
  /** mm, in place of the cap of 15 ft */
  readonly cap?: number;
  /** mm between places tried */
  readonly step?: number;
}

/** Progress, and a way to stop a long search. */
export interface JointWatch {
  readonly tell?: (done: number, of: number) => void;
  readonly signal?: { readonly aborted: boolean };
}
