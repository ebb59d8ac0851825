import { distance, type Point } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/workings.ts";
import { blockedBy } from "./blocked-by.ts";
import { closedWindows } from "./closed-windows.ts";
import type { Placement } from "./feasible-positions.ts";
import type { Turn } from "./lift-footprint.ts";
import { nearestOf, nearestPlace } from "./nearest-place.ts";

/** From where the lift was wanted to the nearest place where it may stand; mm. */
export interface Move {
  readonly turn: Turn;
  readonly to: Point;
  readonly dx: number;
  readonly dy: number;
  readonly distance: number;
}

/**
 * The shortest move from the wanted position, over all the ways the lift may stand; of equals, the way named first. It is
 * at most the regions' tolerance longer than it need be. Unable when there is no feasible position, with what stops the nearest ones.
 */
export const smallestMove = (wanted: Point, placements: readonly Placement[]): Move | Unable => {
  const moves = placements.flatMap((placement): Move[] => {
    const to = nearest(wanted, placement);
    if (!to) return [];
    return [{ turn: placement.turn, to, dx: to.x - wanted.x, dy: to.y - wanted.y, distance: distance(to, wanted) }];
  });
  if (moves.length > 0) return moves.reduce((best, move) => (move.distance < best.distance ? move : best));
  return unable("placement", `the lift fits nowhere in this bay: ${stops(wanted, placements)}`);
};

const nearest = (wanted: Point, placement: Placement): Point | undefined =>
  blockedBy(placement, wanted).length === 0
    ? wanted
    : nearestOf(
        wanted,
        placement.regions.map((region) => nearestPlace(wanted, region)),
      );

const stops = (wanted: Point, placements: readonly Placement[]): string => {
  const found = placements.flatMap((placement) => [
    ...blockedBy(placement, wanted),
    ...closedWindows(wanted, placement).flatMap(({ blocks }) => blocks),
  ]);
  const names = [...new Set(found.map(({ name }) => name))];
  return names.length > 0 ? names.join(", ") : "it is larger than the bay";
};
