import { fromBase, printQuantity, type Unit, type UnitSystem } from "@floorworthy/engine/quantities";

/** Movements are small: thousandths of an inch, hundredths of a millimetre. */
export const printMovement = (mm: number, system: UnitSystem): string =>
  printQuantity(mm, "length", { system, precision: system === "si" ? 2 : 3 });

export const torqueUnit = (system: UnitSystem): Unit => (system === "si" ? "N·m" : "lb-ft");

export const printTorque = (value: number, system: UnitSystem): string =>
  printQuantity(value, "moment", { system, unit: torqueUnit(system), precision: 0 });

/** Nuts are read to whole degrees. */
export const degrees = (rad: number): number => Math.round(fromBase(rad, "deg"));
