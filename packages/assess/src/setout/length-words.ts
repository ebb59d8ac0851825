import { fromBase, printFraction, printNumber, type UnitSystem } from "@floorworthy/engine/quantities";

/** A length as it is read off a tape: 4 1/2 in to the nearest 1/16, or whole millimetres. */
export const lengthWords = (mm: number, units: UnitSystem): string =>
  units === "si" ? `${printNumber(mm, Math.abs(mm) < 10 ? 1 : 0)} mm` : `${printFraction(fromBase(mm, "in"), 16)} in`;
