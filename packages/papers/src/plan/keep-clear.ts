import type { PlacedBase } from "@floorworthy/assess";
import { clearWindow } from "@floorworthy/assess/order";
import type { Polygon } from "@floorworthy/engine/geometry";
import type { Lift } from "@floorworthy/job";
import { boundsOf } from "../drawing/hatch.ts";
import type { UnitSystem } from "../print/measure.ts";

/** How far a joint must stay from an anchor, mm, and who says so. */
export const jointDistance = ({ asks }: Lift, units: UnitSystem): { distance: number; by: string } => {
  if (asks.joint.known) return { distance: asks.joint.value, by: "the maker's page" };
  if (asks.edge.known) return { distance: asks.edge.value, by: "the maker's page, as for an edge" };
  return { distance: units === "si" ? 300 : 304.8, by: "common practice" };
};

export const windowOf = clearWindow;

/** The outline within which no joint may pass: the anchors' rectangle grown by the distance, with round corners. */
export const keepClearOutline = (base: PlacedBase, distance: number): Polygon => {
  const places = base.anchors.length ? base.anchors.map((anchor) => anchor.at) : base.outline;
  const { x0, y0, x1, y1 } = boundsOf(places);
  const steps = 8;
  const arc = (cx: number, cy: number, start: number) =>
    Array.from({ length: steps + 1 }, (_, i) => {
      const angle = start + (Math.PI / 2) * (i / steps);
      return { x: cx + distance * Math.cos(angle), y: cy + distance * Math.sin(angle) };
    });
  return [...arc(x1, y1, 0), ...arc(x0, y1, Math.PI / 2), ...arc(x0, y0, Math.PI), ...arc(x1, y0, 1.5 * Math.PI)];
};
