import type { Point, Rect } from "@floorworthy/engine/geometry";
import { advanceWidths, unitsPerEm } from "./advance-widths.ts";

export type Lettering = "regular" | "bold";

const tableOf = (lettering: Lettering): ReadonlyMap<string, number> =>
  new Map(
    Object.entries(advanceWidths[lettering]).flatMap(([width, letters]) =>
      [...letters].map((letter) => [letter, Number(width)] as const),
    ),
  );

const tables = { regular: tableOf("regular"), bold: tableOf("bold") };

/** A letter outside the table counts a full em: text is then set too loosely, never too tightly. */
const widthOfLetter = (letter: string, lettering: Lettering): number => tables[lettering].get(letter) ?? unitsPerEm;

/** Width of one line without kerning, in the unit of `size` (the em). */
export const widthOfText = (words: string, size: number, lettering: Lettering): number => {
  let width = 0;
  for (const letter of words) width += widthOfLetter(letter, lettering);
  return (width / unitsPerEm) * size;
};

/** Height above and depth below the baseline of capitals, figures and brackets, in ems. */
const ASCENT = 0.78;
const DESCENT = 0.2;

interface PlacedText {
  readonly at: Point;
  readonly words: string;
  readonly size: number;
  readonly align: "start" | "middle" | "end";
  readonly lettering: Lettering;
  readonly reads: "across" | "upward";
}

/** The rectangle a line of text covers. `at` is the place on the baseline that `align` speaks of. */
export const boxOfText = ({ at, words, size, align, lettering, reads }: PlacedText): Rect => {
  const width = widthOfText(words, size, lettering);
  const before = align === "start" ? 0 : align === "middle" ? width / 2 : width;
  return reads === "across"
    ? { x0: at.x - before, x1: at.x - before + width, y0: at.y - ASCENT * size, y1: at.y + DESCENT * size }
    : { x0: at.x - ASCENT * size, x1: at.x + DESCENT * size, y0: at.y + before - width, y1: at.y + before };
};
