import type { Point, Rect } from "@floorworthy/engine/geometry";

/** Values on an even grid over a rectangle, row by row; undefined where there is none. */
export interface ValueGrid {
  readonly rect: Rect;
  readonly nx: number;
  readonly ny: number;
  readonly values: readonly (number | undefined)[];
}

/**
 * The lines on which the values have one level, straight between the edges of each cell. A saddle is parted by the mean of
 * its corners. Lines end where the grid or its values end.
 */
export const contourLines = (grid: ValueGrid, level: number): readonly (readonly Point[])[] =>
  joined(cellsOf(grid).flatMap((cell) => crossings(cell, level)));

type Corner = Point & { readonly v: number };
type Piece = readonly [Point, Point];

const cellsOf = ({ rect, nx, ny, values }: ValueGrid): (readonly Corner[])[] => {
  const corner = (i: number, j: number): Corner[] => {
    const v = values[j * nx + i];
    const x = rect.x0 + ((rect.x1 - rect.x0) * i) / (nx - 1);
    return v === undefined ? [] : [{ x, y: rect.y0 + ((rect.y1 - rect.y0) * j) / (ny - 1), v }];
  };
  return Array.from({ length: (nx - 1) * (ny - 1) }, (_, n) => {
    const [i, j] = [n % (nx - 1), Math.floor(n / (nx - 1))];
    return [...corner(i, j), ...corner(i + 1, j), ...corner(i + 1, j + 1), ...corner(i, j + 1)];
  }).filter((corners) => corners.length === 4);
};

const crossings = (corners: readonly Corner[], level: number): Piece[] => {
  const cuts = corners.flatMap((a, i) => {
    const b = corners[(i + 1) % 4]!;
    if (a.v >= level === b.v >= level) return [];
    // from the lower to the higher corner, so that both cells at an edge find the same point to the last bit
    const [from, to] = a.v < b.v ? [a, b] : [b, a];
    const t = (level - from.v) / (to.v - from.v);
    return [{ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }];
  });
  if (cuts.length === 2) return [[cuts[0]!, cuts[1]!]];
  if (cuts.length !== 4) return [];
  const mean = corners.reduce((sum, { v }) => sum + v, 0) / 4;
  return mean >= level === corners[0]!.v >= level
    ? [
        [cuts[0]!, cuts[1]!],
        [cuts[2]!, cuts[3]!],
      ]
    : [
        [cuts[3]!, cuts[0]!],
        [cuts[1]!, cuts[2]!],
      ];
};

const keyOf = ({ x, y }: Point): string => `${x.toFixed(4)} ${y.toFixed(4)}`;

/** Pieces that share an end become one line. */
const joined = (pieces: readonly Piece[]): Point[][] => {
  const at = new Map<string, Set<Piece>>();
  for (const piece of pieces) for (const end of piece) at.set(keyOf(end), (at.get(keyOf(end)) ?? new Set()).add(piece));
  const left = new Set(pieces);
  const goOn = (line: Point[]): void => {
    for (;;) {
      const end = line.at(-1)!;
      const next = [...(at.get(keyOf(end)) ?? [])].find((piece) => left.has(piece));
      if (!next) return;
      left.delete(next);
      line.push(keyOf(next[0]) === keyOf(end) ? next[1] : next[0]);
    }
  };
  const lines: Point[][] = [];
  for (const piece of pieces) {
    if (!left.delete(piece)) continue;
    const line = [...piece];
    goOn(line);
    line.reverse();
    goOn(line);
    lines.push(line);
  }
  return lines;
};
