import type { Assessment } from "@floorworthy/assess";
import type { Polygon } from "@floorworthy/engine/geometry";
import { boundsOf } from "../drawing/hatch.ts";
import { printFeet, printLength, type UnitSystem } from "../print/measure.ts";
import type { Part } from "./part.ts";

/** "5'-0" × 5'-0"" when the outline fills its bounds, else "up to ..." */
export const sizeOf = (outline: Polygon, units: UnitSystem): string => {
  const { x0, y0, x1, y1 } = boundsOf(outline);
  const unit = units === "si" ? " mm" : "";
  const square = outline.every(
    (p) => [x0, x1].some((x) => Math.abs(p.x - x) < 1) && [y0, y1].some((y) => Math.abs(p.y - y) < 1),
  );
  return `${square ? "" : "within "}${printFeet(x1 - x0, units)} × ${printFeet(y1 - y0, units)}${unit}`;
};

const thick = (thickness: number | undefined, units: UnitSystem): string =>
  thickness === undefined ? "thickness not known" : `${printLength(thickness, units)} thick`;

export const zonesPart = (zones: Assessment["layout"]["zones"], units: UnitSystem): Part => {
  const drawn = zones.filter((zone) => zone.outline.length > 2 && zone.kind !== "slab");
  return {
    items: drawn.map(({ outline, state }) => ({
      kind: "polygon",
      tag: state === "proposed" ? "pads-to-pour" : "zones",
      points: outline,
      pen: state === "proposed" ? "pad" : "hidden",
      hatch: state === "proposed" ? "concrete" : "none",
    })),
    wanted: drawn.map(({ name, outline, thickness, state }) => {
      const { x0, x1, y1 } = boundsOf(outline);
      return {
        tag: "labels",
        words: `${name}, ${thick(thickness, units)}`,
        lettering: state === "proposed" ? "bold" : "regular",
        at: { x: (x0 + x1) / 2, y: y1 },
      };
    }),
  };
};
