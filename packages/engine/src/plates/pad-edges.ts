import type { Point } from "../geometry/index.ts";
import type { Floor } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { insideFloor } from "./rim.ts";
import { thicknessAt } from "./zones.ts";

/**
 * A piece of line across which the thickness jumps. The moment right at it converges slowly and means little within a
 * thickness of it, so it is asked h of the thinner side away, on both sides.
 */
export interface PadEdge {
  readonly a: Point;
  readonly b: Point;
  /** unit vector from the thick side to the thin side */
  readonly toThin: Point;
  /** mm */
  readonly thin: number;
}

/** Every such piece, one per pair of neighbouring cells. */
export const padEdges = (grid: Grid): PadEdge[] => {
  const { x, y, thickness } = grid;
  const edges: PadEdge[] = [];
  const compare = (here: number, there: number, a: Point, b: Point, n: Point): void => {
    const [h0, h1] = [thickness[here]!, thickness[there]!];
    if (h0 === h1) return;
    edges.push({ a, b, toThin: h0 > h1 ? n : { x: -n.x, y: -n.y }, thin: Math.min(h0, h1) });
  };
  for (let s = 0; s < x.spans; s++)
    for (let t = 0; t < y.spans; t++) {
      const cell = s * y.spans + t;
      const corner = (i: number, j: number): Point => ({ x: x.breaks[s + i]!, y: y.breaks[t + j]! });
      if (s + 1 < x.spans) compare(cell, cell + y.spans, corner(1, 0), corner(1, 1), { x: 1, y: 0 });
      if (t + 1 < y.spans) compare(cell, cell + 1, corner(0, 1), corner(1, 1), { x: 0, y: 1 });
    }
  return edges;
};

/** Points at which the stress on one side of all pad edges is asked; those that fall off the floor or off that side are left out. */
export const besidePadEdges = (floor: Floor, edges: readonly PadEdge[], side: "thin" | "thick"): Point[] => {
  const points: Point[] = [];
  for (const { a, b, toThin, thin } of edges) {
    const away = side === "thin" ? thin : -thin;
    for (const u of [0.05, 0.5, 0.95]) {
      const on = { x: a.x + u * (b.x - a.x), y: a.y + u * (b.y - a.y) };
      const near = thicknessAt(floor, { x: on.x + 1e-3 * away * toThin.x, y: on.y + 1e-3 * away * toThin.y });
      const p = { x: on.x + away * toThin.x, y: on.y + away * toThin.y };
      if (onFloor(floor, p) && thicknessAt(floor, p) === near) points.push(p);
    }
  }
  return points;
};

/** Round the outer corners of the zones the same distance is kept along the diagonal. */
export const besidePadCorners = (floor: Floor): Point[] =>
  floor.zones.flatMap(({ rect: r, thickness }) =>
    [-1, 1].flatMap((sx) =>
      [-1, 1].flatMap((sy) => {
        const corner = { x: sx < 0 ? r.x0 : r.x1, y: sy < 0 ? r.y0 : r.y1 };
        const thin = thicknessAt(floor, { x: corner.x + sx, y: corner.y + sy });
        const p = { x: corner.x + sx * thin * Math.SQRT1_2, y: corner.y + sy * thin * Math.SQRT1_2 };
        return thin < thickness && onFloor(floor, p) && thicknessAt(floor, p) === thin ? [p] : [];
      }),
    ),
  );

const onFloor = (floor: Floor, p: Point): boolean => {
  const o = floor.outline;
  return p.x >= o.x0 && p.x <= o.x1 && p.y >= o.y0 && p.y <= o.y1 && insideFloor(floor)(p);
};
