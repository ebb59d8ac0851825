/**
 * Sobol's low-discrepancy points with the direction numbers of Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635-2654
 * [joe-kuo], dimensions 1 to 21.
 *
 * Each row is [degree, inner coefficients of the primitive polynomial, m1, m2, ...]; dimension 1 is van der Corput's.
 */
const directions: readonly (readonly number[])[] = [
  [1, 0, 1],
  [2, 1, 1, 3],
  [3, 1, 1, 3, 1],
  [3, 2, 1, 1, 1],
  [4, 1, 1, 1, 3, 3],
  [4, 4, 1, 3, 5, 13],
  [5, 2, 1, 1, 5, 5, 17],
  [5, 4, 1, 1, 5, 5, 5],
  [5, 7, 1, 1, 7, 11, 19],
  [5, 11, 1, 1, 5, 1, 1],
  [5, 13, 1, 1, 1, 3, 11],
  [5, 14, 1, 3, 5, 5, 31],
  [6, 1, 1, 3, 3, 9, 7, 49],
  [6, 13, 1, 1, 1, 15, 21, 21],
  [6, 16, 1, 3, 1, 13, 27, 49],
  [6, 19, 1, 1, 1, 15, 7, 5],
  [6, 22, 1, 3, 1, 15, 13, 25],
  [6, 25, 1, 1, 5, 5, 19, 61],
  [7, 1, 1, 3, 7, 11, 23, 15, 103],
  [7, 4, 1, 3, 7, 13, 13, 15, 69],
];

export const sobolDimensions = directions.length + 1;

/**
 * The first `count` points (a power of two balances best) in the unit cube. With `shift` (one number in [0, 1) per
 * dimension) the points are digitally shifted: still a net, no longer containing the corner 0, and different shifts
 * give independent estimates. @throws a Bug above 21 dimensions
 */
export const sobolPoints = (count: number, dimensions: number, shift?: ArrayLike<number>): Float64Array[] => {
  if (dimensions < 1 || dimensions > sobolDimensions)
    throw new RangeError(`sobolPoints: dimensions = ${dimensions}, must be 1 to ${sobolDimensions}`);
  const points = Array.from({ length: count }, () => new Float64Array(dimensions));
  for (let d = 0; d < dimensions; d++) {
    const v = directionBits(d);
    let bits = shift === undefined ? 0 : Math.floor(shift[d]! * 2 ** 32) | 0;
    for (let i = 0; i < count; i++) {
      points[i]![d] = (bits >>> 0) / 2 ** 32;
      bits ^= v[trailingZeros(i + 1)]!;
    }
  }
  return points;
};

const trailingZeros = (i: number): number => 31 - Math.clz32(i & -i);

const directionBits = (dimension: number): Int32Array => {
  const v = new Int32Array(32);
  const row = directions[dimension - 1];
  if (row === undefined) return v.map((_, i) => 1 << (31 - i));
  const degree = row[0]!;
  const inner = row[1]!;
  for (let i = 0; i < degree; i++) v[i] = row[i + 2]! << (31 - i);
  for (let i = degree; i < 32; i++) {
    let bits = v[i - degree]! ^ (v[i - degree]! >>> degree);
    for (let k = 1; k < degree; k++) if ((inner >> (degree - 1 - k)) & 1) bits ^= v[i - k]!;
    v[i] = bits;
  }
  return v;
};
