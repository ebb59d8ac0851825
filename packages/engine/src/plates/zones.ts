import type { Point } from "../geometry/index.ts";
import type { Floor } from "./floor.ts";

/** Thickness of the floor at a point, mm; the later zone wins, a zone's boundary belongs to it. */
export const thicknessAt = (floor: Floor, { x, y }: Point): number =>
  floor.zones.findLast(({ rect: r }) => x >= r.x0 && x <= r.x1 && y >= r.y0 && y <= r.y1)?.thickness ?? floor.thickness;
