/**
 * The part of a plate or footing whose centroid stands under the load: the uniform block for two-way eccentricity,
 * without anchors. For a rectangle with one eccentricity it is the B' = B − 2e of Meyerhof [meyerhof-53]; for two,
 * the effective trapezoid, triangle or pentagon of Highter & Anders [highter-anders].
 *
 * Method: for each direction of the cutting line its distance is set so that the cut part's centroid has the load's
 * coordinate across the line; the direction is then turned until the other coordinate fits as well.
 * Fails: where the load stands outside the convex hull. Cost: about a thousand clippings.
 */
import { clipByHalfPlane, type Point, type Polygon, polygonMoments } from "../geometry/index.ts";
import { findRoot } from "../numerics/index.ts";
import { type Unable, unable } from "../quantities/index.ts";
import { depthInHull } from "./depth-in-hull.ts";

export interface EffectiveArea {
  /** mm² */
  readonly area: number;
  /** the loaded part (of a notched outline, pieces may hang together by coincident sides) */
  readonly outline: Polygon;
  /** distance of the part's centroid from the load, mm */
  readonly miss: number;
}

/** @param load - where the resultant stands, mm */
export const effectiveArea = (outline: Polygon, load: Point): EffectiveArea | Unable => {
  const whole = polygonMoments(outline);
  const size = Math.sqrt(whole.area);
  if (!(whole.area > 0)) return unable("effective area", "The outline has no area.");
  if (!(depthInHull(load, outline) > 1e-9 * size)) return unable("effective area", "The load stands off the plate.");
  const [ex, ey] = [load.x - whole.x, load.y - whole.y];
  if (Math.hypot(ex, ey) < 1e-9 * size) return { area: whole.area, outline, miss: Math.hypot(ex, ey) };
  const toward = Math.atan2(ey, ex);
  const cutAt = (turn: number): Polygon => cut(outline, load, toward + turn);
  const sideways = (turn: number): number => {
    const { x, y } = polygonMoments(cutAt(turn));
    return -Math.sin(toward + turn) * (x - load.x) + Math.cos(toward + turn) * (y - load.y);
  };
  const part = cutAt(turnThatFits(sideways));
  const { area, x, y } = polygonMoments(part);
  const miss = Math.hypot(x - load.x, y - load.y);
  if (!(miss < 1e-6 * size)) return unable("effective area", "No straight cut leaves a part centred under the load.");
  return { area, outline: part, miss };
};

const STEPS = 36;

/** The root nearest to no turn, within a quarter turn either way. */
const turnThatFits = (f: (turn: number) => number): number => {
  if (Math.abs(f(0)) === 0) return 0;
  for (let i = 1; i <= STEPS; i++) {
    for (const sign of [1, -1]) {
      const [a, b] = [(sign * (i - 1) * Math.PI) / 2 / STEPS, (sign * i * Math.PI) / 2 / STEPS];
      if (f(a) * f(b) <= 0) return findRoot(f, a, b, 1e-14, 100);
    }
  }
  return 0;
};

/** The part beyond a line across `angle`, its centroid level with the load in that direction. */
const cut = (outline: Polygon, load: Point, angle: number): Polygon => {
  const [nx, ny] = [Math.cos(angle), Math.sin(angle)];
  const along = (p: Point): number => nx * p.x + ny * p.y;
  const part = (c: number): Polygon => clipByHalfPlane(outline, { nx: -nx, ny: -ny, c: -c });
  const reach = outline.map(along);
  const [low, high, target] = [Math.min(...reach), Math.max(...reach), along(load)];
  const over = (c: number): number => along(polygonMoments(part(c))) - target;
  if (over(low) >= 0) return outline;
  return part(findRoot(over, low, Math.min(high, target), 1e-14, 100));
};
