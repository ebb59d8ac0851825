import type { Point } from "../geometry/index.ts";
import { distanceTo } from "./blocked-by.ts";
import type { Placement } from "./feasible-positions.ts";
import { STEPS_PER_MM, toGrid } from "./fine-grid.ts";
import type { Zone } from "./zone.ts";

/**
 * How much more than its clearance every part has at `p`, mm: the least of (distance − clearance) over the zones asked for;
 * negative where one is not kept, +∞ where there is none.
 */
export const slackAt = ({ zones }: Placement, p: Point, among: (zone: Zone) => boolean = () => true): number => {
  const at = toGrid(p);
  return Math.min(
    ...zones.filter(among).map(({ sums, clear }) => distanceTo(sums, at) / STEPS_PER_MM - clear),
    Number.POSITIVE_INFINITY,
  );
};
