import { dimensionOf, fromBase, readQuantity, type Unit } from "@floorworthy/engine/quantities";
import type { FoundValue } from "./found-value.ts";
import { unitPatterns } from "./unit-patterns.ts";

const figure = (text: string): { readonly text: string; readonly comma: boolean } => {
  const comma = /^\d+,\d{1,2}$/.test(text) || /^0,\d+$/.test(text);
  const plain = text.replace(/ ?[⁄/] ?/, "/").replace(/[–]/, "-");
  return { text: comma ? plain.replace(",", ".") : plain, comma };
};

export const reading = (
  number: string,
  unit: Unit,
  times = 1,
): { readonly value: number; readonly written: string; readonly comma: boolean } | undefined => {
  const { text, comma } = figure(number);
  const read = readQuantity(`${text} ${unit}`, dimensionOf(unit));
  if (!read.ok) return undefined;
  const plural = text !== "1" && ["week", "month", "year"].includes(unit) ? "s" : "";
  if (times === 1) return { value: read.value, written: `${text} ${unit}${plural}`, comma };
  const value = read.value * times;
  return { value, written: `${Number(fromBase(value, unit).toPrecision(4))} ${unit}`, comma };
};

export const single = (
  match: { readonly from: number; readonly to: number },
  number: string,
  unit: Unit,
  times = 1,
): FoundValue | undefined => {
  const read = reading(number, unit, times);
  return (
    read && {
      ...match,
      dimension: dimensionOf(unit),
      value: read.value,
      low: read.value,
      high: read.value,
      written: read.written,
      unit,
      how: read.comma ? ["decimal-comma"] : [],
    }
  );
};

export const placeOf = (match: RegExpExecArray | RegExpMatchArray) => ({
  from: match.index!,
  to: match.index! + match[0].length,
});

export const unitNamed = (text: string): { readonly unit: Unit; readonly times: number } | undefined => {
  const hit = unitPatterns.find(({ pattern }) => new RegExp(`^(?:${pattern})$`, "iu").test(text.trim()));
  return hit && { unit: hit.unit, times: hit.times ?? 1 };
};
