import { distance, distanceToBoundary, type Point, pointInPolygon, polygonCentroid } from "../geometry/index.ts";
import type { Region } from "./region.ts";

/** A place and the radius of the largest circle about it that stays inside, mm. */
export interface DeepPlace {
  readonly at: Point;
  readonly room: number;
}

interface Cell extends DeepPlace {
  readonly half: number;
  /** room, less a little for every mm away from where it is wanted */
  readonly worth: number;
  /** no point of the cell can be worth more than this */
  readonly most: number;
}

/** What a mm away from the wanted place takes off a mm of room: of places with equal room the nearest is found. */
const FAR = 0.02;

/**
 * The place of a region that is farthest from its boundary, to `precision` (mm): where a mark that is a little off does no
 * harm. Method: squares over the region, split in four as long as one can beat the best centre by more than the precision (the
 * room at its centre plus half its diagonal is the most that it can hold). Of places with nearly the same room (2 cm per m of distance) the one nearest to `near`, the centroid unless given. Undefined of an empty region.
 */
export const deepestPlace = (
  region: Region,
  precision = 1,
  near: Point = polygonCentroid(region.outline),
): DeepPlace | undefined => {
  const xs = region.outline.map((p) => p.x);
  const ys = region.outline.map((p) => p.y);
  if (xs.length < 3) return undefined;
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const size = Math.max(Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0) / 64);
  const columns = Math.max(1, Math.ceil((x1 - x0) / size));
  const rows = Math.max(1, Math.ceil((y1 - y0) / size));
  let cells: readonly Cell[] = Array.from({ length: columns * rows }, (_, i) =>
    cellAt(
      region,
      near,
      x0 + (i % columns) * size + size / 2,
      y0 + Math.floor(i / columns) * size + size / 2,
      size / 2,
    ),
  );
  let best = cells[0]!;
  while (cells.length > 0) {
    best = cells.reduce((a, b) => (b.worth > a.worth ? b : a), best);
    const { worth } = best;
    cells = cells
      .filter(({ most }) => most - worth > precision)
      .flatMap(({ at, half }) =>
        QUARTERS.map(([dx, dy]) => cellAt(region, near, at.x + (dx * half) / 2, at.y + (dy * half) / 2, half / 2)),
      );
  }
  return { at: best.at, room: best.room };
};

const QUARTERS = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;

const cellAt = (region: Region, near: Point, x: number, y: number, half: number): Cell => {
  const at = { x, y };
  const room = roomAt(region, at);
  const worth = room - FAR * distance(at, near);
  return { at, room, half, worth, most: worth + half * Math.SQRT2 * (1 + FAR) };
};

const roomAt = ({ outline, holes }: Region, p: Point): number => {
  const away = Math.min(...[outline, ...holes].map((ring) => distanceToBoundary(p, ring)));
  const out = pointInPolygon(p, outline) === "outside" || holes.some((hole) => pointInPolygon(p, hole) === "inside");
  return out ? -away : away;
};
