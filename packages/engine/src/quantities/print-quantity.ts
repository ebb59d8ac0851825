import { preferredUnit, type UnitSystem, usualDecimals } from "./preferred-units.ts";
import { type Dimension, fromBase, type Unit } from "./units.ts";

export interface PrintOptions {
  readonly system: UnitSystem;
  /** in place of the system's usual unit, e.g. "lb-ft" for a torque */
  readonly unit?: Unit;
  /** most decimals; the usual ones of the dimension when left out */
  readonly precision?: number;
  /** print the fraction of an inch or foot to the nearest 1/2, 1/4 … 1/32 */
  readonly fraction?: 2 | 4 | 8 | 16 | 32;
}

/** Shown where there is no number: NaN never reaches a page. */
const NONE = "—";

const grouped = (digits: string): string => digits.replace(/\B(?=(\d{3})+$)/g, ",");

/**
 * A number with at most `precision` decimals, no trailing zeros, thousands parted by commas. A number that would round to
 * zero keeps two significant digits. NaN prints as a dash, an infinite number as ∞.
 */
export const printNumber = (value: number, precision = 2): string => {
  if (Number.isNaN(value)) return NONE;
  if (!Number.isFinite(value)) return value > 0 ? "∞" : "-∞";
  const size = Math.abs(value);
  if (size >= 1e15) return value.toExponential(3);
  const vanishes = size >= 1e-6 && Number(size.toFixed(precision)) === 0;
  const fixed = vanishes ? String(Number(size.toPrecision(2))) : size.toFixed(precision);
  const [whole = "0", decimals = ""] = fixed.split(".");
  const tail = decimals.replace(/0+$/, "");
  const text = grouped(whole) + (tail === "" ? "" : `.${tail}`);
  return value < 0 && text !== "0" ? `-${text}` : text;
};

/** The nearest 1/`parts`, as 4 1/2, 3/8, -2 1/16. */
export const printFraction = (value: number, parts: number): string => {
  if (!Number.isFinite(value) || Math.abs(value) >= 1e12) return printNumber(value);
  const count = Math.round(Math.abs(value) * parts);
  const [whole, over] = [Math.floor(count / parts), count % parts];
  const shared = greatestCommonDivisor(over, parts);
  const pieces = [
    whole > 0 || over === 0 ? grouped(String(whole)) : "",
    over > 0 ? `${over / shared}/${parts / shared}` : "",
  ];
  return (value < 0 && count > 0 ? "-" : "") + pieces.filter((piece) => piece !== "").join(" ");
};

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

/** A value that already is in `unit`, with the unit's name. */
export const printInUnit = (
  value: number,
  unit: Unit,
  options: Pick<PrintOptions, "precision" | "fraction"> = {},
): string => {
  if (!Number.isFinite(value)) return printNumber(value);
  const fractional = options.fraction !== undefined && (unit === "in" || unit === "ft");
  const number = fractional ? printFraction(value, options.fraction) : printNumber(value, options.precision ?? 2);
  return unit === "" ? number : `${number} ${unit}`;
};

/** A value in base units, printed for people in the unit of their system. */
export const printQuantity = (value: number, dimension: Dimension, options: PrintOptions): string => {
  const unit = options.unit ?? preferredUnit(dimension, options.system);
  const precision = options.precision ?? usualDecimals(dimension, options.system);
  return printInUnit(fromBase(value, unit), unit, { ...options, precision });
};

/** A length (mm) as feet and inches: 5'-6 1/2", -0'-3 1/8". */
export const printFeetInches = (value: number, fraction: 2 | 4 | 8 | 16 | 32 = 16): string => {
  if (!Number.isFinite(value)) return printNumber(value);
  const count = Math.round(Math.abs(fromBase(value, "in")) * fraction);
  const feet = Math.floor(count / (12 * fraction));
  const inches = (count - feet * 12 * fraction) / fraction;
  return `${value < 0 && count > 0 ? "-" : ""}${grouped(String(feet))}'-${printFraction(inches, fraction)}"`;
};
