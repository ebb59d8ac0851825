import { Clipper, FillRule } from "clipper2-ts";
import { convexHull, type Point, type Polygon, sides, signedArea } from "../geometry/index.ts";

/** A sum of two plan shapes on the grid, ready to be offset: every point of its outline lies in one of the hulls. */
export interface Sum {
  readonly hulls: readonly Polygon[];
  /** polygons that fill what the hulls leave open inside; they need no offset */
  readonly fills: readonly Polygon[];
  /** the sum's own outline and holes (even-odd); a point or a line where it has no area */
  readonly rings: readonly Polygon[];
}

/**
 * Where a shape's origin may not be if the shape is not to meet an obstacle: obstacle ⊕ (−shape), the Minkowski sum, of
 * grid polygons counter-clockwise (one point and two-point lines too).
 *
 * Two convex shapes: the hull of all sums of corners. Otherwise P ⊕ Q = (P + q₀) ∪ (Q + p₀) ∪ all sums of a side of P
 * and a side of Q: if P meets z − Q, either their outlines meet or one holds the other, corners and all.
 */
export const minkowskiSum = (obstacle: Polygon, shape: Polygon): Sum => {
  const reflected = shape.map((p) => ({ x: -p.x, y: -p.y }));
  if (isConvex(obstacle) && isConvex(reflected)) {
    const hull = hullOfSums(obstacle, reflected);
    return { hulls: [hull], fills: [], rings: [hull] };
  }
  const hulls = lines(obstacle).flatMap((p) => lines(reflected).map((q) => hullOfSums(p, q)));
  const fills = [shifted(obstacle, reflected[0]!), shifted(reflected, obstacle[0]!)].filter((p) => p.length >= 3);
  const areas = [...hulls.filter((hull) => hull.length >= 3), ...fills].map((p) => [...p]);
  return { hulls, fills, rings: Clipper.union(areas, FillRule.NonZero) };
};

const isConvex = (polygon: Polygon): boolean =>
  polygon.length < 4 || Math.abs(signedArea(convexHull(polygon)) - signedArea(polygon)) < 0.5;

const hullOfSums = (p: Polygon, q: Polygon): Polygon =>
  convexHull(p.flatMap((a) => q.map((b) => ({ x: a.x + b.x, y: a.y + b.y }))));

/** The sides of a polygon as two-point lines; a point or a line is its own. */
const lines = (polygon: Polygon): readonly Polygon[] =>
  polygon.length < 3 ? [polygon] : sides(polygon).map(({ a, b }) => [a, b]);

const shifted = (polygon: Polygon, by: Point): Polygon => polygon.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));
