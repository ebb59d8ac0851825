import type { Point } from "@floorworthy/engine/geometry";
import type { Dimension } from "../drawing/drawing.ts";
import { widthOfText } from "../drawing/text-width.ts";
import { printFeet, type UnitSystem } from "../print/measure.ts";

interface Chain {
  readonly axis: "x" | "y";
  /** places along the axis, model mm, any order */
  readonly stops: readonly number[];
  readonly base: number;
  /** distance of the dimension line from the base, mm of paper; grows outward by as many rows as are needed */
  readonly offsetPaper: number;
  /** which side of the base: -1 above or left, 1 below or right */
  readonly side: -1 | 1;
  readonly ratio: number;
  readonly units: UnitSystem;
  readonly tag?: string;
}

export const FIGURES = 2.2;
const ROW = FIGURES + 0.5;

interface Figure {
  readonly from: number;
  readonly to: number;
  readonly words: string;
  readonly row: number;
}

/** Rows so that no two figures touch and a figure wider than its span steps off the line. */
const rowed = (stops: readonly number[], ratio: number, units: UnitSystem): readonly Figure[] => {
  const ends: number[] = [];
  return stops.slice(1).map((to, i) => {
    const from = stops[i]!;
    const words = printFeet(to - from, units);
    const half = widthOfText(words, FIGURES, "regular") / 2 + 0.5;
    const middle = (from + to) / 2 / ratio;
    let row = half * 2 > (to - from) / ratio ? 1 : 0;
    while ((ends[row] ?? Number.NEGATIVE_INFINITY) > middle - half) row++;
    ends[row] = middle + half;
    return { from, to, words, row };
  });
};

/** Dimensions end to end through the stops, and how far out they reach on the paper. */
export const chain = ({
  axis,
  stops,
  base,
  offsetPaper,
  side,
  ratio,
  units,
  tag = "dimensions",
}: Chain): { items: readonly Dimension[]; reach: number } => {
  const sorted = [...new Set(stops.filter(Number.isFinite).map((s) => Math.round(s * 1000) / 1000))].sort(
    (a, b) => a - b,
  );
  const apart = sorted.filter((s, i) => i === 0 || s - sorted[i - 1]! > 3);
  const figures = rowed(apart, ratio, units);
  const rows = Math.max(0, ...figures.map((f) => f.row));
  const inward = side === 1 ? rows * ROW : 0;
  const at = (s: number): Point => (axis === "x" ? { x: s, y: base } : { x: base, y: s });
  const items = figures.map(
    ({ from, to, words, row }): Dimension => ({
      kind: "dimension",
      tag,
      axis,
      from: at(from),
      to: at(to),
      base,
      offsetPaper: side * (offsetPaper + inward),
      words,
      row,
      size: FIGURES,
    }),
  );
  return { items, reach: offsetPaper + (side === 1 ? inward + 1 : rows * ROW + 0.7 + FIGURES) };
};
