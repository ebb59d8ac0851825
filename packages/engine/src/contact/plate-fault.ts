import type { Reaction } from "../frames/index.ts";
import { pointInPolygon, polygonMoments } from "../geometry/index.ts";
import type { BasePlate } from "./base-plate.ts";

/** Why a plate and its load cannot be computed as described, or undefined where they can. */
export const plateFault = ({ outline, anchors, bedding }: BasePlate, reaction: Reaction): string | undefined => {
  const numbers = [bedding, reaction.P, reaction.Mx, reaction.My, ...outline.flatMap((p) => [p.x, p.y])];
  numbers.push(...anchors.flatMap((a) => [a.x, a.y, a.stiffness, a.preload]));
  if (!numbers.every(Number.isFinite)) return "A coordinate, stiffness or load is not a number.";
  if (!(polygonMoments(outline).area > 0)) return "The outline of the plate has no area.";
  if (!(bedding > 0)) return "The bedding must be stiffer than nothing.";
  for (const a of anchors) {
    if (!(a.stiffness > 0)) return `Anchor ${a.id} has no stiffness.`;
    if (a.preload < 0) return `Anchor ${a.id} is preloaded in compression.`;
    if (pointInPolygon(a, outline) === "outside") return `Anchor ${a.id} stands outside the plate.`;
  }
  return undefined;
};
