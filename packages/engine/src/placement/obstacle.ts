import type { Polygon, Segment } from "../geometry/index.ts";
import type { Part } from "./lift-footprint.ts";

/** The least distance of each part of a lift, mm; 0: may touch but not lie over; a part left out is not held. */
export type Clear = Readonly<Partial<Record<Part, number>>>;

/** Something in or on the floor the lift keeps away from: joint, crack, edge, pipe, footing, bar, walkway, door. */
export interface Obstacle {
  readonly id: string;
  /** as shown to people, e.g. "saw cut at y = 12 ft" */
  readonly name: string;
  /** a line, or a simple polygon that is itself kept out of */
  readonly shape: Segment | Polygon;
  readonly clear: Clear;
}

/** The bay's walls. Every part but the path stays inside; a part left out of `clear` may touch them. */
export interface Room {
  /** simple, mm */
  readonly outline: Polygon;
  /** what each side of the outline is called, from its first corner on; "wall 1", … where left out */
  readonly sides?: readonly string[];
  readonly clear: Clear;
  /** parts that may reach beyond the outline, such as a vehicle's tail over an open side; `clear` says nothing of them */
  readonly free?: readonly Part[];
}

/** The parts a room keeps inside. */
export const heldInside = ({ free }: Room, part: Part): "held" | "free" =>
  part === "path" || free?.includes(part) ? "free" : "held";
