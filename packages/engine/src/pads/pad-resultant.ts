/** The one force under a pad that carries one or more columns, with its own weight. */
import type { Reaction } from "../frames/index.ts";
import { type Point, type Polygon, polygonArea, polygonCentroid } from "../geometry/index.ts";

/** What one column puts on the pad, at its place in the plan. */
export interface PadAction {
  readonly at: Point;
  readonly reaction: Reaction;
}

/** A pad that stands alone. */
export interface SeparatePad {
  readonly outline: Polygon;
  /** mm */
  readonly thickness: number;
  /** weight of the concrete, N/mm³ */
  readonly unitWeight: number;
}

/** At the underside of the pad. */
export interface PadResultant {
  /** N, columns and pad */
  readonly N: number;
  /** where it strikes the ground */
  readonly at: Point;
  /** N, weight of the pad */
  readonly weight: number;
  /** N, horizontal forces of all columns */
  readonly Vx: number;
  readonly Vy: number;
}

/** Moments of the columns, their shears at the pad's top and their places are carried to the underside. */
export const padResultant = (pad: SeparatePad, actions: readonly PadAction[]): PadResultant => {
  const centre = polygonCentroid(pad.outline);
  const weight = pad.unitWeight * polygonArea(pad.outline) * pad.thickness;
  let [N, Sx, Sy, Vx, Vy] = [weight, weight * centre.x, weight * centre.y, 0, 0];
  for (const { at, reaction } of actions) {
    N += reaction.P;
    Sx += reaction.P * at.x + reaction.My + reaction.Vx * pad.thickness;
    Sy += reaction.P * at.y + reaction.Mx + reaction.Vy * pad.thickness;
    Vx += reaction.Vx;
    Vy += reaction.Vy;
  }
  return { N, at: { x: Sx / N, y: Sy / N }, weight, Vx, Vy };
};
