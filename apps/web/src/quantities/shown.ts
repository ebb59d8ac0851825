import {
  dimensionOf,
  fromBase,
  preferredUnit,
  printFeetInches,
  printNumber,
  toBase,
  type Unit,
} from "@floorworthy/engine/quantities";
import type { Units } from "../work/messages.ts";

const metric = /^(mm|cm|m\b|m²|m³|N|kN|kg|t$|k?Pa|MPa|GPa|MN|°C|km)/;
const both: readonly Unit[] = ["", "%", "d", "h", "min", "week", "month", "year", "deg", "rad"];

/** The unit in which a system shows what `unit` measures: its own if it belongs to that system, else the usual one. */
export const unitFor = (unit: Unit, units: Units): Unit =>
  both.includes(unit) || metric.test(unit) === (units === "si") ? unit : preferredUnit(dimensionOf(unit), units);

/** A value with its unit, in the system asked for, e.g. `3,655 lb`. */
export const shown = (value: number, unit: Unit, units: Units): string => {
  const target = readable(unitFor(unit, units), unit, value, units);
  return printed(target === unit ? value : fromBase(toBase(value, unit), target), target);
};

/** Base units of the calculation are too small to read; they are shown in the usual unit. */
const readable = (target: Unit, unit: Unit, value: number, units: Units): Unit =>
  target === unit && Math.abs(value) >= 1e4 ? preferredUnit(dimensionOf(unit), units) : target;

/** The usual unit of a system for what `unit` measures. */
export const usualUnit = (unit: Unit, units: Units): Unit => preferredUnit(dimensionOf(unit), units);

/** A value as a number of the usual unit: for scales, whose ticks are to be round there. */
export const inUsualUnit = (value: number, unit: Unit, units: Units): number =>
  fromBase(toBase(value, unit), usualUnit(unit, units));

/** A value in its unit, to four figures, thousands parted. */
export const printed = (value: number, unit: Unit): string => `${figures(value)}${unit === "" ? "" : ` ${unit}`}`;

const figures = (value: number): string => {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? "not worked out" : "beyond bounds";
  const size = Math.abs(value);
  return printNumber(value, size >= 1000 || size === 0 ? 0 : Math.min(6, 3 - Math.floor(Math.log10(size))));
};

/** A length of the drawing, mm: `13'-2 1/2"` to the sixteenth, or whole mm. */
export const shownLength = (mm: number, units: Units): string => {
  if (units === "si") return printNumber(mm, 0);
  return Math.abs(mm) < 304.8 ? printFeetInches(mm, 16).replace("0'-", "") : printFeetInches(mm, 16);
};
