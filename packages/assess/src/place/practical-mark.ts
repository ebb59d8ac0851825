import { distance, type Point } from "@floorworthy/engine/geometry";
import { blockedBy, type Placement, slackAt, type Zone } from "@floorworthy/engine/placement";
import { practice } from "./practice.ts";

const IN = 25.4;
const STEPS = { "inch-pound": [IN / 2, IN / 4, IN / 8, IN / 16], si: [10, 5, 2, 1] } as const;
/** Marks looked at on either side of the nearest place, along each axis moved. */
const AROUND = 6;

export interface MarkQuestion {
  readonly placement: Placement;
  /** the exact nearest place of the lift's middle, and the wanted one */
  readonly nearest: Point;
  readonly wanted: Point;
  /** from the middle to the left column, whose distances from two walls are marked on the floor */
  readonly toLeft: Point;
  readonly units: "inch-pound" | "si";
  /** zones of the maker's distances: kept with what a tape is off by; common practice may be used up */
  readonly makers: (zone: Zone) => boolean;
}

/**
 * The nearest place whose left column stands on whole half inches (or 10 mm) from the walls along each axis that was
 * moved, a quarter inch inside the maker's distances; then finer marks; undefined where the window holds none.
 */
export const practicalMark = ({
  placement,
  nearest,
  wanted,
  toLeft,
  units,
  makers,
}: MarkQuestion): Point | undefined => {
  for (const step of STEPS[units]) {
    const xs = marks(nearest.x, wanted.x, toLeft.x, step);
    const ys = marks(nearest.y, wanted.y, toLeft.y, step);
    const free = xs
      .flatMap((x) => ys.map((y) => ({ x, y })))
      .filter(
        (p) => blockedBy(placement, p).length === 0 && slackAt(placement, p, makers) >= practice.settingOut - 0.01,
      )
      .sort((p, q) => distance(p, wanted) - distance(q, wanted));
    if (free[0]) return free[0];
  }
  return undefined;
};

/** Whole steps of the left column's coordinate around the nearest place; the wanted coordinate where it did not move. */
const marks = (nearest: number, wanted: number, toLeft: number, step: number): number[] => {
  if (Math.abs(nearest - wanted) < 0.05) return [wanted];
  const first = Math.round((nearest + toLeft) / step);
  return Array.from({ length: 2 * AROUND + 1 }, (_, i) => (first + i - AROUND) * step - toLeft);
};
