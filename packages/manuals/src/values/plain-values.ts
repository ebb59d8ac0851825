import { readQuantity } from "@floorworthy/engine/quantities";
import { ANY_UNIT, GAP, NUMBER, SIGN, START, UNIT } from "./figure-patterns.ts";
import type { FoundValue } from "./found-value.ts";
import { numberWords, spokenNumber } from "./number-words.ts";
import { placeOf, reading, single } from "./single-value.ts";
import { slopeUnit } from "./slopes.ts";
import { unitPatterns } from "./unit-patterns.ts";

export const CLASS = /(?<![\p{L}\d])C ?(\d{2}) ?\/ ?(\d{2})(?!\d)/gu;

export const FEET_INCHES = new RegExp(
  `${START}\\d+ ?(?:['’′]|ft\\.?|feet|foot) ?[-–,]? ?(?:\\d+(?: |[-–])\\d+[/⁄]\\d+|\\d+ ?${SIGN}|\\d+[/⁄]\\d+|\\d+(?:\\.\\d+)?) ?(?:["”″]|''|in(?:ch(?:es)?)?(?!\\p{L})\\.?)`,
  "giu",
);

export const PLAIN = new RegExp(
  `(?:${START}|(?<=[\\d"″'¼½¾⅛⅜⅝⅞.] ?[x×] ?))(?:(?<first>${NUMBER})(?! ?[-–] ?\\d{1,2} ?[/⁄])(?: ?(?:${ANY_UNIT}))? ?(?:-|–|—|to|through|up to|÷|\\.\\.\\.?)  ?|(?<=between )(?<from>${NUMBER})(?: ?(?:${ANY_UNIT}))? and |(?<mid>${NUMBER}) ?± ?)?(?:(?<word>${numberWords})(?: ?\\((?<inside>\\d+)\\))?|(?<number>${NUMBER})|\\((?<bracket>\\d+)\\))${GAP}(?:${UNIT})`.replace(
    "  ?",
    " ?",
  ),
  "giu",
);

export const classOf = (match: RegExpMatchArray): FoundValue | undefined => {
  const value = single(placeOf(match), match[1]!, "MPa");
  return value && { ...value, how: ["class"] };
};

export const feetInches = (match: RegExpMatchArray): FoundValue | undefined => {
  const read = readQuantity(
    match[0].replace(/⁄/g, "/").replace(/[–]/g, "-").replace(/ ?, ?/, " ").replace(/\.$/, ""),
    "length",
  );
  return read.ok
    ? {
        ...placeOf(match),
        dimension: "length",
        value: read.value,
        low: read.value,
        high: read.value,
        written: read.written,
        unit: "ft",
        how: [],
      }
    : undefined;
};

export const plainOf = (match: RegExpMatchArray): FoundValue | undefined => {
  const groups = match.groups!;
  const index = unitPatterns.findIndex((_, i) => groups[`u${i}`] !== undefined);
  const { unit, times = 1 } = unitPatterns[index]!;
  const spoken = groups.word === undefined ? undefined : spokenNumber(groups.word);
  const number = groups.inside ?? groups.number ?? groups.bracket ?? String(spoken ?? "");
  if (unit === "deg" || unit === "%") return slopeUnit(match, number, unit);
  const last = single(placeOf(match), number, unit, times);
  const first = groups.first ?? groups.from;
  if (!last || typeof last.written !== "string") return last;
  if (groups.mid !== undefined) {
    const middle = reading(groups.mid, unit, times);
    if (!middle) return undefined;
    const [low, high] = [middle.value - last.value, middle.value + last.value];
    return { ...last, value: middle.value, low, high, written: middle.written };
  }
  if (first === undefined) return last;
  const start = reading(first, unit, times);
  if (!start || start.value >= last.value)
    return single({ from: last.to - match[0].length + match[0].lastIndexOf(number), to: last.to }, number, unit, times);
  return {
    ...last,
    low: start.value,
    value: (start.value + last.value) / 2,
    written: { low: start.written, high: last.written },
  };
};
