import { type Point, type Polygon, pointInPolygon, type Rect } from "@floorworthy/engine/geometry";
import { relativeStiffness, unboundedOutline } from "@floorworthy/engine/plates";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { boxOf } from "../layout.ts";

/** One piece of concrete that works by itself, and the bases that stand on it. */
export interface Panel {
  readonly rect: Rect;
  readonly thickness: number;
  readonly bases: readonly PlacedBase[];
  readonly name: string;
  /** a pad that is not cast with the slab: nothing around it helps */
  readonly alone: "alone" | "in-slab";
}

const REACH = 6;

/** Pads and strips that are not cast with the slab stand alone; the rest of the bases share the slab. */
export const panelsOf = (
  job: Job,
  bases: readonly PlacedBase[],
  thickness: readonly number[],
  E: number,
  k: number,
): Panel[] => {
  const panels: Panel[] = [];
  const inSlab: number[] = [];
  bases.forEach((base, i) => {
    const zone = zoneUnder(job, base);
    const alone = zone && zone.kind !== "slab" && zone.tied.known && zone.tied.value !== "cast-with";
    if (!zone || !alone) {
      inSlab.push(i);
      return;
    }
    const same = panels.findIndex((p) => p.name === zone.name);
    if (same >= 0) panels[same] = { ...panels[same]!, bases: [...panels[same]!.bases, base] };
    else
      panels.push({
        rect: insideRect(zone.outline, [base]) ?? boxOf(zone.outline),
        thickness: thickness[i]!,
        bases: [base],
        name: zone.name,
        alone: "alone",
      });
  });
  for (const near of neighbours(job, bases, inSlab, thickness, E, k))
    panels.push(
      slabPanel(
        job,
        near.map((i) => bases[i]!),
        near.map((i) => thickness[i]!),
        E,
        k,
      ),
    );
  return panels;
};

/** Beyond this many l a support no longer bends the slab under another (interior: less than 2 % of its moment). */
const APART = 3;

/** Two columns share one panel; of many supports, those that stand near each other do. */
const neighbours = (
  { lift }: Job,
  bases: readonly PlacedBase[],
  indices: readonly number[],
  thickness: readonly number[],
  E: number,
  k: number,
): number[][] => {
  if (indices.length === 0) return [];
  if (lift.kind === "two-post") return [[...indices]];
  const reach = APART * relativeStiffness(E, 0.15, Math.max(...thickness), k);
  const near = (i: number, j: number): boolean =>
    Math.hypot(bases[i]!.centre.x - bases[j]!.centre.x, bases[i]!.centre.y - bases[j]!.centre.y) < reach;
  const groups: number[][] = [];
  for (const i of indices) {
    const joined = groups.filter((group) => group.some((j) => near(i, j)));
    for (const group of joined) groups.splice(groups.indexOf(group), 1);
    groups.push([...joined.flat(), i]);
  }
  return groups;
};

const slabPanel = (
  job: Job,
  bases: readonly PlacedBase[],
  thickness: readonly number[],
  E: number,
  k: number,
): Panel => {
  const cast = bases.some((base) => zoneUnder(job, base) && zoneUnder(job, base)!.kind !== "slab");
  const h = cast && job.floor.thickness.known ? job.floor.thickness.low : Math.min(...thickness);
  const corners = bases.flatMap((base) => [...base.outline]);
  const far = unboundedOutline(corners, relativeStiffness(E, 0.15, Math.max(...thickness), k), REACH);
  const slab = job.bay.outline ? insideRect(job.bay.outline, bases) : undefined;
  return { rect: slab ? overlap(slab, far) : far, thickness: h, bases, name: "slab", alone: "in-slab" };
};

const overlap = (a: Rect, b: Rect): Rect => ({
  x0: Math.max(a.x0, b.x0),
  y0: Math.max(a.y0, b.y0),
  x1: Math.min(a.x1, b.x1),
  y1: Math.min(a.y1, b.y1),
});

/** The largest axis-parallel rectangle inside a polygon that holds all the bases: less concrete than there is, never more. */
export const insideRect = (polygon: Polygon, bases: readonly PlacedBase[]): Rect | undefined => {
  const xs = [...new Set(polygon.map((p) => p.x))].toSorted((a, b) => a - b);
  const ys = [...new Set(polygon.map((p) => p.y))].toSorted((a, b) => a - b);
  const need = boxOf(bases.flatMap((base) => [...base.outline, base.centre]));
  let best: Rect | undefined;
  for (const x0 of xs)
    for (const x1 of xs)
      for (const y0 of ys)
        for (const y1 of ys) {
          if (x0 > need.x0 || x1 < need.x1 || y0 > need.y0 || y1 < need.y1) continue;
          const rect = { x0, y0, x1, y1 };
          if (area(rect) > area(best) && isInside(rect, polygon)) best = rect;
        }
  return best;
};

const area = (rect: Rect | undefined): number => (rect ? (rect.x1 - rect.x0) * (rect.y1 - rect.y0) : 0);

const isInside = (rect: Rect, polygon: Polygon): boolean => {
  const n = 24;
  for (let i = 0; i <= n; i++)
    for (let j = 0; j <= n; j++) {
      const inner = (a: number, b: number, t: number): number => a + (b - a) * (0.001 + (0.998 * t) / n);
      const p: Point = { x: inner(rect.x0, rect.x1, i), y: inner(rect.y0, rect.y1, j) };
      if (pointInPolygon(p, polygon) === "outside") return false;
    }
  return true;
};
