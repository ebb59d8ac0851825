/** Every bar of the pour at its place, clear of the windows. Plan, mm. */
import type { Polygon, Rect } from "@floorworthy/engine/geometry";
import { sides } from "@floorworthy/engine/geometry";
import { type BarRun, barLayout, barRun } from "@floorworthy/engine/orders";
import { boxOf } from "../layout.ts";
import type { Bar } from "./bar-sizes.ts";

/** One bar: along `direction`, at `at` of the other axis. */
export interface LaidBar {
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly run: BarRun;
}

/** One layer of parallel bars. */
export interface BarMat {
  readonly where: string;
  readonly bar: Bar;
  /** bars run along this axis */
  readonly direction: "x" | "y";
  /** from the surface to the middle of the bars, mm; undefined when not said */
  readonly depth: number | undefined;
  readonly spacing: number;
  readonly bars: readonly LaidBar[];
  /** whether the windows hold in this layer: the drill reaches it */
  readonly windows: "kept clear" | "below the drill";
}

/** The stretches of the line x = at (or y = at) inside an outline. */
const stretches = (outline: Polygon, across: "x" | "y", at: number): readonly (readonly [number, number])[] => {
  const along = across === "x" ? "y" : "x";
  const hits = sides(outline)
    .filter(({ a, b }) => a[across] <= at !== b[across] <= at)
    .map(({ a, b }) => a[along] + ((at - a[across]) / (b[across] - a[across])) * (b[along] - a[along]))
    .toSorted((p, q) => p - q);
  return hits.flatMap((v, i) => (i % 2 === 0 && hits[i + 1] !== undefined ? [[v, hits[i + 1]!] as const] : []));
};

export interface MatTask {
  readonly where: string;
  readonly outline: Polygon;
  readonly bar: Bar;
  readonly spacing: number;
  readonly depth: number | undefined;
  readonly windows: readonly Rect[];
  readonly stock: number;
  /** clear to the ends of the concrete, mm */
  readonly cover: number;
}

/** Bars of one direction over an outline: none farther from the next than the spacing but for a window between them. */
export const matAlong = (direction: "x" | "y", task: MatTask): BarMat => {
  const { where, outline, bar, spacing, depth, windows, stock, cover } = task;
  const across = direction === "x" ? "y" : "x";
  const box = boxOf(outline);
  const [low, high] = across === "x" ? [box.x0, box.x1] : [box.y0, box.y1];
  const here = windows.filter((w) => w.x0 < box.x1 && w.x1 > box.x0 && w.y0 < box.y1 && w.y1 > box.y0);
  const closed = here.map((w) =>
    across === "x" ? { from: w.x0 - low, to: w.x1 - low } : { from: w.y0 - low, to: w.y1 - low },
  );
  const { places } = barLayout(high - low, spacing, cover, closed);
  return {
    where,
    bar,
    direction,
    depth,
    spacing,
    windows: windows.length > 0 ? "kept clear" : "below the drill",
    bars: places.flatMap((place) =>
      stretches(outline, across, low + place).flatMap(([from, to]) => {
        const length = to - from - 2 * cover;
        return length > 0
          ? [{ at: low + place, from: from + cover, to: to - cover, run: barRun(length, stock, bar.lap) }]
          : [];
      }),
    ),
  };
};

/** Steel to buy: bars of stock length out of which every piece can be cut (first fit, longest first). */
export const stockBars = (mats: readonly BarMat[], stock: number): number => {
  const pieces = mats.flatMap(({ bars }) => bars.flatMap(({ run }) => cutPieces(run, stock))).toSorted((a, b) => b - a);
  const left: number[] = [];
  for (const piece of pieces) {
    const i = left.findIndex((rest) => rest >= piece - 1e-6);
    if (i < 0) left.push(stock - piece);
    else left[i] = left[i]! - piece;
  }
  return left.length;
};

/** Pieces of one run: whole stock bars and the rest. */
export const cutPieces = ({ length, pieces }: BarRun, stock: number): readonly number[] => [
  ...Array.from({ length: pieces - 1 }, () => stock),
  length - (pieces - 1) * stock,
];
