import { dimensionOf, fromBase, readQuantity, type Unit } from "@floorworthy/engine/quantities";
import type { FoundValue } from "./found-value.ts";
import { numberWords, spokenNumber } from "./number-words.ts";
import { unitPatterns } from "./unit-patterns.ts";

const SIGN = "[¼½¾⅛⅜⅝⅞⅓⅔]";
const NUMBER = `(?:\\d+ ?${SIGN}|\\d+(?: |[-–] ?)\\d{1,2} ?[/⁄] ?\\d{1,2}(?!\\d)|\\d{1,2} ?[/⁄] ?\\d{1,2}(?![\\d/])|${SIGN}|\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d{1,3}(?: \\d{3})+(?![\\d/⁄,.])|\\d+[.,]\\d+|\\.\\d+|\\d+)`;
const UNIT = unitPatterns.map(({ pattern }, i) => `(?<u${i}>${pattern})`).join("|");
const ANY_UNIT = unitPatterns.map(({ pattern }) => pattern).join("|");
const START = "(?<![\\p{L}\\d.,/⁄])(?<![\\p{L}\\d]-)";
const GAP = "[ ]?-? ?";

const FEET_INCHES = new RegExp(
  `${START}\\d+ ?(?:['’′]|ft\\.?|feet|foot) ?[-–,]? ?(?:\\d+(?: |[-–])\\d+[/⁄]\\d+|\\d+ ?${SIGN}|\\d+[/⁄]\\d+|\\d+(?:\\.\\d+)?) ?(?:["”″]|''|in(?:ch(?:es)?)?(?!\\p{L})\\.?)`,
  "giu",
);
const SLOPE = new RegExp(
  `${START}(?<rise>${NUMBER}) ?(?<up>${ANY_UNIT}) ?(?:per|/|over|in(?: any)?|for each|for every) ?(?:a |every |each |any )?(?:(?<run>${NUMBER}) ?)?(?<along>ft|foot|feet|met(?:er|re)s?|m)(?![\\p{L}²])|${START}1 ?: ?(?<ratio>\\d{2,4})(?![\\d:])`,
  "giu",
);
const CLASS = /(?<![\p{L}\d])C ?(\d{2}) ?\/ ?(\d{2})(?!\d)/gu;
const BOLT = /(?<![\p{L}\d])M ?(\d{1,2})(?: ?[x×] ?(\d{2,3}))?(?: ?mm)?(?![\p{L}\d/])/gu;
const PLAIN = new RegExp(
  `(?:${START}|(?<=[\\d"″'¼½¾⅛⅜⅝⅞.] ?[x×] ?))(?:(?<first>${NUMBER})(?! ?[-–] ?\\d{1,2} ?[/⁄])(?: ?(?:${ANY_UNIT}))? ?(?:-|–|—|to|through|up to|÷|\\.\\.\\.?)  ?|(?<=between )(?<from>${NUMBER})(?: ?(?:${ANY_UNIT}))? and |(?<mid>${NUMBER}) ?± ?)?(?:(?<word>${numberWords})(?: ?\\((?<inside>\\d+)\\))?|(?<number>${NUMBER})|\\((?<bracket>\\d+)\\))${GAP}(?:${UNIT})`.replace(
    "  ?",
    " ?",
  ),
  "giu",
);
const SIZE = new RegExp(
  `${START}(?<a>${NUMBER}) ?(?<ua>${ANY_UNIT})?(?: ?(?:dia(?:m(?:eter)?)?\\.?))? ?(?:[x×]|by) ?(?<b>${NUMBER}) ?(?<ub>${ANY_UNIT})?(?: ?[x×] ?(?<c>${NUMBER}) ?(?<uc>${ANY_UNIT})?)?`,
  "giu",
);

/** Longest text that is looked through at once; running text is shorter. */
const MOST_LETTERS = 4000;

/** All figures with units in a text, in order, none inside another. */
export const findValues = (whole: string): readonly FoundValue[] => {
  const text = whole.slice(0, MOST_LETTERS);
  const found: FoundValue[] = [];
  const free = (from: number, to: number) => found.every((v) => to <= v.from || from >= v.to);
  const add = (value: FoundValue | undefined) => {
    if (value && free(value.from, value.to)) found.push(value);
  };
  for (const match of text.matchAll(CLASS)) add(classOf(match));
  for (const match of text.matchAll(SLOPE)) add(slopeOf(match));
  for (const match of text.matchAll(SIZE)) {
    const sides = sidesOf(match);
    if (sides.length > 0 && free(match.index, match.index + match[0].length)) found.push(...sides);
  }
  for (const match of text.matchAll(FEET_INCHES)) add(feetInches(match));
  for (const match of text.matchAll(BOLT)) for (const value of boltOf(match)) add(value);
  for (const match of text.matchAll(PLAIN)) add(plainOf(match));
  return pairUnits(
    text,
    found.sort((a, b) => a.from - b.from),
  );
};

const figure = (text: string): { readonly text: string; readonly comma: boolean } => {
  const comma = /^\d+,\d{1,2}$/.test(text) || /^0,\d+$/.test(text);
  const plain = text.replace(/ ?[⁄/] ?/, "/").replace(/[–]/, "-");
  return { text: comma ? plain.replace(",", ".") : plain, comma };
};

const reading = (
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

const single = (
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

const placeOf = (match: RegExpExecArray | RegExpMatchArray) => ({
  from: match.index!,
  to: match.index! + match[0].length,
});

const classOf = (match: RegExpMatchArray): FoundValue | undefined => {
  const value = single(placeOf(match), match[1]!, "MPa");
  return value && { ...value, how: ["class"] };
};

const unitNamed = (text: string): { readonly unit: Unit; readonly times: number } | undefined => {
  const hit = unitPatterns.find(({ pattern }) => new RegExp(`^(?:${pattern})$`, "iu").test(text.trim()));
  return hit && { unit: hit.unit, times: hit.times ?? 1 };
};

const slopeOf = (match: RegExpMatchArray): FoundValue | undefined => {
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

const feetInches = (match: RegExpMatchArray): FoundValue | undefined => {
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

const boltOf = (match: RegExpMatchArray): readonly FoundValue[] => {
  const { from, to } = placeOf(match);
  const diameter = Number(match[1]);
  if (diameter < 6 || diameter > 36) return [];
  const cut = match[2] ? from + match[0].indexOf(match[2]) - 1 : to;
  const shank = single({ from, to: match[2] ? cut : to }, match[1]!, "mm");
  const long = match[2] ? single({ from: cut, to }, match[2], "mm") : undefined;
  return [
    shank && { ...shank, how: ["bolt" as const], size: { group: from, side: 0, sides: 2 } },
    long && { ...long, how: ["bolt" as const], size: { group: from, side: 1, sides: 2 } },
  ].filter((v) => v !== undefined);
};

const sidesOf = (match: RegExpMatchArray): readonly FoundValue[] => {
  const { a, b, c, ua, ub, uc } = match.groups!;
  const last = uc ?? ub ?? ua;
  const unit = last === undefined ? undefined : unitNamed(last);
  if (!unit || dimensionOf(unit.unit) !== "length" || !(c === undefined ? ub : uc)) return [];
  const texts = [[a!, ua], [b!, ub], ...(c === undefined ? [] : [[c, uc]])] as unknown as readonly (readonly [
    string,
    string | undefined,
  ])[];
  let at = match.index!;
  return texts.flatMap(([number, own], side) => {
    const from = match.index! + match[0].indexOf(number, at - match.index!);
    at = from + number.length;
    const to = side === texts.length - 1 ? match.index! + match[0].length : at;
    const value = single({ from, to }, number, unitNamed(own ?? "")?.unit ?? unit.unit);
    return value ? [{ ...value, size: { group: match.index!, side, sides: texts.length } }] : [];
  });
};

const plainOf = (match: RegExpMatchArray): FoundValue | undefined => {
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

const slopeUnit = (match: RegExpMatchArray, number: string, unit: "deg" | "%"): FoundValue | undefined => {
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

/** The two may differ by this much and still be one value, rounded. */
const ROUNDING = 0.03;

/** 6 in. (152 mm) is one value written twice; the first one counts. */
const pairUnits = (text: string, values: readonly FoundValue[]): readonly FoundValue[] => {
  const kept: FoundValue[] = [];
  for (const value of values) {
    const before = kept.at(-1);
    const between = before ? text.slice(before.to, value.from) : "";
    const twin =
      before &&
      before.dimension === value.dimension &&
      /^ ?[([/=]{1} ?(?:approx\.? |about |ca\.? )?$/.test(between) &&
      before.unit !== value.unit &&
      !value.size;
    if (!twin) kept.push(value);
    else {
      const off = Math.abs(before.high - value.high) / Math.max(before.high, value.high);
      kept[kept.length - 1] = {
        ...before,
        to: value.to,
        how: off > ROUNDING ? [...before.how, "units-disagree"] : before.how,
      };
    }
  }
  return kept;
};
