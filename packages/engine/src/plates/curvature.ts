import { type Axis, evaluate, spanLength } from "./axis.ts";

/**
 * The second derivative of a cubic spline is only exact to the second order, save at two points of every span, where it
 * is exact to the third or fourth: Barlow, IJNME 10 (1976) 243-251 [barlow-1976]. Elsewhere it is taken here from the cubic
 * through the four nearest of those points, never reaching across a line where the floor is not smooth.
 */
export const curvaturePoints = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)] as const;

/** Functions that one such value may draw on. */
export const curvatureWidth = 6;

/**
 * Weights of the coefficients in the second derivative at local point t of span s: `curvatureWidth` numbers into
 * out[at...]. Returns the function that the first of them belongs to.
 */
export const curvatureWeights = (axis: Axis, s: number, t: number, out: Float64Array, at = 0): number => {
  const [from, to] = smoothStretch(axis, s);
  const count = Math.min(4, 2 * (to - from));
  const wanted = t < curvaturePoints[0] ? 2 * s - 2 : t > curvaturePoints[1] ? 2 * s : 2 * s - 1;
  const start = Math.min(Math.max(wanted, 2 * from), 2 * to - count);
  const x = axis.breaks[s]! + t * spanLength(axis, s);
  const first = axis.first[start >> 1]!;
  out.fill(0, at, at + curvatureWidth);
  for (let g = start; g < start + count; g++) {
    let weight = 1;
    for (let o = start; o < start + count; o++)
      if (o !== g) weight *= (x - place(axis, o)) / (place(axis, g) - place(axis, o));
    evaluate(axis, g >> 1, curvaturePoints[g & 1]!, 2, four);
    const shift = at + axis.first[g >> 1]! - first;
    for (let a = 0; a < 4; a++) out[shift + a]! += weight * four[a]!;
  }
  return first;
};

const four = new Float64Array(4);

const place = (axis: Axis, g: number): number =>
  axis.breaks[g >> 1]! + curvaturePoints[g & 1]! * spanLength(axis, g >> 1);

/** The spans round s, at most two on either side, that hang together by single knots: from..to, `to` excluded. */
const smoothStretch = (axis: Axis, s: number): [number, number] => {
  let [from, to] = [s, s + 1];
  while (from > s - 2 && from > 0 && axis.first[from]! - axis.first[from - 1]! === 1) from--;
  while (to < s + 3 && to < axis.spans && axis.first[to]! - axis.first[to - 1]! === 1) to++;
  return [from, to];
};
