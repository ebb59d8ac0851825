/** Amounts of an order in the units a yard speaks. */
import { fromBase, type Term, type Unit } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";

type Units = Job["units"];
type Rest = Partial<Omit<Term, "symbol" | "words" | "value" | "unit">>;

const made =
  (inchPound: Unit, si: Unit) =>
  (symbol: string, words: string, base: number, units: Units, rest: Rest = {}): Term => {
    const unit = units === "si" ? si : inchPound;
    return { symbol, words, value: fromBase(base, unit), unit, ...rest };
  };

/** mm³ in */
export const volume = made("yd³", "m³");
/** mm² in */
export const area = made("ft²", "m²");
/** mm in, long things */
export const run = made("ft", "m");
/** mm in, short things */
export const short = made("in", "mm");
/** N in */
export const weight = made("lb", "kg");

export const count = (symbol: string, words: string, value: number, rest: Rest = {}): Term => ({
  symbol,
  words,
  value,
  unit: "",
  ...rest,
});

/** Rounded up to a step of the term's own unit; whole numbers that only rounding lifts stay. */
export const roundedUp = (term: Term, step: number, words: string): Term => ({
  ...term,
  words,
  value: Math.ceil(term.value / step - 1e-9) * step,
  formula: `rounded up to ${step} ${term.unit}`.trim(),
  from: [term],
});
