import type { Assessment, PlacedBase } from "@floorworthy/assess";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Job, Zone } from "@floorworthy/job";
import { boundsOf } from "../drawing/hatch.ts";

/** A cut through the concrete under one column. Lengths mm; s runs along the cut from the pad's (or the view's) left side. */
export interface Cut {
  readonly name: string;
  /** width of the thick part, or undefined when the slab has one thickness */
  readonly pad:
    | {
        readonly width: number;
        readonly thickness: number | undefined;
        readonly slope: number;
        readonly tied: "one" | "apart";
      }
    | undefined;
  readonly slab: number | undefined;
  readonly base: { readonly from: number; readonly to: number; readonly anchors: readonly number[] } | undefined;
  /** looking along the bay ("x" is across it) */
  readonly along: "x" | "y";
}

/** The slab's own thickness: what was named, else the lowest reading in the slab. */
export const slabThickness = ({ floor }: Job): number | undefined => {
  if (floor.thickness.known) return floor.thickness.value;
  const zone = floor.zones.find((z) => z.kind === "slab");
  if (zone?.thickness.known) return zone.thickness.value;
  const read = floor.readings.flatMap((r) => (r.thickness.known && r.place === "slab" ? [r.thickness.value] : []));
  return read.length ? Math.min(...read) : undefined;
};

const holds = (box: Rect, base: PlacedBase): boolean =>
  base.centre.x >= box.x0 && base.centre.x <= box.x1 && base.centre.y >= box.y0 && base.centre.y <= box.y1;

/** Whether the thick part was or will be cast in one with its slab. */
const tiedOf = (zone: Zone | undefined, job: Job): "one" | "apart" =>
  zone?.tied.known
    ? zone.tied.value === "cast-with"
      ? "one"
      : "apart"
    : job.floor.state === "to-be-poured" || zone?.state === "standing"
      ? "one"
      : "apart";

const anchorsAlong = (base: PlacedBase, along: "x" | "y", zero: number): readonly number[] => {
  const places = base.anchors.map(({ at }) => at[along] - zero).sort((a, b) => a - b);
  return places.filter((s, i) => i === 0 || s - places[i - 1]! > 5);
};

export const cutOf = (job: Job, { layout }: Assessment): Cut | undefined => {
  const slab = slabThickness(job);
  const thick = layout.zones.filter((z) => z.kind === "pad" || z.kind === "strip");
  const under = (state: "proposed" | "standing") =>
    thick.find((z) => z.state === state && layout.bases.some((b) => holds(boundsOf(z.outline), b)));
  const zone = under("proposed") ?? thick.find((z) => z.state === "proposed") ?? under("standing");
  const first = layout.bases[0];
  if (!zone) {
    if (!first) return undefined;
    const box = boundsOf(first.outline);
    const zero = box.x0 - 450;
    return {
      name: "slab under the column",
      pad: undefined,
      slab,
      along: "x",
      base: { from: 450, to: box.x1 - zero, anchors: anchorsAlong(first, "x", zero) },
    };
  }
  const box = boundsOf(zone.outline);
  const along = box.x1 - box.x0 <= box.y1 - box.y0 + 1 ? "x" : "y";
  const zero = along === "x" ? box.x0 : box.y0;
  const base = layout.bases.find((b) => holds(box, b));
  const own = job.floor.zones.find((z) => z.name === zone.name);
  const plate = base && boundsOf(base.outline);
  return {
    name: zone.name,
    slab,
    along,
    pad: {
      width: (along === "x" ? box.x1 : box.y1) - zero,
      thickness: zone.thickness,
      slope: own?.sideSlope ?? 0,
      tied: tiedOf(own, job),
    },
    base: base &&
      plate && {
        from: (along === "x" ? plate.x0 : plate.y0) - zero,
        to: (along === "x" ? plate.x1 : plate.y1) - zero,
        anchors: anchorsAlong(base, along, zero),
      },
  };
};
