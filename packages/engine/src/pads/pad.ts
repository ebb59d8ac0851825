import type { Point, Polygon } from "../geometry/index.ts";

/** Where the thick concrete lies in plan, measured at its full-thickness outline. Lengths mm. */
export type PadPlan =
  /** a rectangle about each column, turned with the column line: `along` it and `across` it */
  | {
      readonly shape: "rectangles";
      readonly columns: readonly Point[];
      readonly along: number;
      readonly across: number;
    }
  /** a circle about each of two columns, joined across the middle by a band `waist` wide (2 × radius: a stadium) */
  | {
      readonly shape: "joined-circles";
      readonly columns: readonly [Point, Point];
      readonly radius: number;
      readonly waist: number;
    }
  /** one strip under both columns: `width` across, reaching `beyond` each column along the line */
  | {
      readonly shape: "strip";
      readonly columns: readonly [Point, Point];
      readonly width: number;
      readonly beyond: number;
    }
  /** the whole bay, or any outline */
  | { readonly shape: "outline"; readonly outline: Polygon };

/** How an offset outline turns a corner: "mitred" keeps plane sides, "rounded" keeps the distance. */
export type OffsetCorner = "mitred" | "rounded";

/** The sides between the underside of the slab and the bottom of the pad. */
export type PadSides =
  | { readonly kind: "vertical" }
  /** the sides spread upward by `run` mm per mm of height (1 for 1:1, 2 for 1:2) */
  | { readonly kind: "sloped"; readonly run: number; readonly corner: OffsetCorner }
  /** cut-out pad reaching `reach` mm beneath the old slab all round */
  | { readonly kind: "undercut"; readonly reach: number; readonly corner: OffsetCorner };

/** Thick concrete under columns, cast with the slab or into a cut-out. */
export interface Pad {
  readonly plan: PadPlan;
  /** from the top of the slab to the bottom of the pad, mm */
  readonly thickness: number;
  /** thickness of the slab around it, mm; 0 where it stands alone */
  readonly slab: number;
  readonly sides: PadSides;
}
