import type { Point, Polygon, Rect } from "../geometry/index.ts";
import type { Term } from "../quantities/index.ts";

/** "x": a line of constant x (running fore and aft); "y": a line of constant y (running across). */
export type LineAxis = "x" | "y";

/** Ground no joint may cross, with the reason a person is told. */
export interface KeepOut {
  readonly rect: Rect;
  /** as it reads after "it would cross ": "the pad of the left column", "the heating tubes" */
  readonly what: string;
}

/** An anchor or group of anchors a joint must stay away from. */
export interface AnchorClear {
  readonly at: Point;
  /** mm */
  readonly distance: number;
  readonly what: string;
}

/** A column of the building standing in the slab, kept apart from it by an isolation joint. */
export interface BuildingColumn {
  readonly rect: Rect;
  readonly what: string;
}

/** A line somebody would like: between the lift's columns, at the jamb of a door, drawn by hand. */
export interface WantedLine {
  readonly axis: LineAxis;
  /** its constant coordinate, mm */
  readonly at: number;
  /** the stretch that matters, along the line */
  readonly from: number;
  readonly to: number;
  readonly why: string;
  /** how much extra saw cut it is worth, mm; 0: only preferred among equals */
  readonly worth: number;
}

/** What the planner is given. Everything in plan, mm. */
export interface JointTask {
  /** outline with sides along the walls, re-entrant corners allowed */
  readonly slab: Polygon;
  /** largest side of a panel */
  readonly spacing: number;
  /** longest over shortest side of a panel */
  readonly aspect: number;
  readonly keepOuts: readonly KeepOut[];
  readonly anchors: readonly AnchorClear[];
  readonly columns: readonly BuildingColumn[];
  readonly wanted: readonly WantedLine[];
  /** distance between places tried, mm */
  readonly step: number;
  /** the only places lines may take besides corners and building columns, instead of a grid of `step` */
  readonly places?: { readonly xs: readonly number[]; readonly ys: readonly number[] };
  /** extra cost, in mm of saw cut, of a line that cannot run through the whole slab and so stops at another */
  readonly stopCost: number;
}

/** A straight saw cut and why it is there. */
export interface JointLine {
  readonly axis: LineAxis;
  readonly a: Point;
  readonly b: Point;
  readonly reasons: readonly string[];
}

/** Full-depth filler round a building column: a square turned by 45°, so that joints meet its corners. */
export interface IsolationJoint {
  readonly outline: Polygon;
  readonly what: string;
}

/** One piece of slab between joints and edges. */
export interface Panel {
  readonly rect: Rect;
  readonly width: number;
  readonly length: number;
  readonly aspect: number;
}

export type JointRule = "re-entrant corner" | "spacing" | "building column" | "aspect";

/** A rule no layout on the grid could keep, and where. */
export interface UnmetRule {
  readonly rule: JointRule;
  readonly panel: Rect;
  readonly words: string;
  /** what lies in the panel and leaves no place for a cut, as its keep-out is called */
  readonly because: string | undefined;
}

/** A wanted line that is not in the layout, and why. */
export interface RefusedLine {
  readonly wanted: WantedLine;
  readonly reason: string;
}

export interface JointPlan {
  readonly lines: readonly JointLine[];
  readonly isolation: readonly IsolationJoint[];
  readonly panels: readonly Panel[];
  readonly unmet: readonly UnmetRule[];
  readonly refused: readonly RefusedLine[];
  /** where a line stops at another joint instead of crossing it: the joint may crack on, so a few bars belong across it */
  readonly stops: readonly Point[];
  readonly sawLength: Term;
  /** cost the layout is cheapest in, mm of saw cut, and the grid on which that is proved */
  readonly cost: number;
  readonly grid: { readonly xs: readonly number[]; readonly ys: readonly number[]; readonly step: number };
}

/** Called between rows of the search; the planner gives up when `shouldStop` says so. */
export interface PlanWatch {
  readonly shouldStop?: () => boolean;
  /** 0..1 */
  readonly progress?: (share: number) => void;
}
