/**
 * A symmetric band matrix, lower half, stored by rows and padded so that a 4 × 4 blocked kernel never has to ask
 * where the band ends: the order and the half-band are rounded up to multiples of four, the spare rows are rows of
 * the identity and the spare columns are zero.
 */
export interface BandMatrix {
  /** unknowns the caller asked for */
  readonly order: number;
  /** `order` rounded up to a multiple of 4 */
  readonly rows: number;
  /** half-band rounded up to a multiple of 4: entry (i, j) may be nonzero for i - halfBand <= j <= i */
  readonly halfBand: number;
  /** length of one stored row, `halfBand + 4` */
  readonly width: number;
  /** entry (i, j), j <= i, stands at `i * width + halfBand + 3 + j - i` */
  readonly values: Float64Array;
}

/** A zero matrix of the given order; entries up to `halfBand` below the diagonal can be added. */
export const bandMatrix = (order: number, halfBand: number): BandMatrix => {
  const rows = Math.ceil(order / 4) * 4;
  const half = Math.ceil(halfBand / 4) * 4;
  const width = half + 4;
  const values = new Float64Array(rows * width);
  for (let i = order; i < rows; i++) values[i * width + half + 3] = 1;
  return { order, rows, halfBand: half, width, values };
};

/** Where entry (i, j), j <= i, stands in `values`. */
export const bandIndex = (matrix: BandMatrix, i: number, j: number): number =>
  i * matrix.width + matrix.halfBand + 3 + j - i;

export const copyBand = (matrix: BandMatrix): BandMatrix => ({ ...matrix, values: matrix.values.slice() });

/** y = A x for the symmetric matrix whose lower half is stored. */
export const multiplyBand = (matrix: BandMatrix, x: Float64Array): Float64Array => {
  const { order, halfBand, width, values } = matrix;
  const y = new Float64Array(order);
  for (let i = 0; i < order; i++) {
    const at = i * width + halfBand + 3 - i;
    const xi = x[i]!;
    let sum = values[at + i]! * xi;
    for (let j = Math.max(0, i - halfBand); j < i; j++) {
      const a = values[at + j]!;
      sum += a * x[j]!;
      y[j]! += a * xi;
    }
    y[i]! += sum;
  }
  return y;
};
