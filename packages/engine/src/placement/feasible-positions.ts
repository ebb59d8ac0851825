import type { Polygon } from "../geometry/index.ts";
import type { Unable } from "../quantities/workings.ts";
import { fromGrid } from "./fine-grid.ts";
import { inputFault } from "./input-fault.ts";
import { insideRoom } from "./inside-room.ts";
import { type LiftFootprint, type Turn, turnedShapes } from "./lift-footprint.ts";
import type { Obstacle, Room } from "./obstacle.ts";
import { type Region, takeOut } from "./region.ts";
import { obstacleZones, wallZones, type Zone, zonePolygons } from "./zone.ts";

/** Where a lift that stands one way may have its origin. */
export interface Placement {
  readonly turn: Turn;
  /** all feasible positions, mm; none when there are none. Play of less than 0.01 mm counts as none. */
  readonly regions: readonly Region[];
  /** what the regions were made of, on the grid: origins inside the walls at all, and what is taken out of them */
  readonly inside: readonly Polygon[];
  readonly zones: readonly Zone[];
  /** mm, see `feasiblePositions` */
  readonly tolerance: number;
}

/** How much more than its clearance a corner of an obstacle may be given, mm: far below any tape. */
const ROUNDING = 0.1;

/**
 * All positions of a lift's origin, for each way it may stand, that keep every part at its distances and inside the room.
 *
 * Method: inside minus ∪ (obstacle ⊕ (−part) ⊕ disc of the clearance), exact but for rounds, which are drawn `tolerance` (mm)
 * too large at most and never too small, and a growth of 0.003 mm against the 0.001 mm grid: what is called feasible is.
 * Fails: Unable when a shape has no area, a number is none, or a clearance is negative.
 * Cost: bench/placement.ts.
 */
export const feasiblePositions = (
  footprint: LiftFootprint,
  room: Room,
  obstacles: readonly Obstacle[],
  turns: readonly Turn[],
  tolerance = ROUNDING,
): readonly Placement[] | Unable =>
  inputFault(footprint, room, obstacles, turns, tolerance) ??
  turns.map((turn) => {
    const shapes = turnedShapes(footprint, turn);
    const inside = insideRoom(room, shapes);
    const zones = [...wallZones(room, shapes), ...obstacleZones(obstacles, shapes)];
    const left = takeOut(
      inside,
      zones.flatMap((zone) => zonePolygons(zone, tolerance)),
    );
    return { turn, regions: left.map(regionFromGrid), inside, zones, tolerance };
  });

export const regionFromGrid = ({ outline, holes }: Region): Region => ({
  outline: outline.map(fromGrid),
  holes: holes.map((hole) => hole.map(fromGrid)),
});
