/**
 * How much concrete the plan holds, by geometry. A zone's outline is its full-depth part; sides that slope run outward
 * from its underside up to the slab's. V = A t + ∫0..d (U s z + c s² z²) dz, with U the outline's length, s the run per
 * unit of depth, d the extra depth and c = Σ tan(θ/2) over the outside corner angles θ (mitred corners; convex outlines).
 */
import type { Assessment } from "@floorworthy/assess";
import { type Polygon, polygonArea, unionArea } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { slabThickness } from "../section/cut.ts";

export interface ConcreteQuantity {
  readonly name: string;
  readonly outline: Polygon | undefined;
  /** mm² */
  readonly area: number;
  /** mm; undefined when not known, and then so is the volume */
  readonly thickness: number | undefined;
  readonly sideSlope: number;
  /** mm³ */
  readonly volume: number | undefined;
}

export interface PourQuantity {
  readonly parts: readonly ConcreteQuantity[];
  /** mm³; undefined when a part's is */
  readonly net: number | undefined;
  /** as a fraction of the net volume */
  readonly waste: number;
  readonly wasteBasis: "stated" | "common practice";
  /** net and waste, mm³ */
  readonly gross: number | undefined;
}

const cornerFactor = (outline: Polygon): number =>
  outline.reduce((sum, p, i) => {
    const a = outline[(i + outline.length - 1) % outline.length]!;
    const b = outline[(i + 1) % outline.length]!;
    const turn = Math.atan2(
      (p.x - a.x) * (b.y - p.y) - (p.y - a.y) * (b.x - p.x),
      (p.x - a.x) * (b.x - p.x) + (p.y - a.y) * (b.y - p.y),
    );
    return sum + Math.tan(Math.abs(turn) / 2);
  }, 0);

const lengthOf = (outline: Polygon): number =>
  outline.reduce((sum, p, i) => {
    const q = outline[(i + 1) % outline.length]!;
    return sum + Math.hypot(q.x - p.x, q.y - p.y);
  }, 0);

/** Volume of the sloping sides alone, mm³. */
export const slopeVolume = (outline: Polygon, slope: number, extra: number): number =>
  slope > 0 && extra > 0
    ? (lengthOf(outline) * slope * extra ** 2) / 2 + (cornerFactor(outline) * slope ** 2 * extra ** 3) / 3
    : 0;

const WASTE = 0.07;

/** The concrete of one pour: proposed pads and, where the floor is new, the slab around them. */
export const concreteQuantities = (job: Job, { layout }: Assessment): PourQuantity => {
  const slab = slabThickness(job);
  const zones = layout.zones.filter(
    (zone) => zone.state === "proposed" && zone.kind !== "slab" && zone.outline.length > 2,
  );
  const pads = zones.map(({ name, outline, thickness }): ConcreteQuantity => {
    const sideSlope = job.floor.zones.find((zone) => zone.name === name)?.sideSlope ?? 0;
    const area = polygonArea(outline);
    const extra = thickness !== undefined && slab !== undefined ? thickness - slab : 0;
    const volume = thickness === undefined ? undefined : area * thickness + slopeVolume(outline, sideSlope, extra);
    return { name, outline, area, thickness, sideSlope, volume };
  });
  const bay = layout.outline ?? job.bay.outline;
  const parts = [...pads];
  if (job.floor.state === "to-be-poured" && bay) {
    const area = Math.max(0, polygonArea(bay) - (zones.length ? unionArea(zones.map((zone) => zone.outline)) : 0));
    parts.push({
      name: "slab",
      outline: undefined,
      area,
      thickness: slab,
      sideSlope: 0,
      volume: slab === undefined ? undefined : area * slab,
    });
  }
  const known = parts.every((part) => part.volume !== undefined) && parts.length > 0;
  const net = known ? parts.reduce((sum, part) => sum + (part.volume ?? 0), 0) : undefined;
  const stated = job.pour?.waste;
  const waste = stated?.known ? stated.value : WASTE;
  return {
    parts,
    net,
    waste,
    wasteBasis: stated?.known ? "stated" : "common practice",
    gross: net === undefined ? undefined : net * (1 + waste),
  };
};
