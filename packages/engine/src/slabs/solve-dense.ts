/**
 * A few linear equations A x = b by elimination with row pivoting. A and b are left as they were.
 * Fails: a singular matrix gives non-finite numbers; callers pass systems that are regular by construction.
 */
export const solveDense = (A: readonly (readonly number[])[], b: readonly number[]): readonly number[] => {
  const n = b.length;
  const rows = A.map((row, i) => [...row, b[i]!]);
  for (let j = 0; j < n; j++) {
    let pivot = j;
    for (let i = j + 1; i < n; i++) if (Math.abs(rows[i]![j]!) > Math.abs(rows[pivot]![j]!)) pivot = i;
    [rows[j], rows[pivot]] = [rows[pivot]!, rows[j]!];
    for (let i = j + 1; i < n; i++) {
      const factor = rows[i]![j]! / rows[j]![j]!;
      for (let k = j; k <= n; k++) rows[i]![k]! -= factor * rows[j]![k]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let rest = rows[i]![n]!;
    for (let k = i + 1; k < n; k++) rest -= rows[i]![k]! * x[k]!;
    x[i] = rest / rows[i]![i]!;
  }
  return x;
};
