import { distance, type Point, type Polygon, polygonArea } from "../geometry/index.ts";
import { type Block, blockedBy } from "./blocked-by.ts";
import { type Placement, regionFromGrid } from "./feasible-positions.ts";
import { polygonToGrid, STEPS_PER_MM } from "./fine-grid.ts";
import { nearestPlace } from "./nearest-place.ts";
import { overlap, type Region, takeOut } from "./region.ts";
import { zonePolygons } from "./zone.ts";

/** A way round what is in the way that does not help. */
export interface ClosedWindow {
  /** the window's place nearest to the wanted one, mm */
  readonly at: Point;
  readonly distance: number;
  /** what keeps the lift from standing there */
  readonly blocks: readonly Block[];
}

/** Windows of less area than this are slits between zones, mm². */
const SLIT = 1;

/**
 * What closes the other windows. Take only what is in the way at the wanted position out of the room: each piece that is
 * left is a way round it. Those in which the lift may stand nowhere are named here with what stops it at their nearest point.
 * Nearest first; none where the lift may stand as wanted.
 */
export const closedWindows = (wanted: Point, placement: Placement): readonly ClosedWindow[] => {
  const { zones, inside, tolerance, regions } = placement;
  const blocks = blockedBy(placement, wanted);
  if (blocks.length === 0) return [];
  const inTheWay = new Set(blocks.map(({ id, part }) => `${part} ${id}`));
  const out = zones.filter(({ id, part }) => inTheWay.has(`${part} ${id}`)).flatMap((z) => zonePolygons(z, tolerance));
  const feasible = regions.flatMap(rings).map(polygonToGrid);
  return takeOut(inside, out)
    .filter((piece) => polygonArea(piece.outline) > SLIT * STEPS_PER_MM ** 2 && !overlap(rings(piece), feasible))
    .map((piece) => {
      const at = nearestPlace(wanted, regionFromGrid(piece));
      return { at, distance: distance(at, wanted), blocks: blockedBy(placement, at) };
    })
    .filter((window) => window.blocks.length > 0)
    .sort((a, b) => a.distance - b.distance);
};

const rings = ({ outline, holes }: Region): readonly Polygon[] => [outline, ...holes];
