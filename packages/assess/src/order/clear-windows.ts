/** Where no steel may lie, because the anchors are drilled there. */
import type { Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { boxOf } from "../layout.ts";
import { tradeLength } from "./practice.ts";

/** Steel stays this far outside each base plate, mm. */
export const windowMargin = (units: Job["units"]): number => tradeLength("window", units);

/** The base plate, or where it is not known the anchors, with the margin round it. */
export const clearWindow = (base: PlacedBase, units: Job["units"]): Rect => {
  const m = windowMargin(units);
  const places = base.outline.length > 0 ? base.outline : [base.centre, ...base.anchors.map(({ at }) => at)];
  const { x0, y0, x1, y1 } = boxOf(places);
  return { x0: x0 - m, y0: y0 - m, x1: x1 + m, y1: y1 + m };
};

/** Depth down to which the windows are clear of steel, mm: the hole and an inch; undefined: full depth, the hole is not known. */
export const windowDepth = ({ lift, units }: Job): number | undefined => {
  const { holeDepth } = lift.anchors.product;
  return holeDepth.known ? holeDepth.high + tradeLength("belowDrill", units) : undefined;
};
