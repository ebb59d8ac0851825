/**
 * How much concrete the plan holds. A zone's outline is its full-depth part; sides that slope run outward from its
 * underside up to the slab's, and their concrete is counted with the zone.
 */
import type { Assessment } from "@floorworthy/assess";
import { type Polygon, polygonArea, unionArea } from "@floorworthy/engine/geometry";
import { padVolume } from "@floorworthy/engine/pads";
import { isUnable } from "@floorworthy/engine/quantities";
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

/** Concrete of one zone: its plan at the slab's thickness, and what the pad adds below, mm³. */
const zoneVolume = (outline: Polygon, thickness: number, slab: number, run: number): number | undefined => {
  const pad = padVolume({
    plan: { shape: "outline", outline },
    thickness,
    slab: Math.min(slab, thickness),
    sides: run > 0 ? { kind: "sloped", run, corner: "mitred" } : { kind: "vertical" },
  });
  return isUnable(pad) ? undefined : pad.net.value + Math.min(slab, thickness) * pad.area.value;
};

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
    const volume = thickness === undefined ? undefined : zoneVolume(outline, thickness, slab ?? thickness, sideSlope);
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
