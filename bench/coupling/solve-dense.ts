/** A x = b by elimination with row exchange; for the few hundred unknowns of the coupling study. */
export const solveDense = (rows: readonly (readonly number[])[], right: readonly number[]): number[] => {
  const n = rows.length;
  const A = rows.map((row, i) => [...row, right[i]!]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(A[i]![k]!) > Math.abs(A[pivot]![k]!)) pivot = i;
    [A[k], A[pivot]] = [A[pivot]!, A[k]!];
    for (let i = k + 1; i < n; i++) {
      const factor = A[i]![k]! / A[k]![k]!;
      if (factor === 0) continue;
      for (let j = k; j <= n; j++) A[i]![j]! -= factor * A[k]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = A[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= A[i]![j]! * x[j]!;
    x[i] = sum / A[i]![i]!;
  }
  return x;
};
