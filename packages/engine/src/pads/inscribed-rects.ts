/** Axis-parallel rectangles drawn inside any outline, for a plate solver whose thick zones are rectangles. */
import type { Point, Polygon, Rect } from "../geometry/index.ts";

/**
 * Bands across the outline, each a rectangle inside it, chosen so that together they cover as much of it as they can: less
 * thick concrete than is poured, so a stress is not flattered. A rectangle along the walls comes back as itself.
 *
 * Method: the sweep runs in the direction in which every cross-section is one piece; dynamic programming over the
 * corners finds the best `bands` bands (exact among bands that begin and end at corners).
 * @param bands - how many rectangles at most
 * @returns nothing when neither direction has cross-sections of one piece
 */
export const inscribedRects = (outline: Polygon, bands = 6): readonly Rect[] => {
  const across = profileOf(outline);
  if (across) return bestBands(across, bands).map(([x0, x1, y0, y1]) => ({ x0, x1, y0, y1 }));
  const along = profileOf(outline.map(({ x, y }) => ({ x: y, y: x })));
  return along ? bestBands(along, bands).map(([y0, y1, x0, x1]) => ({ x0, x1, y0, y1 })) : [];
};

interface Profile {
  /** corners in order of the sweep */
  readonly at: readonly number[];
  /** between corner i and the next: the largest interval that fits the whole way */
  readonly low: readonly number[];
  readonly high: readonly number[];
}

const profileOf = (outline: Polygon): Profile | undefined => {
  const at = merged(outline.map(({ x }) => x));
  const [low, high]: [number[], number[]] = [[], []];
  for (let i = 0; i + 1 < at.length; i++) {
    const width = at[i + 1]! - at[i]!;
    // just inside both ends: an outline's own upright sides are not cut through
    const ends = [cut(outline, at[i]! + width * 1e-6), cut(outline, at[i + 1]! - width * 1e-6)];
    if (ends.some((end) => end.length !== 2)) return undefined;
    low.push(Math.max(ends[0]![0]!, ends[1]![0]!));
    high.push(Math.min(ends[0]![1]!, ends[1]![1]!));
  }
  return { at, low, high };
};

/** Ordinates at which the line x = at crosses the outline, in order. */
const cut = (outline: Polygon, at: number): number[] =>
  outline
    .flatMap((a, i): number[] => {
      const b: Point = outline[(i + 1) % outline.length]!;
      return a.x <= at !== b.x <= at ? [a.y + ((at - a.x) / (b.x - a.x)) * (b.y - a.y)] : [];
    })
    .toSorted((a, b) => a - b);

const merged = (values: readonly number[]): number[] =>
  values.toSorted((a, b) => a - b).filter((v, i, all) => i === 0 || v - all[i - 1]! > 1e-6);

type Band = readonly [from: number, to: number, low: number, high: number];

const bestBands = ({ at, low, high }: Profile, bands: number): Band[] => {
  const n = at.length;
  // best[b][j]: most area left of corner j with b bands, and where the last band begins (−1: nothing ends here)
  const best = Array.from({ length: bands + 1 }, () => new Float64Array(n));
  const from = Array.from({ length: bands + 1 }, () => new Int32Array(n).fill(-1));
  for (let b = 1; b <= bands; b++)
    for (let j = 1; j < n; j++) {
      best[b]![j] = best[b]![j - 1]!;
      let [lo, hi] = [-Infinity, Infinity];
      for (let i = j - 1; i >= 0; i--) {
        [lo, hi] = [Math.max(lo, low[i]!), Math.min(hi, high[i]!)];
        const area = best[b - 1]![i]! + (at[j]! - at[i]!) * Math.max(0, hi - lo);
        if (area > best[b]![j]! + 1e-6) [best[b]![j], from[b]![j]] = [area, i];
      }
    }
  const found: Band[] = [];
  for (let [b, j] = [bands, n - 1]; b > 0 && j > 0; ) {
    const i = from[b]![j]!;
    if (i < 0) {
      j--;
      continue;
    }
    const [lo, hi] = [Math.max(...low.slice(i, j)), Math.min(...high.slice(i, j))];
    found.push([at[i]!, at[j]!, lo, hi]);
    [b, j] = [b - 1, i];
  }
  return found.reverse();
};
