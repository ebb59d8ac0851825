import type { BreakLine } from "./break-lines.ts";

/**
 * Cubic B-splines on one axis. On every span exactly four functions live, each a cubic of the local coordinate
 * t = (x - start) / length. de Boor, A Practical Guide to Splines [de-boor].
 */
export interface Axis {
  /** ends of the spans, spans + 1 */
  readonly breaks: Float64Array;
  readonly spans: number;
  /** functions on the axis */
  readonly count: number;
  /** first function of each span; the others follow it */
  readonly first: Int32Array;
  /** coefficient of t^m of function a of span s at 16 s + 4 a + m */
  readonly cubics: Float64Array;
  /** where each function stands for x: x = Σ abscissa × N */
  readonly abscissae: Float64Array;
}

/** An axis on the given break points; knots are single save on the lines, which bring their own multiplicity. */
export const splineAxis = (breaks: readonly number[], lines: readonly BreakLine[]): Axis => {
  const multiplicity = new Map(lines.map((line) => [line.at, line.multiplicity]));
  const knots: number[] = [];
  const startKnot: number[] = [];
  breaks.forEach((at, i) => {
    for (let m = multiplicity.get(at) ?? 1; m > 0; m--) knots.push(at);
    if (i < breaks.length - 1) startKnot.push(knots.length - 1);
  });
  const spans = startKnot.length;
  const cubics = new Float64Array(16 * spans);
  startKnot.forEach((knot, s) => {
    cubics.set(spanCubics(knots, knot), 16 * s);
  });
  return {
    breaks: Float64Array.from(breaks),
    spans,
    count: knots.length - 4,
    first: Int32Array.from(startKnot, (knot) => knot - 3),
    cubics,
    abscissae: Float64Array.from(
      { length: knots.length - 4 },
      (_, i) => (knots[i + 1]! + knots[i + 2]! + knots[i + 3]!) / 3,
    ),
  };
};

/** The four cubics of the span that starts at knot j, by the recurrence of Cox and de Boor on their coefficients. */
const spanCubics = (knots: readonly number[], j: number): Float64Array => {
  const start = knots[j]!;
  const length = knots[j + 1]! - start;
  let pieces: number[][] = [[1]];
  for (let p = 1; p <= 3; p++) {
    const next: number[][] = Array.from({ length: p + 1 }, () => Array<number>(p + 1).fill(0));
    for (let a = 0; a < p; a++) {
      const left = knots[j - p + 1 + a]!;
      const right = knots[j + 1 + a]!;
      for (let m = 0; m < p; m++) {
        const c = pieces[a]![m]! / (right - left);
        next[a]![m]! += c * (right - start);
        next[a]![m + 1]! -= c * length;
        next[a + 1]![m]! += c * (start - left);
        next[a + 1]![m + 1]! += c * length;
      }
    }
    pieces = next;
  }
  return Float64Array.from(pieces.flat());
};

export const spanLength = (axis: Axis, s: number): number => axis.breaks[s + 1]! - axis.breaks[s]!;

/** The span that holds x (the right one on a break point, save at the far end); x outside is clamped. */
export const spanAt = (axis: Axis, x: number): number => {
  let low = 0;
  let high = axis.spans;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (axis.breaks[middle]! <= x) low = middle;
    else high = middle;
  }
  return low;
};

/** The `order`-th derivative with respect to x of the four functions of span s at local t, into out[at..at+3]. */
export const evaluate = (axis: Axis, s: number, t: number, order: 0 | 1 | 2, out: Float64Array, at = 0): void => {
  const length = spanLength(axis, s);
  for (let a = 0; a < 4; a++) {
    const c = 16 * s + 4 * a;
    const [c0, c1, c2, c3] = [axis.cubics[c]!, axis.cubics[c + 1]!, axis.cubics[c + 2]!, axis.cubics[c + 3]!];
    if (order === 0) out[at + a] = c0 + t * (c1 + t * (c2 + t * c3));
    else if (order === 1) out[at + a] = (c1 + t * (2 * c2 + t * 3 * c3)) / length;
    else out[at + a] = (2 * c2 + t * 6 * c3) / (length * length);
  }
};

/** `evaluate` at the same local points of every span: function a, point g of span s at (s * points + g) * 4 + a. */
export const tabulate = (axis: Axis, points: ArrayLike<number>, order: 0 | 1 | 2): Float64Array => {
  const n = points.length;
  const table = new Float64Array(axis.spans * n * 4);
  for (let s = 0; s < axis.spans; s++)
    for (let g = 0; g < n; g++) evaluate(axis, s, points[g]!, order, table, (s * n + g) * 4);
  return table;
};
