import { type Point, type Polygon, pointInPolygon, sides } from "../geometry/index.ts";
import { type Block, blockedBy } from "./blocked-by.ts";
import type { Placement } from "./feasible-positions.ts";
import type { Region } from "./region.ts";

/** How far the lift may go from a place both ways along a direction, and what ends it there. */
export interface PlaceWindow {
  /** mm along the direction, from ≤ 0 ≤ to */
  readonly from: number;
  readonly to: number;
  readonly heldBackBy: readonly Block[];
  readonly heldOnBy: readonly Block[];
}

/** Beyond the window's end by more than the rounding of corners, mm. */
const BEYOND = 0.5;
const SAME = 0.02;

/** The window along `direction` (a unit vector) through a feasible place; undefined where the lift may not stand at `p`. */
export const windowThrough = (placement: Placement, p: Point, direction: Point): PlaceWindow | undefined => {
  const spans = placement.regions.flatMap((region) => spansOf(region, p, direction));
  const own = spans
    .filter(([from, to]) => from <= SAME && to >= -SAME)
    .reduce<readonly [number, number] | undefined>((a, b) => (a && a[1] - a[0] >= b[1] - b[0] ? a : b), undefined);
  if (!own) return undefined;
  const [from, to] = [Math.min(own[0], 0), Math.max(own[1], 0)];
  const at = (t: number): Point => ({ x: p.x + t * direction.x, y: p.y + t * direction.y });
  return {
    from,
    to,
    heldBackBy: blockedBy(placement, at(from - BEYOND)),
    heldOnBy: blockedBy(placement, at(to + BEYOND)),
  };
};

/** Stretches of a line inside a region, as parameters along it. */
const spansOf = (region: Region, p: Point, d: Point): (readonly [number, number])[] => {
  const cuts = [region.outline, ...region.holes].flatMap((ring) => crossings(ring, p, d)).sort((a, b) => a - b);
  const spans: [number, number][] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [a, b] = [cuts[i]!, cuts[i + 1]!];
    if (b - a < 1e-9) continue;
    const t = (a + b) / 2;
    if (!inside(region, { x: p.x + t * d.x, y: p.y + t * d.y })) continue;
    const last = spans.at(-1);
    if (last && a - last[1] < SAME) last[1] = b;
    else spans.push([a, b]);
  }
  return spans;
};

const inside = ({ outline, holes }: Region, p: Point): boolean =>
  pointInPolygon(p, outline) !== "outside" && holes.every((hole) => pointInPolygon(p, hole) !== "inside");

/** Where the line meets the sides; of a side along the line, both its ends. */
const crossings = (ring: Polygon, p: Point, d: Point): number[] =>
  sides(ring).flatMap(({ a, b }) => {
    const off = (q: Point): number => d.x * (q.y - p.y) - d.y * (q.x - p.x);
    const along = (q: Point): number => d.x * (q.x - p.x) + d.y * (q.y - p.y);
    const [oa, ob] = [off(a), off(b)];
    if (Math.abs(oa) < 1e-6 && Math.abs(ob) < 1e-6) return [along(a), along(b)];
    if (oa > 0 === ob > 0 && Math.abs(oa) >= 1e-6 && Math.abs(ob) >= 1e-6) return [];
    const t = oa / (oa - ob);
    return t < -1e-9 || t > 1 + 1e-9 ? [] : [along(a) + t * (along(b) - along(a))];
  });
