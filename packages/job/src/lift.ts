import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Choice, Quantity } from "./fact.ts";

/** The type is open: a kind this version cannot compute is still read, kept and judged by its page. */
export type LiftKind = "two-post" | "one-post" | "four-post" | "scissor" | "mobile-columns" | "other";

/**
 * A lift as its maker's sheet describes it. Its own axes: u inward, from the column toward the vehicle; v along the
 * vehicle, toward the door. Lengths mm, forces N, moments N·mm.
 */
export interface Lift {
  readonly name: string;
  readonly kind: LiftKind;
  /** is the maker's manual, with its floor page, in hand */
  readonly manual: Choice<"in-hand" | "missing">;
  readonly edition?: string;
  /** bolted to the floor, or without anchors as its maker allows */
  readonly fixing: Choice<"anchored" | "loose">;
  readonly top: Choice<"overhead-tied" | "free-standing">;
  readonly arms: Choice<"symmetric" | "asymmetric">;
  /** angle by which asymmetric columns are turned about their axis, rad */
  readonly columnTurn: Quantity;
  readonly rated: Quantity;
  /** column with carriage and arms, N each */
  readonly columnWeight: Quantity;
  /** between the column centroids, mm */
  readonly spacing: Quantity;
  readonly tieHeight: Quantity;
  readonly overallHeight: Quantity;
  readonly overallWidth: Quantity;
  /** carriage centre above the floor at pick-up and at full rise, mm */
  readonly pickupHeight: Quantity;
  readonly fullHeight: Quantity;
  /** lateral distance from the column centroid to the line of pads under a car's sills, mm */
  readonly reachCar: Quantity;
  /** the same to a frame truck's rails, mm */
  readonly reachTruck: Quantity;
  /** fore-aft distance between front and rear pads, mm */
  readonly padSpacing: Quantity;
  /** bending stiffness of a column about the axis along the vehicle, as second moment of area mm⁴ of steel */
  readonly columnInertia: Quantity;
  readonly base: LiftBase;
  readonly anchors: LiftAnchors;
  readonly asks: FloorPage;
  /** the maker's own base reactions; where given they replace the statics */
  readonly reactions: readonly MakerReaction[];
  /** supports of lifts that are not two-post: posts, frames or feet, relative to the lift's origin */
  readonly supports: readonly Support[];
}

export interface LiftBase {
  /** outline in (u, v) about the column centroid, mm; undefined when the plate is not known */
  readonly outline: Polygon | undefined;
  readonly thickness: Quantity;
}

export interface LiftAnchors {
  /** holes of one base in (u, v) mm, named as on the sheet; empty when unknown */
  readonly holes: readonly AnchorHole[];
  readonly product: AnchorProductSheet;
  readonly torque: Quantity;
  readonly shimLimit: Quantity;
  /** the maker's rounds of the nuts: first after setting, then every, d; unknown where the page is silent */
  readonly firstRound?: Quantity;
  readonly roundEvery?: Quantity;
  /** the maker's limit of take-up or rise of an anchor, mm */
  readonly movementLimit?: Quantity;
}

export interface AnchorHole {
  readonly id: string;
  /** x is u, y is v */
  readonly at: Point;
}

/** The anchor's own sheet. Lengths mm, forces N, stresses MPa. */
export interface AnchorProductSheet {
  readonly sheet: Choice<"in-hand" | "missing">;
  readonly kind: Choice<"expansion" | "screw" | "undercut" | "adhesive" | "sleeve" | "cast-in">;
  readonly diameter: Quantity;
  readonly length: Quantity;
  readonly nominalEmbedment: Quantity;
  readonly effectiveEmbedment: Quantity;
  readonly holeDiameter: Quantity;
  readonly holeDepth: Quantity;
  readonly category: Choice<"1" | "2" | "3">;
  readonly minimumThickness: Quantity;
  readonly minimumEdge: Quantity;
  readonly minimumSpacing: Quantity;
  readonly criticalEdge: Quantity;
  readonly pulloutCracked: Quantity;
  readonly pulloutUncracked: Quantity;
  /** mm² */
  readonly steelArea: Quantity;
  readonly steelStrength: Quantity;
  readonly steelYield: Quantity;
  readonly ductile: Choice<"ductile" | "brittle">;
}

/** What the maker's floor page asks, line by line. A line the page does not have is unknown and not judged. */
export interface FloorPage {
  readonly thickness: Quantity;
  /** cylinder strength, MPa */
  readonly strength: Quantity;
  /** days between pouring and drilling */
  readonly days: Quantity;
  /** anchor to slab edge, mm; the distances below fall back on it */
  readonly edge: Quantity;
  readonly joint: Quantity;
  readonly crack: Quantity;
  readonly wall: Quantity;
  readonly reinforcement: Choice<"none" | "mesh" | "bars" | "fibre">;
  /** rise over run */
  readonly slope: Quantity;
  readonly ceiling: Quantity;
}

export interface MakerReaction {
  readonly name: string;
  /** one column, in the lift's axes */
  readonly P: Quantity;
  /** inward moment (presses the +u side) */
  readonly Min: Quantity;
  /** fore-aft moment (presses the +v side) */
  readonly Mfa: Quantity;
  readonly Vu: Quantity;
  readonly Vv: Quantity;
}

export interface Support {
  readonly id: string;
  readonly at: Point;
  readonly outline: Polygon | undefined;
  /** which of several columns it belongs to, for columns on feet */
  readonly column?: string;
  readonly share: Quantity;
  readonly P: Quantity;
  readonly Mx: Quantity;
  readonly My: Quantity;
}
