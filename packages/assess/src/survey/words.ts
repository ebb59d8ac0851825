import { fromBase, printFeetInches, printFraction, type Term, type UnitSystem } from "@floorworthy/engine/quantities";

/** "5 1/2 in" to the nearest 1/8, or "140 mm". */
export const lengthWords = (mm: number, units: UnitSystem): string =>
  units === "si" ? `${Math.round(mm)} mm` : `${printFraction(fromBase(mm, "in"), 8)} in`;

/** A distance for the tape: 7'-6 1/4", 6'-0 1/2", or 2290 mm. */
export const tapeWords = (mm: number, units: UnitSystem): string =>
  units === "si" ? `${Math.round(mm)} mm` : printFeetInches(mm, 4).replace(/-(\d+\/\d+)"/, '-0 $1"');

/** A length that has a unit already: "5 1/2 in" or "140 mm". */
export const termWords = ({ value, unit }: Term): string =>
  `${unit === "in" ? printFraction(value, 8) : Math.round(value)} ${unit}`;
