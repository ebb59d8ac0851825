import { Clipper, FillRule } from "clipper2-ts";
import type { Polygon } from "./point.ts";
import { signedArea } from "./polygon-area.ts";

/** Steps of the grid the outline is rounded to, per mm. */
const STEPS_PER_MM = 1e4;

/**
 * Outline of the union of polygons, for drawing: outer rings counter-clockwise, holes clockwise, corners rounded to
 * 0.0001 mm. For the area of convex pieces use `unionArea`, which does not round.
 */
export const unionOutline = (polygons: readonly Polygon[]): readonly Polygon[] => {
  const paths = polygons
    .filter((p) => p.length >= 3)
    .map((p) => (signedArea(p) < 0 ? p.toReversed() : p))
    .map((p) => p.map(({ x, y }) => ({ x: Math.round(x * STEPS_PER_MM), y: Math.round(y * STEPS_PER_MM) })));
  if (paths.length === 0) return [];
  return Clipper.union(paths, FillRule.NonZero).map((path) =>
    path.map(({ x, y }) => ({ x: x / STEPS_PER_MM, y: y / STEPS_PER_MM })),
  );
};
