import type { GlyphRun } from "../glyphs/index.ts";
import { plainLetters } from "./plain-letters.ts";
import { median, type Segment } from "./segment.ts";
import type { Turning } from "./turning.ts";

/** A gap wider than this (in letter heights) always parts two segments; the narrow one parts them unless the gaps are even. */
const WIDE = 1.6;
const NARROW = 0.9;
/** A gap that is a space between words. */
const SPACE = 0.12;

/** Dots or spaces that lead the eye from a label to its value. */
const LEADERS = /(?:\s*[.·_…]){4,}\s*|\s{3,}/g;

/** Runs of one direction as segments: words that belong to one another by their gaps. */
export const toSegments = (runs: readonly GlyphRun[], turning: Turning): readonly Segment[] =>
  baselines(runs.flatMap((run) => piecesOf(run, turning))).flatMap(joinRow);

const piecesOf = (run: GlyphRun, turning: Turning): readonly Segment[] => {
  const { u, v } = turning.toReading(run.x, run.y);
  const text = plainLetters(run.text);
  const step = run.width / Math.max(1, text.length);
  const pieces: Segment[] = [];
  let start = 0;
  const add = (end: number) => {
    const part = text.slice(start, end);
    if (part.trim() !== "") {
      const lead = part.length - part.trimStart().length;
      pieces.push({
        text: part.trim(),
        from: u + (start + lead) * step,
        to: u + (start + part.trimEnd().length) * step,
        v,
        size: run.size,
      });
    }
  };
  for (const { 0: found, index } of text.matchAll(LEADERS)) {
    add(index);
    start = index + found.length;
  }
  add(text.length);
  return pieces;
};

const baselines = (pieces: readonly Segment[]): readonly (readonly Segment[])[] => {
  const rows: Segment[][] = [];
  for (const piece of [...pieces].sort((a, b) => a.v - b.v || a.from - b.from)) {
    const home = rows.slice(-6).findLast((row) => row.some((other) => sameLine(piece, other)));
    if (home) home.push(piece);
    else rows.push([piece]);
  }
  return rows.map((row) => row.sort((a, b) => a.from - b.from));
};

/** One baseline; or a raised or lowered figure that touches a larger letter. */
const sameLine = (a: Segment, b: Segment): boolean => {
  const [low, high] = [Math.min(a.size, b.size), Math.max(a.size, b.size)];
  const off = Math.abs(a.v - b.v);
  if (off < 0.3 * low) return true;
  const gap = Math.max(a.from, b.from) - Math.min(a.to, b.to);
  return low < 0.8 * high && off < 0.6 * high && gap < 0.3 * high && gap > -high;
};

const joinRow = (row: readonly Segment[]): readonly Segment[] => {
  const gaps = row.slice(1).map((piece, i) => piece.from - row[i]!.to);
  const middle = median(gaps);
  const even = gaps.length >= 3 && Math.max(...gaps) < 1.8 * middle;
  const joined: Segment[] = [];
  for (const piece of row) {
    const open = joined.at(-1);
    const gap = open ? piece.from - open.to : 0;
    const size = open ? Math.max(open.size, piece.size) : piece.size;
    const parts = gap > WIDE * size || (gap > NARROW * size && !even);
    if (!open || parts) joined.push(piece);
    else joined[joined.length - 1] = { ...joinTwo(open, piece, gap > SPACE * size), to: Math.max(open.to, piece.to) };
  }
  return joined;
};

/** A smaller figure after a figure is the top of a stacked fraction (4 and 1/2, not 41/2), a raised one a note's mark or a power. */
const joinTwo = (open: Segment, piece: Segment, spaced: boolean): Segment => {
  const raised = piece.size < 0.85 * open.size && open.v - piece.v > 0.15 * open.size;
  const mark = raised && /^\d$/.test(piece.text) && !/\d$/.test(open.text);
  const fraction = !mark && piece.size < 0.85 * open.size && /\d$/.test(open.text) && /^\d/.test(piece.text);
  const larger = piece.size > open.size ? piece : open;
  const text = mark ? "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(piece.text)]! : piece.text;
  return {
    ...open,
    text: open.text + ((spaced && !mark) || fraction ? " " : "") + text,
    v: larger.v,
    size: larger.size,
  };
};
