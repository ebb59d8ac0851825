/**
 * Volume of a solid whose horizontal section is one plan grown by s(z): V = ∫ A(s(z)) dz, layer by layer.
 *
 * Method: Gauss quadrature between the breaks of A. Where A is a polynomial (rectangles, polygons) it is exact; for joined
 * circles, whose A holds a square root, good to twelve digits.
 */
import { gaussRule } from "../numerics/index.ts";
import type { PlanArea } from "./plan-area.ts";

/** A layer of height mm in which the growth runs evenly from `below` to `above`, mm. */
export interface Layer {
  readonly height: number;
  readonly below: number;
  readonly above: number;
}

const RULE = gaussRule(24);

/** mm³ */
export const solidVolume = (area: PlanArea, layers: readonly Layer[]): number =>
  layers.reduce((sum, layer) => sum + layerVolume(area, layer), 0);

const layerVolume = ({ at, breaks }: PlanArea, { height, below, above }: Layer): number => {
  if (below === above) return height * at(below);
  const [low, high] = [Math.min(below, above), Math.max(below, above)];
  const ends = [low, ...breaks.filter((s) => s > low && s < high).toSorted((a, b) => a - b), high];
  let mean = 0;
  for (let i = 0; i + 1 < ends.length; i++) {
    const [from, width] = [ends[i]!, ends[i + 1]! - ends[i]!];
    RULE.points.forEach((t, g) => {
      mean += (RULE.weights[g]! * width * at(from + width * t)) / (high - low);
    });
  }
  return height * mean;
};
