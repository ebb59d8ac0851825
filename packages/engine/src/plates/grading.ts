import type { BreakLine } from "./break-lines.ts";

/** A stretch of the axis that asks for spans no longer than `size`, mm; away from it spans may grow. */
export interface Detail {
  readonly from: number;
  readonly to: number;
  readonly size: number;
}

/** How much a span may grow per unit of distance from a detail. */
const growth = 0.6;

/**
 * Break points between the break lines: span length follows the smallest of `largest` and, over all details, size plus
 * growth times distance, all divided by the fineness, but never falls below `smallest`. Every stretch between two lines
 * gets the whole number of spans that this asks for.
 */
export const gradedBreaks = (
  lines: readonly BreakLine[],
  details: readonly Detail[],
  { largest, smallest, fineness }: { largest: number; smallest: number; fineness: number },
): number[] => {
  const sizeAt = (x: number): number => {
    let size = largest;
    for (const d of details) size = Math.min(size, d.size + growth * Math.max(0, d.from - x, x - d.to));
    return Math.max(size / fineness, smallest);
  };
  const breaks = [lines[0]!.at];
  for (let i = 1; i < lines.length; i++) breaks.push(...divide(lines[i - 1]!.at, lines[i]!.at, sizeAt));
  return breaks;
};

/** The interior break points of a..b and b itself, spaced so that the integral of 1/size is the same over every span. */
const divide = (a: number, b: number, sizeAt: (x: number) => number): number[] => {
  const steps = 64;
  const step = (b - a) / steps;
  const sum = new Float64Array(steps + 1);
  for (let i = 0; i < steps; i++) sum[i + 1] = sum[i]! + step / sizeAt(a + (i + 0.5) * step);
  const spans = Math.max(1, Math.ceil(sum[steps]! - 0.01));
  const breaks: number[] = [];
  let i = 0;
  for (let n = 1; n < spans; n++) {
    const target = (n * sum[steps]!) / spans;
    while (sum[i + 1]! < target) i++;
    breaks.push(a + step * (i + (target - sum[i]!) / (sum[i + 1]! - sum[i]!)));
  }
  return [...breaks, b];
};
