import type { Reaction } from "../frames/index.ts";
import { isUnable, type Unable } from "../quantities/index.ts";
import type { BasePlate } from "./base-plate.ts";
import { solveContact } from "./solve-contact.ts";

/** How far a base turns under a load, and the secant spring that says the same to a frame. */
export interface BaseRotation {
  /** radians, positive with the +x side going down (about y) and the +y side going down (about x) */
  readonly aboutY: number;
  readonly aboutX: number;
  /** My / aboutY, N·mm/rad; Infinity where nothing turns, or turns against the moment (P on a lopsided plate) */
  readonly stiffnessAboutY: number;
}

/** Turning that the load adds to the plate clamped by its preloads alone. The slab's own tilt comes on top. */
export const baseRotation = (plate: BasePlate, reaction: Reaction): BaseRotation | Unable => {
  const loaded = solveContact(plate, reaction);
  if (isUnable(loaded)) return loaded;
  const clamped = solveContact(plate, { P: 0, Mx: 0, My: 0, Vx: 0, Vy: 0 });
  if (isUnable(clamped)) return clamped;
  const aboutY = loaded.tiltX - clamped.tiltX;
  const aboutX = loaded.tiltY - clamped.tiltY;
  const stiffness = reaction.My / aboutY;
  return { aboutY, aboutX, stiffnessAboutY: stiffness > 0 ? stiffness : Number.POSITIVE_INFINITY };
};
