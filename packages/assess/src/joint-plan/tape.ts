import { fromBase, printFeetInches, printFraction, printNumber } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";

/** A place on the floor as a tape shows it: 9 1/2 in, 12'-6 1/2" to the nearest 1/16 in, or 3810 mm. */
export const tape = (mm: number, units: Job["units"]): string => {
  if (units === "si") return `${printNumber(Math.round(mm), 0).replaceAll(",", "")} mm`;
  return Math.abs(mm) < 609 ? `${printFraction(fromBase(mm, "in"), 16)} in` : printFeetInches(mm, 16);
};
