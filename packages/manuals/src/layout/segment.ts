import type { Box } from "../glyphs/index.ts";

/** Text on one baseline without a gap wider than a word space; u along the text, v down the lines, points. */
export interface Segment {
  readonly text: string;
  readonly from: number;
  readonly to: number;
  /** baseline */
  readonly v: number;
  readonly size: number;
}

/** Segments that share a baseline, from left to right. */
export interface TextRow {
  readonly segments: readonly Segment[];
  readonly v: number;
  readonly size: number;
}

const ABOVE = 0.85;
const BELOW = 0.25;

/** What the letters of some segments cover. */
export const coverOf = (segments: readonly Segment[]): Box => {
  const x = Math.min(...segments.map(({ from }) => from));
  const y = Math.min(...segments.map(({ v, size }) => v - ABOVE * size));
  const right = Math.max(...segments.map(({ to }) => to));
  const low = Math.max(...segments.map(({ v, size }) => v + BELOW * size));
  return { x, y, width: right - x, height: low - y };
};

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

/** Groups segments by baseline. */
export const rowsOf = (segments: readonly Segment[]): readonly TextRow[] => {
  const rows: { segments: Segment[]; v: number; size: number }[] = [];
  for (const segment of [...segments].sort((a, b) => a.v - b.v || a.from - b.from)) {
    const open = rows.at(-1);
    if (open && segment.v - open.v < 0.35 * Math.min(segment.size, open.size)) open.segments.push(segment);
    else rows.push({ segments: [segment], v: segment.v, size: segment.size });
  }
  return rows.map(({ segments: list, v, size }) => ({
    segments: list.sort((a, b) => a.from - b.from),
    v,
    size: Math.max(size, ...list.map((s) => s.size)),
  }));
};
