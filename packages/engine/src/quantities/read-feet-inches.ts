import { readNumber } from "./read-number.ts";
import { toBase } from "./units.ts";

export type FeetInches =
  | { readonly kind: "value"; readonly value: number }
  | { readonly kind: "inches-over-11" }
  | { readonly kind: "other" };

const FEET = /^([1-9]\d{0,2}(?:,\d{3})+|\d+) ?(?:'|ft\.?|feet|foot) ?[-,]? ?(?=[\d.])/i;
const INCH_MARK = /^ ?(?:"|in\.?|inch|inches)$/i;

/** Reads 5'-6 1/2" · 5 ft 6 in · 5'6 (mm); anything else is "other". After a foot mark the inch mark may be left out. */
export const readFeetInches = (text: string): FeetInches => {
  const feet = FEET.exec(text);
  if (!feet) return { kind: "other" };
  const inches = readNumber(text.slice(feet[0].length));
  if (!inches.ok) return { kind: "other" };
  const markLeftOut = inches.rest.trim() === "" && feet[0].includes("'");
  if (!markLeftOut && !INCH_MARK.test(inches.rest)) return { kind: "other" };
  if (inches.value >= 12) return { kind: "inches-over-11" };
  return { kind: "value", value: toBase(Number(feet[1]!.replace(/,/g, "")) * 12 + inches.value, "in") };
};
