/**
 * Welded wire by its W number (hundredths of in² per wire): steel per width, weight, sheets. Concrete Construction, "New
 * numbering system explained", table of common stock styles [welded-wire].
 */
import { toBase } from "../quantities/index.ts";

/** `A = W/100 in²`, per width: mm²/mm. @param W - wire number @param spacing - mm */
export const wirePerWidth = (W: number, spacing: number): number => toBase(W / 100, "in²") / spacing;

/** Weight of a square style per area, MPa: wires of a roll `width` wide with `overhang` of cross wire beyond each edge wire. */
export const wireWeight = (
  W: number,
  spacing: number,
  width = toBase(60, "in"),
  overhang = toBase(1, "in"),
): number => {
  const perLength = toBase(3.4 * (W / 100), "lb/ft"); // 3.4 lb/ft per in² of steel
  const along = Math.round(width / spacing) + 1;
  const across = (width + 2 * overhang) / spacing;
  return (perLength * (along + across)) / width;
};

/** A flat sheet and the lap it needs to the next, mm. */
export interface Sheet {
  readonly length: number;
  readonly width: number;
  readonly lap: number;
}

/** Whole sheets to cover a rectangle, all one way round, whichever way needs fewer. */
export const sheetsFor = (length: number, width: number, { length: l, width: w, lap }: Sheet): number => {
  const across = (span: number, sheet: number) => (span <= sheet ? 1 : Math.ceil((span - lap) / (sheet - lap) - 1e-9));
  return Math.min(across(length, l) * across(width, w), across(length, w) * across(width, l));
};
