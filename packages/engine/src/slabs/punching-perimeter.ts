/**
 * Control perimeter of a rectangular patch on a slab with free edges near it: geometry only; the stress is the code's.
 *
 * The failure surface may close round the patch or run out to any of the free edges; the shortest of the fifteen ways
 * governs; at least one side closes, for nothing is cut otherwise;
 * only where every edge is nearer than the section the length is 0 and all sides are open. Sides that run out fall away, their neighbours reach to the edge. An edge nearer than the section leaves no
 * room to close on that side.
 */
import type { Polygon, Rect } from "../geometry/index.ts";

/** Clear distance from each side of the patch to a free edge, mm; Infinity where there is none. */
export interface EdgeDistances {
  readonly left: number;
  readonly right: number;
  readonly back: number;
  readonly front: number;
}

export type Side = keyof EdgeDistances;

/** A control perimeter and what lies inside it. */
export interface ControlPerimeter {
  /** mm, without the parts on a free edge */
  readonly length: number;
  /** mm² within the perimeter, loaded patch included: the ground below it carries its own share */
  readonly area: number;
  /** sides where it runs out to a free edge */
  readonly open: readonly Side[];
  /** long side over short side of the patch */
  readonly beta: number;
}

/** "square" corners as ACI allows for rectangular areas; "round" as the true locus at distance `offset`. */
export type CornerShape = "square" | "round";

const SIDES: readonly Side[] = ["left", "right", "back", "front"];

/** @param offset - distance of the section from the patch, mm (h/2, d/2 or 2d by the code in use) */
export const controlPerimeter = (
  patch: Rect,
  offset: number,
  edges: EdgeDistances,
  corner: CornerShape = "square",
): ControlPerimeter => {
  const reachable = SIDES.filter((side) => Number.isFinite(edges[side]));
  const ways = Array.from({ length: 2 ** reachable.length }, (_, bits) =>
    reachable.filter((_side, i) => (bits >> i) % 2 === 1),
  ).filter((open) => open.length < SIDES.length && SIDES.every((side) => open.includes(side) || edges[side] >= offset));
  if (ways.length === 0) return perimeter(patch, offset, edges, corner, SIDES);
  const all = ways.map((open) => perimeter(patch, offset, edges, corner, open));
  return all.reduce((best, way) => (way.length < best.length ? way : best));
};

const perimeter = (
  patch: Rect,
  offset: number,
  edges: EdgeDistances,
  corner: CornerShape,
  open: readonly Side[],
): ControlPerimeter => {
  const [bx, by] = [patch.x1 - patch.x0, patch.y1 - patch.y0];
  const reach = (side: Side) => (open.includes(side) ? edges[side] : corner === "square" ? offset : 0);
  const [alongX, alongY] = [bx + reach("left") + reach("right"), by + reach("back") + reach("front")];
  const closed = SIDES.filter((side) => !open.includes(side));
  const straight = closed.reduce((s, side) => s + (side === "left" || side === "right" ? alongY : alongX), 0);
  const corners = [closed.includes("left"), closed.includes("right")]
    .filter(Boolean)
    .flatMap(() => [closed.includes("back"), closed.includes("front")].filter(Boolean)).length;
  const arcs = corner === "round" ? (corners * Math.PI * offset) / 2 : 0;
  const extent = (side: Side) => (open.includes(side) ? edges[side] : offset);
  const box = (bx + extent("left") + extent("right")) * (by + extent("back") + extent("front"));
  const missing = corner === "round" ? corners * (1 - Math.PI / 4) * offset * offset : 0;
  return { length: straight + arcs, area: box - missing, open, beta: Math.max(bx, by) / Math.min(bx, by) };
};

/**
 * Free-edge distances of a patch in a slab outline: for each side, the nearest boundary seen from it straight out or
 * within `offset` to either side, since the perimeter turns there.
 */
export const edgeDistances = (patch: Rect, slab: Polygon, offset: number): EdgeDistances => {
  const seen = (side: Side): number => {
    const across = side === "left" || side === "right";
    const sign = side === "left" || side === "back" ? -1 : 1;
    const face = { left: patch.x0, right: patch.x1, back: patch.y0, front: patch.y1 }[side];
    const [low, high] = across ? [patch.y0 - offset, patch.y1 + offset] : [patch.x0 - offset, patch.x1 + offset];
    let least = Number.POSITIVE_INFINITY;
    slab.forEach((p, i) => {
      const q = slab[(i + 1) % slab.length]!;
      for (const along of within(across ? [p.y, p.x, q.y, q.x] : [p.x, p.y, q.x, q.y], low, high)) {
        const away = sign * (along - face);
        if (away >= -1e-9 && away < least) least = Math.max(0, away);
      }
    });
    return least;
  };
  return { left: seen("left"), right: seen("right"), back: seen("back"), front: seen("front") };
};

/** The outward coordinates of a segment (s0, t0)-(s1, t1) at the ends of its part with low < s < high. */
const within = ([s0, t0, s1, t1]: readonly [number, number, number, number], low: number, high: number): number[] => {
  if (Math.max(s0, s1) <= low || Math.min(s0, s1) >= high) return [];
  const at = (s: number) => (s1 === s0 ? t0 : t0 + ((t1 - t0) * (s - s0)) / (s1 - s0));
  if (s1 === s0) return [t0, t1];
  return [at(Math.max(low, Math.min(s0, s1))), at(Math.min(high, Math.max(s0, s1)))];
};
