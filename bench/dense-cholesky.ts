/** A = L Lᵀ without any use of the band: the reference of bench/plates.ts. */
export const denseCholesky = (n: number, entry: (i: number, j: number) => number): Float64Array => {
  const L = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = entry(i, j);
      for (let k = 0; k < j; k++) sum -= L[i * n + k]! * L[j * n + k]!;
      L[i * n + j] = i === j ? Math.sqrt(sum) : sum / L[j * n + j]!;
    }
  return L;
};
