import { dimensionOf } from "@floorworthy/engine/quantities";
import { ANY_UNIT, NUMBER, START } from "./figure-patterns.ts";
import type { FoundValue } from "./found-value.ts";
import { placeOf, reading, single, unitNamed } from "./single-value.ts";

export const SLOPE = new RegExp(
  `${START}(?<rise>${NUMBER}) ?(?<up>${ANY_UNIT}) ?(?:per|/|over|in(?: any)?|for each|for every) ?(?:a |every |each |any )?(?:(?<run>${NUMBER}) ?)?(?<along>ft|foot|feet|met(?:er|re)s?|m)(?![\\p{L}²])|${START}1 ?: ?(?<ratio>\\d{2,4})(?![\\d:])`,
  "giu",
);

export const slopeOf = (match: RegExpMatchArray): FoundValue | undefined => {
  const { rise, up, run, along, ratio } = match.groups!;
  const place = placeOf(match);
  const slope = (value: number, written: string): FoundValue => ({
    ...place,
    dimension: "number",
    value,
    low: value,
    high: value,
    written,
    unit: "",
    how: [],
  });
  if (ratio) return slope(1 / Number(ratio), `1:${ratio}`);
  const [a, b] = [unitNamed(up!), unitNamed(along!)];
  if (!a || !b || dimensionOf(a.unit) !== "length" || a.unit === "ft" || a.unit === "m") return undefined;
  const [high, long] = [reading(rise!, a.unit), reading(run ?? "1", b.unit)];
  if (!high || !long || long.value === 0) return undefined;
  const value = high.value / long.value;
  return slope(value, run === undefined ? `${high.written} per ${b.unit}` : String(Number(value.toPrecision(4))));
};

export const slopeUnit = (match: RegExpMatchArray, number: string, unit: "deg" | "%"): FoundValue | undefined => {
  const value = single(placeOf(match), number, unit);
  if (!value || unit === "%") return value;
  const rise = Math.tan(value.value);
  return {
    ...value,
    dimension: "number",
    value: rise,
    low: rise,
    high: rise,
    written: String(Number(rise.toPrecision(4))),
    unit: "",
  };
};
