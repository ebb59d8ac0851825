/**
 * A = L Lᵀ for a symmetric positive definite band matrix, in place.
 *
 * Method: left-looking, by rows, in blocks of 4 × 4 (sixteen running sums fed by eight loads); rows are contiguous, so
 * every inner loop is a dot product. Golub & Van Loan, Matrix Computations, ch. 4 [golub-vanloan].
 * Needs: the padding of `bandMatrix`. Leaves: L in the place of A, the reciprocal pivots beside it.
 * Fails: at the first pivot that is not positive; the row tells which unknown has no stiffness.
 * Cost: order × halfBand² / 2 multiply-adds; bench/plates.ts.
 */
import type { BandFactor, BandKernel, NotPositive } from "./band-kernel.ts";
import type { BandMatrix } from "./band-matrix.ts";

const factor = (matrix: BandMatrix): BandFactor | NotPositive => {
  const { rows, halfBand, width, values: A } = matrix;
  const inverse = new Float64Array(rows);
  const shift = halfBand + 3;
  for (let i = 0; i < rows; i += 4) {
    // entry (i + m, k) stands at r_m + k
    const r0 = i * width + shift - i;
    const r1 = r0 + width - 1;
    const r2 = r1 + width - 1;
    const r3 = r2 + width - 1;
    const first = Math.max(0, i - halfBand);
    for (let j = first; j < i; j += 4) {
      const q0 = j * width + shift - j;
      const q1 = q0 + width - 1;
      const q2 = q1 + width - 1;
      const q3 = q2 + width - 1;
      let [a00, a01, a02, a03] = [0, 0, 0, 0];
      let [a10, a11, a12, a13] = [0, 0, 0, 0];
      let [a20, a21, a22, a23] = [0, 0, 0, 0];
      let [a30, a31, a32, a33] = [0, 0, 0, 0];
      for (let k = first; k < j; k++) {
        const x0 = A[r0 + k]!;
        const x1 = A[r1 + k]!;
        const x2 = A[r2 + k]!;
        const x3 = A[r3 + k]!;
        let y = A[q0 + k]!;
        a00 += x0 * y;
        a10 += x1 * y;
        a20 += x2 * y;
        a30 += x3 * y;
        y = A[q1 + k]!;
        a01 += x0 * y;
        a11 += x1 * y;
        a21 += x2 * y;
        a31 += x3 * y;
        y = A[q2 + k]!;
        a02 += x0 * y;
        a12 += x1 * y;
        a22 += x2 * y;
        a32 += x3 * y;
        y = A[q3 + k]!;
        a03 += x0 * y;
        a13 += x1 * y;
        a23 += x2 * y;
        a33 += x3 * y;
      }
      finishRow(A, inverse, j, q1, q2, q3, r0, a00, a01, a02, a03);
      finishRow(A, inverse, j, q1, q2, q3, r1, a10, a11, a12, a13);
      finishRow(A, inverse, j, q1, q2, q3, r2, a20, a21, a22, a23);
      finishRow(A, inverse, j, q1, q2, q3, r3, a30, a31, a32, a33);
    }
    const failed = factorDiagonal(A, inverse, i, first, r0, r1, r2, r3);
    if (failed >= 0) return { kind: "not-positive", row: Math.min(failed, matrix.order - 1) };
  }
  return { kind: "factor", matrix, inverseDiagonal: inverse };
};

/** Four entries of row r against the finished 4 × 4 triangle at j. */
const finishRow = (
  A: Float64Array,
  inverse: Float64Array,
  j: number,
  q1: number,
  q2: number,
  q3: number,
  r: number,
  s0: number,
  s1: number,
  s2: number,
  s3: number,
): void => {
  const at = r + j;
  const x0 = (A[at]! - s0) * inverse[j]!;
  const x1 = (A[at + 1]! - s1 - x0 * A[q1 + j]!) * inverse[j + 1]!;
  const x2 = (A[at + 2]! - s2 - x0 * A[q2 + j]! - x1 * A[q2 + j + 1]!) * inverse[j + 2]!;
  A[at] = x0;
  A[at + 1] = x1;
  A[at + 2] = x2;
  A[at + 3] = (A[at + 3]! - s3 - x0 * A[q3 + j]! - x1 * A[q3 + j + 1]! - x2 * A[q3 + j + 2]!) * inverse[j + 3]!;
};

/** The 4 × 4 triangle on the diagonal; returns the failing row or -1. */
const factorDiagonal = (
  A: Float64Array,
  inverse: Float64Array,
  i: number,
  first: number,
  r0: number,
  r1: number,
  r2: number,
  r3: number,
): number => {
  const rows = [r0, r1, r2, r3];
  for (let m = 0; m < 4; m++) {
    const r = rows[m]!;
    for (let n = 0; n <= m; n++) {
      const q = rows[n]!;
      let sum = A[r + i + n]!;
      for (let k = first; k < i + n; k++) sum -= A[r + k]! * A[q + k]!;
      if (n < m) {
        A[r + i + n] = sum * inverse[i + n]!;
        continue;
      }
      if (!(sum > 0)) return i + m;
      const pivot = Math.sqrt(sum);
      A[r + i + n] = pivot;
      inverse[i + n] = 1 / pivot;
    }
  }
  return -1;
};

const solve = ({ matrix, inverseDiagonal }: BandFactor, b: Float64Array): void => {
  const { order, halfBand, width, values: L } = matrix;
  for (let i = 0; i < order; i++) {
    const at = i * width + halfBand + 3 - i;
    let sum = b[i]!;
    for (let k = Math.max(0, i - halfBand); k < i; k++) sum -= L[at + k]! * b[k]!;
    b[i] = sum * inverseDiagonal[i]!;
  }
  for (let i = order - 1; i >= 0; i--) {
    const at = i * width + halfBand + 3 - i;
    const x = b[i]! * inverseDiagonal[i]!;
    b[i] = x;
    for (let k = Math.max(0, i - halfBand); k < i; k++) b[k]! -= L[at + k]! * x;
  }
};

/** The plain TypeScript kernel: always there, and the oracle for any faster one. */
export const plainBandKernel: BandKernel = { name: "plain", factor, solve };
