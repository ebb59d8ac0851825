import type { Point, Polygon } from "@floorworthy/engine/geometry";
import { assumed } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { drillPractice } from "./practice.ts";

/** One corner of a base plate, with the two directions that lead away from the plate there. */
export interface Corner {
  readonly at: Point;
  /** in words, by the plan: "back left corner" */
  readonly words: string;
  /** unit vectors along the lift's axes, away from the plate */
  readonly outX: Point;
  readonly outY: Point;
  /** unit vector from the plate's middle through the corner */
  readonly diagonal: Point;
  /** half the plate's sides along outX and outY, mm */
  readonly halfX: number;
  readonly halfY: number;
}

/** The plate, or where it is not known one around the anchors, or one of the usual size. */
export const plateOf = ({ outline, anchors, centre }: PlacedBase): Polygon => {
  if (outline.length > 2) return outline;
  return anchors.length > 2 ? anchors.map(({ at }) => at) : standInPlate(centre);
};

/** A stand-in plate around a column whose plate is not known, mm in the plan. */
const standInPlate = ({ x, y }: Point): Polygon => {
  const half = assumed(drillPractice.basePlate).value / 2;
  return [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ];
};

const signs = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
] as const;

/** The four corners of a base, clockwise in the plan from the back left one. @param turn - of the lift in the plan, rad */
export const cornersOf = (base: PlacedBase, turn: number): readonly Corner[] => {
  const plate = plateOf(base);
  const [ex, ey] = [
    { x: Math.cos(turn), y: Math.sin(turn) },
    { x: -Math.sin(turn), y: Math.cos(turn) },
  ];
  const along = (p: Point, e: Point): number => (p.x - base.centre.x) * e.x + (p.y - base.centre.y) * e.y;
  return signs.map(([sx, sy]) => {
    const at = plate.reduce((best, p) =>
      sx * along(p, ex) + sy * along(p, ey) > sx * along(best, ex) + sy * along(best, ey) ? p : best,
    );
    const [a, b] = [along(at, ex), along(at, ey)];
    const size = Math.hypot(a, b);
    const unit = size > 0 ? { x: a / size, y: b / size } : { x: sx * Math.SQRT1_2, y: sy * Math.SQRT1_2 };
    return {
      at,
      words: `${sy < 0 ? "back" : "front"} ${sx < 0 ? "left" : "right"} corner`,
      outX: { x: sx * ex.x, y: sx * ex.y },
      outY: { x: sy * ey.x, y: sy * ey.y },
      diagonal: { x: unit.x * ex.x + unit.y * ey.x, y: unit.x * ex.y + unit.y * ey.y },
      halfX: Math.abs(a),
      halfY: Math.abs(b),
    };
  });
};
