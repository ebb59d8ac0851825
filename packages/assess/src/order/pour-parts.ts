/**
 * How much concrete the plan holds, part by part. A zone's outline is its full-depth part; sides that slope run outward
 * from its underside up to the slab's, and their concrete is counted with the zone.
 */
import { type Polygon, polygonArea, unionArea } from "@floorworthy/engine/geometry";
import { padVolume } from "@floorworthy/engine/pads";
import { isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job, Zone } from "@floorworthy/job";
import { area, short, volume } from "./amounts.ts";

export interface PourPart {
  readonly name: string;
  readonly kind: Zone["kind"];
  /** undefined for the slab around the pads */
  readonly outline: Polygon | undefined;
  /** mm² */
  readonly area: number;
  /** mm; undefined when not known, and then so is the volume */
  readonly thickness: number | undefined;
  readonly sideSlope: number;
  /** mm³ */
  readonly volume: number | undefined;
  readonly term: Term | undefined;
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

const termOf = (part: Omit<PourPart, "term">, units: Job["units"]): PourPart => ({
  ...part,
  term:
    part.volume === undefined || part.thickness === undefined
      ? undefined
      : volume("V", `concrete of ${part.name}`, part.volume, units, {
          formula: part.sideSlope > 0 ? "∫ A dz, sloped sides" : "A × h",
          from: [
            area("A", "plan area", part.area, units),
            short("h", "thickness", part.thickness, units),
            ...(part.sideSlope > 0
              ? [{ symbol: "run", words: "sides run out per unit down", value: part.sideSlope, unit: "" } as const]
              : []),
          ],
        }),
});

const zonePart = (zone: Zone, before: readonly Zone[], slab: number | undefined, units: Job["units"]): PourPart => {
  const { name, kind, outline, sideSlope } = zone;
  const thickness = zone.thickness.known ? zone.thickness.value : undefined;
  const own = polygonArea(outline);
  // where zones overlap, the deeper one holds the concrete they share
  const others = before.map((z) => z.outline);
  const shared = others.length > 0 ? own + unionArea(others) - unionArea([...others, outline]) : 0;
  const whole = thickness === undefined ? undefined : zoneVolume(outline, thickness, slab ?? thickness, sideSlope);
  return termOf(
    {
      name: name || kind,
      kind,
      outline,
      area: own - shared,
      thickness,
      sideSlope,
      volume: whole === undefined || thickness === undefined ? undefined : whole - shared * thickness,
    },
    units,
  );
};

/** What is to be poured: proposed zones; a topping is no remedy and is not counted. */
export const zonesToPour = (job: Job): readonly Zone[] =>
  job.floor.zones.filter((zone) => zone.state === "proposed" && zone.kind !== "topping" && zone.outline.length > 2);

const depth = (zone: Zone): number => (zone.thickness.known ? zone.thickness.value : 0);

/** The parts of one pour: its zones, and where the floor is new, the slab around them. */
export const pourParts = (job: Job, outline: Polygon | undefined, zones = zonesToPour(job)): readonly PourPart[] => {
  const { thickness, state } = job.floor;
  const slab = thickness.known ? thickness.value : undefined;
  const byDepth = zones.toSorted((a, b) => depth(b) - depth(a));
  const parts = zones.map((zone) => zonePart(zone, byDepth.slice(0, byDepth.indexOf(zone)), slab, job.units));
  if (state !== "to-be-poured" || !outline || outline.length < 3) return parts;
  const rest = polygonArea(outline) - (zones.length > 0 ? unionArea(zones.map((zone) => zone.outline)) : 0);
  if (rest < 1) return parts;
  const around = {
    name: "slab",
    kind: "slab" as const,
    outline: undefined,
    area: rest,
    thickness: slab,
    sideSlope: 0,
    volume: slab === undefined ? undefined : rest * slab,
  };
  return [...parts, termOf(around, job.units)];
};
