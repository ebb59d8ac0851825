import { distanceToBoundary, type Point, type Polygon, pointInPolygon } from "../geometry/index.ts";
import type { Placement } from "./feasible-positions.ts";
import { STEPS_PER_MM, toGrid } from "./fine-grid.ts";
import type { Part } from "./lift-footprint.ts";
import type { Zone } from "./zone.ts";

/** One distance that is not kept. */
export interface Block {
  readonly id: string;
  readonly name: string;
  readonly part: Part;
  /** asked for, mm */
  readonly clear: number;
  /** there is, mm; negative: the least move apart of two that overlap */
  readonly distance: number;
}

/** Distances are compared to this, mm: a little more than the grid's rounding. */
const SAME = 0.002;

/**
 * Everything that keeps the lift from standing at `p`, the walls first when a part is beyond them, then nearest miss last;
 * none where it may stand. True distances, without the safe side of the regions, so a lift that stands exactly at its limit
 * is not blocked. Beyond a wall, the distance of an anchor to it is still counted positive.
 */
export const blockedBy = ({ zones, inside }: Placement, p: Point): readonly Block[] => {
  const at = toGrid(p);
  const blocks = zones
    .map(({ sums, ...zone }): Block => ({ ...zone, distance: distanceTo(sums, at) / STEPS_PER_MM }))
    .filter(({ clear, distance }) => distance < clear - SAME)
    .sort((a, b) => b.clear - b.distance - (a.clear - a.distance));
  const out = Math.min(...inside.map((piece) => signedDistance([piece], at))) / STEPS_PER_MM;
  return out > SAME
    ? [{ id: "room", name: "the walls", part: "body", clear: 0, distance: inside.length > 0 ? -out : 0 }, ...blocks]
    : blocks;
};

export const distanceTo = (sums: Zone["sums"], at: Point): number =>
  Math.min(...sums.map(({ rings }) => signedDistance(rings, at)));

/** Distance to an area given by rings (even-odd), negative inside: to the nearest outline. Rings may be points or lines. */
const signedDistance = (rings: readonly Polygon[], at: Point): number => {
  const away = Math.min(...rings.map((ring) => distanceToBoundary(at, ring)));
  const within = rings.filter((ring) => ring.length >= 3 && pointInPolygon(at, ring) === "inside").length;
  return within % 2 === 1 ? -away : away;
};
