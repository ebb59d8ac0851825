import { type Point, pointInPolygon } from "@floorworthy/engine/geometry";
import { boxOf } from "../layout.ts";
import type { PlaceRegion } from "./placing.ts";

/** Positions spread evenly over some regions, each in the middle of its cell; every region has one at least. */
export interface MapGrid {
  readonly spacing: number;
  readonly positions: readonly Point[];
}

/** Narrower spacing than this tells nothing, mm. */
const FINEST = 25;

export const mapPositions = (
  regions: readonly PlaceRegion[],
  { count, spacing }: { readonly count: number; readonly spacing?: number },
): MapGrid => {
  const area = regions.reduce((sum, region) => sum + region.area, 0);
  let step = Math.max(FINEST, spacing ?? Math.sqrt(area / Math.max(1, count)));
  let positions = regions.flatMap((region) => within(region, step));
  while (positions.length > count && spacing === undefined && step < 1e6) {
    step *= 1.05;
    positions = regions.flatMap((region) => within(region, step));
  }
  return { spacing: step, positions: positions.slice(0, count) };
};

const within = (region: PlaceRegion, step: number): Point[] => {
  const { x0, x1, y0, y1 } = boxOf(region.outline);
  const nx = Math.max(1, Math.round((x1 - x0) / step));
  const ny = Math.max(1, Math.round((y1 - y0) / step));
  const cells = Array.from({ length: nx * ny }, (_, i) => ({
    x: x0 + ((x1 - x0) * ((i % nx) + 0.5)) / nx,
    y: y0 + ((y1 - y0) * (Math.floor(i / nx) + 0.5)) / ny,
  }));
  const inside = cells.filter(
    (p) =>
      pointInPolygon(p, region.outline) !== "outside" &&
      region.holes.every((hole) => pointInPolygon(p, hole) !== "inside"),
  );
  return inside.length > 0 ? inside : [region.roomiest.at];
};
