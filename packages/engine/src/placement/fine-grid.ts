import type { Point, Polygon } from "../geometry/index.ts";

/**
 * The integer grid of all plan geometry here: 1/1000 mm. A bay of 90 m stays below 2²⁶ steps, so that cross products are
 * exact in a double.
 */
export const STEPS_PER_MM = 1000;

/**
 * How far every kept-out zone is grown beyond its clearance, steps: more than rounding of corners and crossings can take
 * away, so that a position called feasible keeps its distances in full.
 */
export const GROWTH = 3;

export const toGrid = (p: Point): Point => ({ x: Math.round(p.x * STEPS_PER_MM), y: Math.round(p.y * STEPS_PER_MM) });

/** A polygon's corners on the grid, without neighbours that fall together. */
export const polygonToGrid = (polygon: Polygon): Polygon => {
  const corners = polygon.map(toGrid);
  const kept = corners.filter((p, i) => {
    const before = corners.at(i - 1)!;
    return p.x !== before.x || p.y !== before.y;
  });
  return kept.length > 0 ? kept : corners.slice(0, 1);
};

export const fromGrid = (p: Point): Point => ({ x: p.x / STEPS_PER_MM, y: p.y / STEPS_PER_MM });
