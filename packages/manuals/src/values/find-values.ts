import type { FoundValue } from "./found-value.ts";
import { CLASS, classOf, FEET_INCHES, feetInches, PLAIN, plainOf } from "./plain-values.ts";
import { BOLT, boltOf, SIZE, sidesOf } from "./sizes.ts";
import { SLOPE, slopeOf } from "./slopes.ts";

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
