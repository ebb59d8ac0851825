import { distance, distanceToBoundary, type Point, pointInPolygon } from "../geometry/index.ts";
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
const FAR = 0.01;

/**
 * The place of a region that is farthest from its boundary, to `precision` (mm): where a mark that is a little off does no
 * harm. Method: squares over the region, the one with the largest possible room (its centre's, plus half its diagonal)
 * split in four first, until no square can beat the best centre by more than the precision. Of places with (nearly) the same
 * room, the one nearest to `near`. Undefined of an empty region.
 */
export const deepestPlace = (region: Region, precision = 1, near?: Point): DeepPlace | undefined => {
  const xs = region.outline.map((p) => p.x);
  const ys = region.outline.map((p) => p.y);
  if (xs.length < 3) return undefined;
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const size = Math.max(Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0) / 64);
  const columns = Math.max(1, Math.ceil((x1 - x0) / size));
  const rows = Math.max(1, Math.ceil((y1 - y0) / size));
  const waiting = Array.from({ length: columns * rows }, (_, i) =>
    cellAt(
      region,
      near,
      x0 + (i % columns) * size + size / 2,
      y0 + Math.floor(i / columns) * size + size / 2,
      size / 2,
    ),
  );
  let best: Cell | undefined;
  while (waiting.length > 0) {
    const next = waiting.reduce((a, b, i) => (b.most > waiting[a]!.most ? i : a), 0);
    const [cell] = waiting.splice(next, 1) as [Cell];
    if (!best || cell.worth > best.worth) best = cell;
    if (cell.most - best.worth <= precision) continue;
    const h = cell.half / 2;
    for (const [dx, dy] of QUARTERS) waiting.push(cellAt(region, near, cell.at.x + dx * h, cell.at.y + dy * h, h));
  }
  return best && { at: best.at, room: best.room };
};

const QUARTERS = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;

const cellAt = (region: Region, near: Point | undefined, x: number, y: number, half: number): Cell => {
  const at = { x, y };
  const room = roomAt(region, at);
  const worth = room - (near ? FAR * distance(at, near) : 0);
  return { at, room, half, worth, most: worth + half * Math.SQRT2 * (1 + FAR) };
};

const roomAt = ({ outline, holes }: Region, p: Point): number => {
  const away = Math.min(...[outline, ...holes].map((ring) => distanceToBoundary(p, ring)));
  const out = pointInPolygon(p, outline) === "outside" || holes.some((hole) => pointInPolygon(p, hole) === "inside");
  return out ? -away : away;
};
