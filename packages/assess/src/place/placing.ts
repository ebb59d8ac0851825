import type { Point } from "@floorworthy/engine/geometry";
import type { Part, Region } from "@floorworthy/engine/placement";
import type { Position } from "@floorworthy/job";

/**
 * How the lift stands against the way it was wanted: the same, turned about (nose where the tail was), or a quarter turn.
 * Its two columns are mirror images of each other, so a lift mirrored left to right is the same lift.
 */
export type Stand = "as-wanted" | "turned-about" | "quarter-left" | "quarter-right";

/** One place of the lift, mm in the plan. */
export interface Place {
  readonly stand: Stand;
  /** the middle between the columns, or the lift's own origin */
  readonly middle: Point;
  readonly position: Position;
}

/** A place and how far it is from the wanted one. */
export interface PlaceMove extends Place {
  readonly dx: number;
  readonly dy: number;
  readonly distance: number;
  /** "3 in toward the door and 1/2 in to the left" */
  readonly words: string;
}

/** One distance that is not kept at a place. */
export interface Blocker {
  readonly id: string;
  readonly name: string;
  readonly part: Part;
  /** whose wish the distance is: the maker's page, or common practice (no source) and the room itself */
  readonly standing: "maker" | "practice";
  /** asked and there, mm; negative: over it, by the least move apart */
  readonly asked: number;
  readonly there: number;
  /** where it is: its point nearest to the lift's middle; of the room itself, none */
  readonly at: Point | undefined;
  readonly sentence: string;
}

/** One piece of the feasible positions. */
export interface PlaceRegion extends Region {
  /** mm² */
  readonly area: number;
  /** the place farthest from the boundary, and how far, mm */
  readonly roomiest: { readonly at: Point; readonly room: number };
  /** from the wanted place to this region, mm; 0 when it lies within */
  readonly away: number;
}

/** A way round what is in the way that does not help, with what closes it. */
export interface ClosedWay {
  readonly at: Point;
  readonly away: number;
  readonly blockers: readonly Blocker[];
  readonly sentence: string;
}

/** Everything about one way of standing. */
export interface Way {
  readonly stand: Stand;
  readonly words: string;
  readonly regions: readonly PlaceRegion[];
  readonly closed: readonly ClosedWay[];
}

/** How far the proposed place may be moved along one axis of the plan, and what ends it. Moves from the wanted place, mm. */
export interface PlaceRange {
  readonly axis: "x" | "y";
  readonly from: number;
  readonly to: number;
  readonly heldBackBy: readonly Blocker[];
  readonly heldOnBy: readonly Blocker[];
  readonly sentence: string;
}

/** A plain yes or no beside the plan: headroom, door height, width between the columns. */
export interface Fit {
  readonly id: "headroom" | "roof" | "between-columns" | "door-height";
  readonly result: "fits" | "does-not-fit" | "not-known";
  /** does-not-fit rules the lift out, or only limits it */
  readonly weight: "decides" | "limits";
  readonly sentence: string;
}

/** Where the lift may stand in its bay. Geometry and the maker's distances only: it says nothing of strength. */
export interface Placing {
  /** here: as wanted; move: to `proposed`; nowhere; stopped: a stop stands, nothing is placed; not-known: too little is known */
  readonly answer: "here" | "move" | "nowhere" | "stopped" | "not-known";
  readonly sentence: string;
  readonly wanted: Place | undefined;
  /** what keeps the lift from the wanted place; empty where it may stand there */
  readonly blockers: readonly Blocker[];
  /** the shortest move, exact (regions are drawn at most 0.1 mm too small) */
  readonly smallest: PlaceMove | undefined;
  /** a mark a tape can find, off the boundary; the wanted place where that is free */
  readonly proposed: PlaceMove | undefined;
  /** the place with the most room around it, in the area nearest to the wanted place */
  readonly roomiest: PlaceMove | undefined;
  readonly ranges: readonly PlaceRange[];
  readonly ways: readonly Way[];
  readonly fits: readonly Fit[];
  /** what was taken or left out, in sentences */
  readonly notes: readonly string[];
}
