import { type Point, type Polygon, signedArea } from "../geometry/index.ts";

/**
 * What of a lift keeps a distance: its anchors, base plates, whole body (columns, arms' box), the vehicle on it, and the
 * path on which it is driven in, which alone may leave the room.
 */
export const PARTS = ["anchors", "plates", "body", "vehicle", "path"] as const;
export type Part = (typeof PARTS)[number];

/** A lift in plan as its maker draws it, mm from the lift's own origin. Polygons are simple, in either direction. */
export interface LiftFootprint {
  readonly anchors: readonly Point[];
  readonly plates: readonly Polygon[];
  /** one outline round everything that stands or swings */
  readonly body: Polygon;
  /** the longest vehicle where it stands on the lift */
  readonly vehicle?: Polygon;
  /** the strip of floor a vehicle needs to get to its place, out to beyond the room */
  readonly path?: Polygon;
}

/** How the lift stands: first mirrored left to right about its own y-axis (or not), then turned about its origin. */
export interface Turn {
  readonly mirror: "as-drawn" | "mirrored";
  /** radians from +x toward +y */
  readonly angle: number;
}

/** Every shape of each part, counter-clockwise; an anchor is a polygon of one point. */
export type Shapes = Readonly<Record<Part, readonly Polygon[]>>;

/** A footprint's shapes as they stand, relative to the lift's origin, mm. */
export const turnedShapes = (footprint: LiftFootprint, { mirror, angle }: Turn): Shapes => {
  const [c, s] = [exact(Math.cos(angle)), exact(Math.sin(angle))];
  const place = (p: Point): Point => {
    const x = mirror === "mirrored" ? -p.x : p.x;
    return { x: c * x - s * p.y, y: s * x + c * p.y };
  };
  const placed = (polygon: Polygon): Polygon => counterClockwise(polygon.map(place));
  return {
    anchors: footprint.anchors.map((p) => [place(p)]),
    plates: footprint.plates.map(placed),
    body: [placed(footprint.body)],
    vehicle: footprint.vehicle ? [placed(footprint.vehicle)] : [],
    path: footprint.path ? [placed(footprint.path)] : [],
  };
};

export const counterClockwise = (polygon: Polygon): Polygon =>
  signedArea(polygon) < 0 ? polygon.toReversed() : polygon;

/** Cosines of right angles are 0, 1 and −1, not nearly so. */
const exact = (v: number): number => (Math.abs(v - Math.round(v)) < 1e-12 ? Math.round(v) : v);
