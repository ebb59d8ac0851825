/** Distances of the trade that no page of the job gives: common practice, no source. mm. */
import { toBase } from "@floorworthy/engine/quantities";

/** How far cuts stay away, as wished and as still accepted where the wish leaves a panel too large. */
export const clearances = [
  { base: toBase(24, "in"), pad: toBase(12, "in"), words: "wished" },
  { base: toBase(12, "in"), pad: 0, words: "accepted" },
] as const;

/** Extra saw cut a line is worth that somebody or something asks for. */
export const worth = {
  /** between the lift's columns: a crack there does least harm */
  betweenColumns: toBase(10, "ft"),
  /** in line with the jamb of a door, where the floor is weakened by the opening */
  doorJamb: toBase(3, "ft"),
} as const;

/** A line that stops at another may crack on beyond it; bars across cost about this much saw cut. */
export const STOP_COST = toBase(5, "ft");

/** Depth kept between the bottom of a cut and a tube. */
export const ABOVE_TUBE = toBase(1, "in");

/** Distance between places tried. */
export const gridStep = { "inch-pound": toBase(1, "ft"), si: 300 } as const;
