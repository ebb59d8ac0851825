import { type Point, pointInPolygon } from "@floorworthy/engine/geometry";
import type { Job, Zone } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { placedBases } from "../layout.ts";

/** Depth a full hole has, mm: the sheet's hole depth, else the nominal embedment; undefined when neither is known. */
export const holeDepthOf = ({ lift }: Job): { readonly depth: number; readonly by: string } | undefined => {
  const { holeDepth, nominalEmbedment } = lift.anchors.product;
  if (holeDepth.known) return { depth: holeDepth.value, by: "depth of the hole on the anchor's sheet" };
  return nominalEmbedment.known
    ? { depth: nominalEmbedment.value, by: "nominal embedment; the sheet's hole depth is not known" }
    : undefined;
};

export const baseOf = (job: Job, hole: string): PlacedBase | undefined =>
  placedBases(job).find((base) => base.anchors.some(({ id }) => id === hole));

export const placeOf = (job: Job, hole: string): Point | undefined =>
  baseOf(job, hole)?.anchors.find(({ id }) => id === hole)?.at;

/** The most the concrete may be thick at a hole, mm. */
export const thicknessAt = (job: Job, hole: string): number | undefined => {
  const side = baseOf(job, hole)?.side;
  return factsOf(job).thickness.find((t) => t.side === side)?.best;
};

/** The pad, strip or footing that a hole is in. */
export const zonesAt = (job: Job, hole: string): readonly Zone[] => {
  const at = placeOf(job, hole);
  return at ? job.floor.zones.filter((zone) => pointInPolygon(at, zone.outline) !== "outside") : [];
};

export const padUnder = (job: Job, hole: string): Zone | undefined => {
  const base = baseOf(job, hole);
  return base && zoneUnder(job, base);
};
