import type { Assessment } from "@floorworthy/assess";
import type { Polygon, Rect } from "@floorworthy/engine/geometry";
import type { Joint } from "@floorworthy/job";
import type { Dimension } from "../drawing/drawing.ts";
import { boundsOf } from "../drawing/hatch.ts";
import type { UnitSystem } from "../print/measure.ts";
import { chain } from "./chain.ts";

/**
 * Setting out from two walls: the columns along the back and the left side, the pads and, outside them, the joints to make
 * along the front and the right side. The zero of the plan is the face of the left and of the back wall.
 */
export const settingOut = (
  { layout }: Assessment,
  joints: readonly Joint[],
  outline: Polygon,
  extents: Rect,
  ratio: number,
  units: UnitSystem,
): readonly Dimension[] => {
  const floor = boundsOf(outline);
  const of = { ratio, units } as const;
  const centres = layout.bases.map((base) => base.centre);
  const pads = layout.zones
    .filter((zone) => zone.state === "proposed" && zone.kind !== "slab")
    .map((zone) => boundsOf(zone.outline));
  const top = { ...of, axis: "x", base: extents.y0, side: -1 } as const;
  const left = { ...of, axis: "y", base: extents.x0, side: -1 } as const;
  const columnsX = chain({
    ...top,
    offsetPaper: 4,
    stops: centres.length ? [0, ...centres.map((c) => c.x), floor.x1] : [],
  });
  const columnsY = chain({
    ...left,
    offsetPaper: 4,
    stops: centres.length ? [0, ...centres.slice(0, 1).map((c) => c.y), floor.y1] : [],
  });
  const skew = centres.slice(1).some((c) => Math.abs(c.y - centres[0]!.y) > 3);
  const rightStops = [...(skew ? centres.slice(1).map((c) => c.y) : []), ...pads.flatMap((p) => [p.y0, p.y1])];
  const right = { ...of, axis: "y", base: extents.x1, side: 1, offsetPaper: 4.5 } as const;
  const bottom = { ...of, axis: "x", base: extents.y1, side: 1, offsetPaper: 4.5 } as const;
  const padsX = pads.length ? chain({ ...bottom, stops: [0, ...pads.flatMap((p) => [p.x0, p.x1])] }) : none;
  const padsY = rightStops.length ? chain({ ...right, stops: [0, ...rightStops] }) : none;
  const made = placesOf(joints);
  const outside = (reach: number) => (reach > 0 ? reach + 2.6 : 4.5);
  const jointsX = made.x.length
    ? chain({ ...bottom, offsetPaper: outside(padsX.reach), stops: [0, ...made.x, floor.x1] })
    : none;
  const jointsY = made.y.length
    ? chain({ ...right, offsetPaper: outside(padsY.reach), stops: [0, ...made.y, floor.y1] })
    : none;
  return [
    ...columnsX.items,
    ...chain({ ...top, offsetPaper: columnsX.reach + 1.6, stops: [floor.x0, floor.x1] }).items,
    ...columnsY.items,
    ...chain({ ...left, offsetPaper: columnsY.reach + 1.6, stops: [floor.y0, floor.y1] }).items,
    ...[padsX, padsY, jointsX, jointsY].flatMap(({ items }) => items),
  ];
};

const none: ReturnType<typeof chain> = { items: [], reach: 0 };

/** Places of the joints to saw that run along the walls. */
const placesOf = (joints: readonly Joint[]): Readonly<Record<"x" | "y", readonly number[]>> => {
  const made = joints.filter(({ state, kind }) => state === "proposed" && kind !== "isolation");
  return {
    x: made.flatMap(({ from, to }) => (Math.abs(from.x - to.x) < 1 ? [from.x] : [])),
    y: made.flatMap(({ from, to }) => (Math.abs(from.y - to.y) < 1 ? [from.y] : [])),
  };
};
