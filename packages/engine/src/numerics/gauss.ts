/**
 * Gauss-Legendre points and weights on 0..1. n points integrate polynomials of degree 2n - 1 exactly.
 * Abramowitz & Stegun, Table 25.4 [abramowitz-stegun]; found here by Newton on the Legendre polynomial.
 */
export interface Rule {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

export const gaussRule = (n: number): Rule => {
  const points = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = Math.cos((Math.PI * (n - i - 0.25)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 50; step++) {
      const [value, derivative] = legendre(n, x);
      slope = derivative;
      const change = value / derivative;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    points[i] = (1 + x) / 2;
    weights[i] = 1 / ((1 - x * x) * slope * slope);
  }
  return { points, weights };
};

/** Value and slope of the Legendre polynomial of degree n. */
const legendre = (n: number, x: number): [number, number] => {
  let before = 1;
  let value = x;
  for (let k = 2; k <= n; k++) [before, value] = [value, ((2 * k - 1) * x * value - (k - 1) * before) / k];
  return [value, (n * (x * value - before)) / (x * x - 1)];
};
