import type { Point } from "@floorworthy/engine/geometry";

/** Those of some short words that can be read beside each other, the first ones first; none over the places kept free. */
export const apart = <T extends { readonly at: Point; readonly words: string }>(
  all: readonly T[],
  letters: number,
  free: readonly Point[] = [],
): readonly T[] => {
  const kept: T[] = [];
  for (const next of all) {
    const clashes = (at: Point, room: number) =>
      Math.abs(at.x - next.at.x) < (room + wide(next.words, letters)) / 2 && Math.abs(at.y - next.at.y) < letters;
    const full = kept.some((other) => clashes(other.at, wide(other.words, letters)));
    if (!full && !free.some((at) => clashes(at, letters))) kept.push(next);
  }
  return kept;
};

const wide = (words: string, letters: number): number => ((words.length + 1) * letters) / 2;
