import type { Reaction } from "@floorworthy/engine/frames";
import type { Term } from "@floorworthy/engine/quantities";

/**
 * counted: rated load, evenly on the pads, at every height, with hands at work. hard-use: 60/40 between the ends, the
 * corners or the columns, and stopped hard on the way down; keeps a margin from being called ample. information:
 * decides nothing.
 */
export type Standing = "counted" | "hard-use" | "information";

/** One load case: what comes down on every base at once, plan axes. */
export interface SideReactions {
  readonly id: string;
  readonly name: string;
  readonly standing: Standing;
  readonly sides: Readonly<Record<string, { readonly reaction: Reaction; readonly terms: readonly Term[] }>>;
}

/** What the statics of a lift on supports need; base units. */
export interface SupportDuty {
  /** rated load, N */
  readonly weight: number;
  /** of one post or column, N */
  readonly columnWeight: number;
  readonly pads: readonly { readonly reach: number; readonly padSpacing: number }[];
  readonly fullRise: number;
  readonly workForce: number;
  readonly dynamicFactor: number;
  readonly shock: number;
}
