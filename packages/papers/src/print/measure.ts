/** Numbers as the trade writes them. Base units in (mm, MPa, mm³, °C), words out. */
import { fromBase, printFraction, printNumber, type UnitSystem } from "@floorworthy/engine/quantities";

export type { UnitSystem };

/** A depth or a thickness: "4 1/4 in" to the nearest 1/16, or "108 mm". */
export const printLength = (mm: number, units: UnitSystem): string => {
  if (!Number.isFinite(mm)) return "not known";
  if (units === "si") return `${printNumber(mm, Math.abs(mm) < 10 ? 1 : 0)} mm`;
  return `${printFraction(fromBase(mm, "in"), 16)} in`;
};

/** A distance to be set out with a tape: 11'-8 1/2" to the nearest 1/16 in, or whole millimetres. */
export const printFeet = (mm: number, units: UnitSystem): string => {
  if (!Number.isFinite(mm)) return "not known";
  if (units === "si") return `${Math.round(mm)}`;
  const inches = Math.round(fromBase(Math.abs(mm), "in") * 16) / 16;
  const feet = Math.floor(inches / 12);
  const rest = `${printFraction(inches - 12 * feet, 16)}"`;
  return `${mm < 0 && inches > 0 ? "-" : ""}${feet ? `${feet}'-${rest}` : rest}`;
};

/** "4,000 psi" to the nearest 10, or "28 MPa". */
export const printStress = (mpa: number, units: UnitSystem): string =>
  units === "si" ? `${printNumber(mpa, 1)} MPa` : `${printNumber(Math.round(fromBase(mpa, "psi") / 10) * 10, 0)} psi`;

/** "1.85 cu yd" or "1.42 m³". */
export const printVolume = (mm3: number, units: UnitSystem): string =>
  units === "si" ? `${fromBase(mm3, "m³").toFixed(2)} m³` : `${fromBase(mm3, "yd³").toFixed(2)} cu yd`;

export const printTemperature = (celsius: number, units: UnitSystem): string =>
  units === "si" ? `${Math.round(celsius)} °C` : `${Math.round(fromBase(celsius, "°F"))} °F`;
