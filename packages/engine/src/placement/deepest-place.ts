import { distanceToBoundary, type Point, pointInPolygon } from "../geometry/index.ts";
import type { Region } from "./region.ts";

/** A place and the radius of the largest circle about it that stays inside, mm. */
export interface DeepPlace {
  readonly at: Point;
  readonly room: number;
}

interface Cell extends DeepPlace {
  readonly half: number;
  /** no point of the cell can have more room than this */
  readonly most: number;
}

/**
 * The place of a region that is farthest from its boundary, to `precision` (mm): where a mark that is a little off does no
 * harm. Method: squares over the region, the one with the largest possible room (its centre's, plus half its diagonal)
 * split in four first, until no square can beat the best centre by more than the precision. Undefined of an empty region.
 */
export const deepestPlace = (region: Region, precision = 1): DeepPlace | undefined => {
  const xs = region.outline.map((p) => p.x);
  const ys = region.outline.map((p) => p.y);
  if (xs.length < 3) return undefined;
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const size = Math.max(Math.min(x1 - x0, y1 - y0), Math.max(x1 - x0, y1 - y0) / 64);
  const columns = Math.max(1, Math.ceil((x1 - x0) / size));
  const rows = Math.max(1, Math.ceil((y1 - y0) / size));
  const waiting = Array.from({ length: columns * rows }, (_, i) =>
    cellAt(region, x0 + (i % columns) * size + size / 2, y0 + Math.floor(i / columns) * size + size / 2, size / 2),
  );
  let best: Cell | undefined;
  while (waiting.length > 0) {
    const next = waiting.reduce((a, b, i) => (b.most > waiting[a]!.most ? i : a), 0);
    const [cell] = waiting.splice(next, 1) as [Cell];
    if (!best || cell.room > best.room) best = cell;
    if (cell.most - best.room <= precision) continue;
    const h = cell.half / 2;
    for (const [dx, dy] of QUARTERS) waiting.push(cellAt(region, cell.at.x + dx * h, cell.at.y + dy * h, h));
  }
  return best && { at: best.at, room: best.room };
};

const QUARTERS = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;

const cellAt = (region: Region, x: number, y: number, half: number): Cell => {
  const room = roomAt(region, { x, y });
  return { at: { x, y }, room, half, most: room + half * Math.SQRT2 };
};

const roomAt = ({ outline, holes }: Region, p: Point): number => {
  const away = Math.min(...[outline, ...holes].map((ring) => distanceToBoundary(p, ring)));
  const out = pointInPolygon(p, outline) === "outside" || holes.some((hole) => pointInPolygon(p, hole) === "inside");
  return out ? -away : away;
};
