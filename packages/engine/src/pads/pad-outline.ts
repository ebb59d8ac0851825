/** Outlines of a pad as polygons, for drawing, distances and the plate solver. */
import type { Point, Polygon } from "../geometry/index.ts";
import type { Pad, PadPlan } from "./pad.ts";
import { growthAtSlab } from "./pad-volume.ts";
import { turningAngle } from "./plan-area.ts";

/** "full": where the pad has its full thickness; "slab": at the underside of the slab; "undercut": beneath the old slab. */
export type OutlineLevel = "full" | "slab" | "undercut";

/**
 * One polygon per separate part, counter-clockwise; arcs as inscribed chords that stay within `tolerance` mm of the arc.
 * Overlapping rectangles of a pair come as two polygons. Corners of grown outlines are drawn mitred or round as the
 * sides say.
 */
export const padOutlines = (pad: Pad, level: OutlineLevel, tolerance = 1): readonly Polygon[] => {
  const { sides } = pad;
  const s = level === "slab" ? growthAtSlab(pad) : level === "undercut" && sides.kind === "undercut" ? sides.reach : 0;
  const rounded = sides.kind !== "vertical" && sides.corner === "rounded";
  return planOutlines(pad.plan, s, tolerance).map((ring) =>
    pad.plan.shape === "joined-circles" || s === 0 ? ring : grown(ring, s, rounded, tolerance),
  );
};

const planOutlines = (plan: PadPlan, s: number, tolerance: number): readonly Polygon[] => {
  if (plan.shape === "outline") return [plan.outline];
  const frame = columnFrame(plan.columns);
  if (plan.shape === "joined-circles")
    return [joinedCircles(plan.columns, plan.radius + s, Math.min(plan.waist / 2, plan.radius) + s, tolerance)];
  if (plan.shape === "strip") {
    const [p, q] = plan.columns;
    return [rectangle({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 }, frame, frame.length + 2 * plan.beyond, plan.width)];
  }
  return plan.columns.map((at) => rectangle(at, frame, plan.along, plan.across));
};

interface Frame {
  readonly ux: number;
  readonly uy: number;
  readonly length: number;
}

/** Unit vector from the first column to the second; along x for a single column. */
const columnFrame = (columns: readonly Point[]): Frame => {
  const [p, q] = columns;
  const length = p && q ? Math.hypot(q.x - p.x, q.y - p.y) : 0;
  return length === 0 ? { ux: 1, uy: 0, length } : { ux: (q!.x - p!.x) / length, uy: (q!.y - p!.y) / length, length };
};

const placed = (at: Point, { ux, uy }: Frame, u: number, v: number): Point => ({
  x: at.x + u * ux - v * uy,
  y: at.y + u * uy + v * ux,
});

const rectangle = (at: Point, frame: Frame, along: number, across: number): Polygon =>
  [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([u, v]) => placed(at, frame, (u! * along) / 2, (v! * across) / 2));

/** Angles of an arc so that chords stay within the tolerance. */
const arcSteps = (radius: number, sweep: number, tolerance: number): number =>
  Math.max(1, Math.ceil(sweep / (2 * Math.acos(Math.max(0, 1 - tolerance / Math.max(radius, tolerance))))));

const joinedCircles = (columns: readonly [Point, Point], R: number, b: number, tolerance: number): Polygon => {
  const frame = columnFrame(columns);
  const half = frame.length / 2;
  // from the middle, the circle takes over from the band (or from the other circle) at this angle to the column line
  const open = Math.sqrt(R * R - b * b) < half ? Math.asin(b / R) : Math.acos(Math.min(1, half / R));
  const steps = arcSteps(R, 2 * (Math.PI - open), tolerance);
  const mid = { x: (columns[0].x + columns[1].x) / 2, y: (columns[0].y + columns[1].y) / 2 };
  const arc = (centre: number, from: number): Point[] =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const angle = from + (2 * (Math.PI - open) * i) / steps;
      return placed(mid, frame, centre + R * Math.cos(angle), R * Math.sin(angle));
    });
  return [...arc(half, -Math.PI + open), ...arc(-half, open)];
};

/** A counter-clockwise ring moved outward by s. */
const grown = (ring: Polygon, s: number, rounded: boolean, tolerance: number): Polygon =>
  ring.flatMap((p, i) => {
    const [before, after] = [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!];
    const turn = turningAngle(before, p, after);
    const heading = Math.atan2(p.y - before.y, p.x - before.x) - Math.PI / 2; // outward normal of the side before
    if (!rounded || turn <= 0) {
      const reach = s / Math.cos(turn / 2);
      return [{ x: p.x + reach * Math.cos(heading + turn / 2), y: p.y + reach * Math.sin(heading + turn / 2) }];
    }
    const steps = arcSteps(s, turn, tolerance);
    return Array.from({ length: steps + 1 }, (_, k) => {
      const angle = heading + (turn * k) / steps;
      return { x: p.x + s * Math.cos(angle), y: p.y + s * Math.sin(angle) };
    });
  });
