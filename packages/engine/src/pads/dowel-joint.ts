/** A row of dowels as a spring along a joint, for a plate solver. */
import { type Dowel, dowelDeflection } from "./dowels.ts";

/** ratio of shear area to area of a round bar */
const SHEAR_SHAPE = 0.9;

/**
 * Difference of level across the joint under 1 N on one bar: twice its sinking into the concrete, and the bar's own shear
 * and bending across the gap, mm/N: `2 y0 + z/(0.9 G A) + z³/12EI`. Friberg 1940; the gap's terms: Timoshenko beam.
 */
export const dowelGive = (dowel: Dowel): number => {
  const { d, E, joint } = dowel;
  const [A, I, G] = [(Math.PI * d * d) / 4, (Math.PI * d ** 4) / 64, E / 2.6];
  return 2 * dowelDeflection(dowel, 1) + joint / (SHEAR_SHAPE * G * A) + joint ** 3 / (12 * E * I);
};

/** Shear stiffness of the row, N per mm of difference in level and mm of joint. @param spacing - of the bars, mm */
export const dowelRowStiffness = (dowel: Dowel, spacing: number): number => 1 / (dowelGive(dowel) * spacing);
