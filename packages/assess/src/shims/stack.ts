import type { UnitSystem } from "@floorworthy/engine/quantities";
import { practice, stepOf } from "./practice.ts";

/** Shims on top of each other, thickest first, mm. */
export interface Stack {
  readonly height: number;
  readonly shims: readonly number[];
}

/** The fewest stock shims that come within half a step of `gap` mm. */
export const stackFor = (gap: number, units: UnitSystem): Stack => {
  const step = stepOf(units);
  let left = Math.max(0, Math.round(gap / step));
  const shims = practice.stock[units].flatMap((thickness) => {
    const size = Math.round(thickness / step);
    const count = Math.floor(left / size);
    left -= count * size;
    return Array.from({ length: count }, () => thickness);
  });
  return { height: shims.reduce((sum, t) => sum + t, 0), shims };
};
