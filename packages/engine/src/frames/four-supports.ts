/**
 * Four supports in a rectangle: posts of a four-post lift, ends of a scissor's frames. Equilibrium fixes three of the
 * four loads; the diagonal freedom is bounded in pad-sharing.ts.
 */
import { shown, type Term, type Unable, unable } from "../quantities/index.ts";
import { admissibleCrosswise, type FourPads, type PadLoads, padLoads } from "./pad-sharing.ts";
import type { Reaction } from "./reaction.ts";
import type { SupportLoad } from "./support-case.ts";

/** Why a weight cannot rest on four supports, or undefined where it can. */
export const standsOutside = ({ leftShare, foreAft, padSpacing }: FourPads, place: string): Unable | undefined =>
  leftShare > 0 && leftShare < 1 && Math.abs(foreAft) < padSpacing / 2
    ? undefined
    : unable(place, "The centre of gravity stands outside the supports: the lift would tip.");

/** Which diagonal is pressed harder. */
export type Diagonal = "left-front" | "left-rear";

/**
 * Loads when the rocking of four stiff supports has brought the worst of one diagonal up to `share` of the weight (or
 * as far as the opposite diagonal stays pressed). A support that statics alone loads more keeps what it has.
 */
export const rockedLoads = (four: FourPads, diagonal: Diagonal, share: number): PadLoads => {
  const level = padLoads(four, 0);
  const worst =
    diagonal === "left-rear" ? Math.max(level.leftRear, level.rightFront) : Math.max(level.leftFront, level.rightRear);
  const wanted = Math.max(0, share * four.weight - worst);
  const [low, high] = admissibleCrosswise(four);
  const offset = (wanted * four.padSpacing) / (four.leftShare * four.weight);
  return padLoads(four, diagonal === "left-rear" ? Math.min(high, offset) : Math.max(low, -offset));
};

/** The four supports with their places, each turning its load into a reaction. */
export const atCorners = (
  loads: PadLoads,
  width: number,
  length: number,
  reaction: (load: number, id: string) => Reaction,
): readonly SupportLoad[] =>
  (
    [
      ["left-front", -1, -1, loads.leftFront],
      ["left-rear", -1, 1, loads.leftRear],
      ["right-front", 1, -1, loads.rightFront],
      ["right-rear", 1, 1, loads.rightRear],
    ] as const
  ).map(([id, x, y, load]) => ({ id, x: (x * width) / 2, y: (y * length) / 2, reaction: reaction(load, id) }));

/** The largest share, unfolded. */
export const worstShareTerm = (loads: PadLoads, weight: number, clause: string): Term => {
  const worst = Math.max(loads.leftFront, loads.leftRear, loads.rightFront, loads.rightRear);
  return {
    symbol: "N_max",
    words: "lifted weight on the most loaded support",
    value: worst,
    unit: "N",
    clause,
    formula: "share × φ W",
    worked: `${shown(worst / weight)} × ${shown(weight)}`,
  };
};
