/**
 * Derivatives of the Kelvin functions ker and kei of order zero, from K₀'(z) = −K₁(z), z = x e^{iπ/4}:
 * ker'x + i kei'x = −e^{iπ/4} K₁(z).
 *
 * Method: ascending series up to x = 8, where at least eight digits survive the cancellation, Abramowitz & Stegun 9.6.11;
 * beyond, the asymptotic series 9.7.2 to six terms [abramowitz-stegun]. Needs x > 0.
 */
import { type Complex, exponentialOf, logarithmOf, product, scaled, sum } from "./complex.ts";

const EULER = 0.5772156649015329;

export const kelvinDerivatives = (x: number): { readonly ker: number; readonly kei: number } => {
  const turn = exponentialOf([0, Math.PI / 4]);
  const [ker, kei] = scaled(product(turn, x > 8 ? asymptotic(scaled(turn, x), x) : ascending(scaled(turn, x), x)), -1);
  return { ker, kei };
};

/** K₁(z), |z| = x. */
const ascending = (z: Complex, x: number): Complex => {
  const quarter = scaled(product(z, z), 0.25);
  let power: Complex = [1, 0]; // (z²/4)^m / (m! (m+1)!)
  let plain: Complex = [0, 0]; // 2 I₁ / z
  let digamma: Complex = [0, 0];
  let psi = 1 - 2 * EULER; // ψ(m+1) + ψ(m+2)
  for (let m = 0; m < 60; m++) {
    plain = sum(plain, power);
    digamma = sum(digamma, scaled(power, psi));
    psi += 1 / (m + 1) + 1 / (m + 2);
    power = scaled(product(power, quarter), 1 / ((m + 1) * (m + 2)));
  }
  const half = scaled(z, 0.5);
  const first: Complex = scaled([z[0], -z[1]], 1 / (x * x)); // 1/z
  return sum(first, sum(product(product(logarithmOf(half), half), plain), scaled(product(half, digamma), -0.5)));
};

const asymptotic = (z: Complex, x: number): Complex => {
  const inverse: Complex = scaled([z[0], -z[1]], 1 / (x * x));
  let term: Complex = [1, 0];
  let series: Complex = term;
  for (let m = 1; m < 6; m++) {
    term = scaled(product(term, inverse), (4 - (2 * m - 1) ** 2) / (8 * m));
    series = sum(series, term);
  }
  const [logx, angle] = logarithmOf(z);
  const root = exponentialOf([(Math.log(Math.PI / 2) - logx) / 2 - z[0], -angle / 2 - z[1]]);
  return product(root, series);
};
