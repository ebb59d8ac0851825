import { median, rowsOf, type Segment } from "./segment.ts";

/** Text columns need this many lines on each side. */
const FEW_LINES = 4;
/** Lines shorter than this are labels, not text. */
const TEXT_LETTERS = 20;

/**
 * Parts a page into regions that are read one after the other. A region is parted where a blank strip runs between two
 * blocks of running text; labels beside values stay together.
 */
export const readingRegions = (segments: readonly Segment[], depth = 0): readonly (readonly Segment[])[] => {
  if (depth > 3 || segments.length < 2 * FEW_LINES) return [segments];
  const gutter = findGutter(segments);
  if (gutter === undefined) return [segments];
  return bandsOf(segments, gutter).flatMap((band) => {
    if (band.some((s) => s.from < gutter && s.to > gutter)) return [band];
    const left = band.filter((s) => s.to <= gutter);
    const right = band.filter((s) => s.from >= gutter);
    if (left.length === 0 || right.length === 0) return [band];
    return [...readingRegions(left, depth + 1), ...readingRegions(right, depth + 1)];
  });
};

/** Runs of lines that cross the strip, and runs that do not. */
const bandsOf = (segments: readonly Segment[], gutter: number): readonly (readonly Segment[])[] => {
  const bands: { crossing: boolean; list: Segment[] }[] = [];
  for (const row of rowsOf(segments)) {
    const crossing = row.segments.some((s) => s.from < gutter && s.to > gutter);
    const open = bands.at(-1);
    if (open && open.crossing === crossing) open.list.push(...row.segments);
    else bands.push({ crossing, list: [...row.segments] });
  }
  return bands.map(({ list }) => list);
};

/** Where a column of text begins: an edge that many lines share, with running text on both sides of it. */
const findGutter = (segments: readonly Segment[]): number | undefined => {
  const starts = new Map<number, number>();
  for (const { from } of segments) starts.set(Math.round(from), (starts.get(Math.round(from)) ?? 0) + 1);
  const edges = [...starts].filter(([, count]) => count >= 3).sort((a, b) => b[1] - a[1]);
  for (const [edge] of edges) {
    const gutter = edge - 3;
    const right = segments.filter((s) => s.from >= gutter);
    const left = segments.filter((s) => s.to <= gutter);
    const aligned = right.filter((s) => Math.abs(s.from - edge) < 3);
    if (left.length < 2 || aligned.length < FEW_LINES) continue;
    const crossing = segments.length - right.length - left.length;
    if (crossing > 0.5 * (left.length + right.length)) continue;
    if (isTextColumns(left, aligned)) return gutter;
  }
  return undefined;
};

const letters = (list: readonly Segment[]): number => median(list.map(({ text }) => text.length));

const isTextColumns = (left: readonly Segment[], right: readonly Segment[]): boolean => {
  const [top, low] = [Math.min(...right.map(({ v }) => v)), Math.max(...right.map(({ v }) => v))];
  const beside = left.filter(({ v, size }) => v >= top - 3 * size && v <= low + 3 * size);
  const paired = right.filter((r) => left.some((l) => Math.abs(l.v - r.v) < 0.35 * r.size)).length / right.length;
  const bothText = beside.length >= FEW_LINES && letters(beside) >= TEXT_LETTERS && letters(right) >= TEXT_LETTERS;
  const marginKeys = paired < 0.6 && letters(right) >= 2 * TEXT_LETTERS;
  return (bothText && isFilled(beside)) || marginKeys;
};

/** Running text fills its lines; a list of labels does not. */
const isFilled = (list: readonly Segment[]): boolean => {
  const widths = list.map(({ from, to }) => to - from);
  const widest = Math.max(...widths);
  return widths.filter((width) => width > 0.75 * widest).length >= 0.4 * widths.length;
};
