import type { BaseLoad } from "./base-load.ts";
import type { Reaction } from "./reaction.ts";

/** Which column: the left one stands at the smaller x of an unturned lift (vehicle facing the back wall or the door). */
export type Side = "left" | "right";

/** The same reaction seen after its axes' bearer is turned by `angle` (radians, from +x toward +y). */
export const turnReaction = (reaction: Reaction, angle: number): Reaction => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const { P, Mx, My, Vx, Vy } = reaction;
  // (My, Mx) = P·(x, y) of the resultant, so it turns like a position
  return { P, My: c * My - s * Mx, Mx: s * My + c * Mx, Vx: c * Vx - s * Vy, Vy: s * Vx + c * Vy };
};

/**
 * A column's load in plan axes. The left column's u points to +x, the right one's to −x; v points to +y (the door).
 *
 * @param turn - of the whole lift in the bay, radians from +x toward +y; 0 with the column line across the bay
 */
export const toPlan = (load: BaseLoad, side: Side, turn = 0): Reaction => {
  const inward = side === "left" ? 1 : -1;
  return turnReaction(
    {
      P: load.P,
      My: inward * load.inwardMoment,
      Mx: load.foreAftMoment,
      Vx: inward * load.inwardShear,
      Vy: load.foreAftShear,
    },
    turn,
  );
};

/**
 * A plan reaction in the axes of a base plate that itself stands turned in plan (asymmetric lifts turn their columns).
 *
 * @param plateTurn - of the plate's own x-axis from the plan's, radians from +x toward +y
 */
export const toPlateAxes = (reaction: Reaction, plateTurn: number): Reaction => turnReaction(reaction, -plateTurn);
