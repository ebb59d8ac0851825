import type { Dimension, Unit } from "@floorworthy/engine/quantities";

/** A figure in running text. Base units: N, mm, MPa, d, rad, rise over run. */
export interface FoundValue {
  /** place in the text */
  readonly from: number;
  readonly to: number;
  readonly dimension: Dimension;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** as a lift sheet can read it; one text, or the two ends of a range */
  readonly written: string | { readonly low: string; readonly high: string };
  /** the unit of the text; undefined for a bare number */
  readonly unit: Unit | undefined;
  /** the sides of one size (18 x 16 x 3/4 in) share a number and are counted from 0 */
  readonly size?: { readonly group: number; readonly side: number; readonly sides: number };
  /** how it was read where that is worth a remark */
  readonly how: readonly ("decimal-comma" | "class" | "bolt" | "units-disagree")[];
}
