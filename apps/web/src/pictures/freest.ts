/** Where some words may stand: the end or the start of their line. */
export interface WordPlace {
  readonly x: number;
  readonly y: number;
  readonly textAnchor: "start" | "end";
}

/** Width of a letter and height of a line of the pictures' type. */
const [WIDE, HIGH] = [6.4, 12];

/** Of some places for words, the one over the fewest points of the curves; the first of equals. */
export const freest = (
  places: readonly WordPlace[],
  words: string,
  points: readonly { readonly x: number; readonly y: number }[],
): WordPlace => {
  const wide = words.length * WIDE;
  const over = ({ x, y, textAnchor }: WordPlace): number => {
    const from = textAnchor === "end" ? x - wide : x;
    return points.filter((p) => p.x >= from && p.x <= from + wide && p.y <= y + 3 && p.y >= y - HIGH).length;
  };
  return places.reduce((best, place) => (over(place) < over(best) ? place : best));
};
