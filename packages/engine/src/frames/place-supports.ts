import type { LoadCase } from "./load-cases.ts";
import type { SupportCase } from "./support-case.ts";
import { toPlan, turnReaction } from "./to-plan.ts";

/** A two-post case as two supports, the left column at −spacing/2, in the axes of an unturned lift. */
export const twoPostSupports = (loadCase: LoadCase, spacing: number): SupportCase => {
  const { id, name, standing, left, right, terms } = loadCase;
  return {
    id,
    name,
    standing,
    supports: [
      { id: "left", x: -spacing / 2, y: 0, reaction: toPlan(left, "left") },
      { id: "right", x: spacing / 2, y: 0, reaction: toPlan(right, "right") },
    ],
    terms: [...Object.values(terms.left), ...Object.values(terms.right)],
  };
};

/**
 * A case set down in the bay: places and reactions turned with the lift.
 *
 * @param x,y - of the lift's middle in plan, mm @param turn - radians from +x toward +y
 */
export const placeSupports = (at: SupportCase, x: number, y: number, turn: number): SupportCase => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const supports = at.supports.map((support) => ({
    ...support,
    x: x + c * support.x - s * support.y,
    y: y + s * support.x + c * support.y,
    reaction: turnReaction(support.reaction, turn),
  }));
  return { ...at, supports };
};
