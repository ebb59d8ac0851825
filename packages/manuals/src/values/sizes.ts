import { dimensionOf } from "@floorworthy/engine/quantities";
import { ANY_UNIT, NUMBER, START } from "./figure-patterns.ts";
import type { FoundValue } from "./found-value.ts";
import { placeOf, single, unitNamed } from "./single-value.ts";

export const BOLT = /(?<![\p{L}\d])M ?(\d{1,2})(?: ?[x×] ?(\d{2,3}))?(?: ?mm)?(?![\p{L}\d/])/gu;

export const SIZE = new RegExp(
  `${START}(?<a>${NUMBER}) ?(?<ua>${ANY_UNIT})?(?: ?(?:dia(?:m(?:eter)?)?\\.?))? ?(?:[x×]|by) ?(?<b>${NUMBER}) ?(?<ub>${ANY_UNIT})?(?: ?[x×] ?(?<c>${NUMBER}) ?(?<uc>${ANY_UNIT})?)?`,
  "giu",
);

export const boltOf = (match: RegExpMatchArray): readonly FoundValue[] => {
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

export const sidesOf = (match: RegExpMatchArray): readonly FoundValue[] => {
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
