import {
  clipByHalfPlane,
  type Point,
  type Polygon,
  pointInPolygon,
  polygonArea,
  sides,
  signedArea,
} from "@floorworthy/engine/geometry";
import { type Pad, type PadPlan, type PadSides, padOutlines } from "@floorworthy/engine/pads";
import { toBase, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { placedBases } from "../layout.ts";
import type { PadDesign } from "./design.ts";

/** Kept between a cut-out pad and a wall or the slab's edge, so that no footing is undermined: common practice, no source. */
const CLEAR = toBase(12, "in");

/** One piece of thick concrete: what the arithmetic of volumes reads, and its plan. */
export interface PadPart {
  readonly name: string;
  readonly pad: Pad;
  readonly outline: Polygon;
  readonly cut: "whole" | "clipped";
}

/** The pieces of a design in the plan of the job, clipped to the bay. */
export const padParts = (job: Job, design: PadDesign): readonly PadPart[] | Unable => {
  const { position, bay } = job;
  if (!position) return unable("pad", "Where the columns stand is not known.");
  const { size, depth } = design;
  const slab = design.join === "cast-with" && job.floor.thickness.known ? job.floor.thickness.value : 0;
  const common = { thickness: depth, slab: Math.min(slab, depth), sides: sidesOf(design) };
  if (size.shape === "whole-bay") {
    if (!bay.outline) return unable("pad", "The outline of the floor is not known.");
    const pad: Pad = {
      ...common,
      slab: 0,
      sides: { kind: "vertical" },
      plan: { shape: "outline", outline: bay.outline },
    };
    return [{ name: "floor", pad, outline: bay.outline, cut: "whole" }];
  }
  const columns = [position.left, position.right] as const;
  const plans: readonly (readonly [string, PadPlan])[] =
    size.shape === "two-pads"
      ? [
          ["left pad", rectangleAbout(columns, 0, size.along, size.across)],
          ["right pad", rectangleAbout(columns, 1, size.along, size.across)],
        ]
      : size.shape === "strip"
        ? [["lift strip", { shape: "strip", columns, width: size.across, beyond: size.beyond }]]
        : [["lift pad", { shape: "joined-circles", columns, radius: size.radius, waist: size.waist }]];
  const room = design.join === "cast-with" ? bay.outline : bay.outline && inset(bay.outline, clearOf(job));
  const parts: PadPart[] = [];
  for (const [name, plan] of plans) {
    const pad: Pad = { ...common, plan };
    const [outline] = padOutlines(pad, "full", toBase(0.25, "in"));
    const clipped = room ? clip(outline!, room) : outline!;
    if (!clipped) return unable("pad", `The ${name} does not fit the floor, whose outline has a notch there.`);
    const whole = Math.abs(polygonArea(clipped) - polygonArea(outline!)) < 1;
    const bases = placedBases(job).filter(({ side }) => size.shape !== "two-pads" || name.startsWith(side));
    if (
      !bases.every(({ centre, outline: plate }) =>
        [centre, ...plate].every((p) => pointInPolygon(p, clipped) !== "outside"),
      )
    )
      return unable("pad", `The ${name} does not hold the whole base plate within the floor.`);
    parts.push({
      name,
      pad: whole ? pad : { ...pad, plan: { shape: "outline", outline: clipped } },
      outline: whole ? outline! : clipped,
      cut: whole ? "whole" : "clipped",
    });
  }
  return parts;
};

const sidesOf = ({ join, slope, key }: PadDesign): PadSides => {
  if (join === "undercut") return { kind: "undercut", reach: key, corner: "mitred" };
  return join === "cast-with" && slope > 0 ? { kind: "sloped", run: slope, corner: "mitred" } : { kind: "vertical" };
};

export const clearOf = ({ pad }: Job): number => (pad.clearToWall.known ? pad.clearToWall.value : CLEAR);

/** The rectangle about one column, turned with the line of both. */
const rectangleAbout = (columns: readonly [Point, Point], which: 0 | 1, along: number, across: number): PadPlan => {
  const [p, q] = columns;
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  const [ux, uy] = length > 0 ? [(q.x - p.x) / length, (q.y - p.y) / length] : [1, 0];
  const c = columns[which];
  const corner = (u: number, v: number): Point => ({
    x: c.x + (u * along * ux - v * across * uy) / 2,
    y: c.y + (u * along * uy + v * across * ux) / 2,
  });
  return { shape: "outline", outline: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)] };
};

const isConvex = (ring: Polygon): boolean =>
  ring.every((p, i) => {
    const [a, b] = [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!];
    return (p.x - a.x) * (b.y - p.y) - (p.y - a.y) * (b.x - p.x) >= -1e-6;
  });

/** Each side moved inward; for outlines without notches. A notched one is judged by its own sides. */
const inset = (outline: Polygon, by: number): Polygon => {
  const ring = signedArea(outline) < 0 ? outline.toReversed() : outline;
  if (!isConvex(ring)) return ring;
  return sides(ring).reduce<Polygon>((left, { a, b }) => clipByHalfPlane(left, inside(a, b, by)), ring);
};

const inside = (a: Point, b: Point, by: number) => {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [nx, ny] = [(b.y - a.y) / length, -(b.x - a.x) / length];
  return { nx, ny, c: nx * a.x + ny * a.y - by };
};

const clip = (outline: Polygon, room: Polygon): Polygon | undefined => {
  const ring = signedArea(room) < 0 ? room.toReversed() : room;
  if (isConvex(ring)) {
    const left = sides(ring).reduce<Polygon>((part, { a, b }) => clipByHalfPlane(part, inside(a, b, 0)), outline);
    return left.length < 3 ? undefined : left;
  }
  return outline.every((p) => pointInPolygon(p, ring) !== "outside") ? outline : undefined;
};
