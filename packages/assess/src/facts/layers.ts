import { pointInPolygon } from "@floorworthy/engine/geometry";
import type { Job, ThicknessReading } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";

/** How much of a reading is a layer on the slab, mm; or that there is one and nobody knows how thick. */
export type LayerOver =
  | { readonly kind: "none" }
  | { readonly kind: "known"; readonly thickness: number; readonly words: string }
  | { readonly kind: "unknown"; readonly words: string };

const layerWords = {
  "bonded-topping": "topping",
  "loose-topping": "loose topping",
  screed: "screed",
  tile: "tile",
} as const;

/**
 * A topping, screed or tile is not the slab: anchors must hold in the concrete that carries, so it does not count, bonded
 * or not. Known from the reading itself, or from a topping drawn on the plan.
 */
export const layerOver = (job: Job, reading: ThicknessReading, base: PlacedBase | undefined): LayerOver => {
  const { layer, zones } = job.floor;
  const words = layer.known && layer.value !== "none" ? layerWords[layer.value] : "layer";
  if (reading.layer?.known) return { kind: "known", thickness: reading.layer.high, words };
  const at = reading.at ?? base?.centre;
  const drawn = zones.findLast(
    (zone) =>
      zone.kind === "topping" &&
      zone.state === "standing" &&
      at !== undefined &&
      pointInPolygon(at, zone.outline) !== "outside",
  );
  if (drawn)
    return drawn.thickness.known
      ? { kind: "known", thickness: drawn.thickness.high, words: drawn.name }
      : { kind: "unknown", words: drawn.name };
  return layer.known && layer.value !== "none" ? { kind: "unknown", words } : { kind: "none" };
};
