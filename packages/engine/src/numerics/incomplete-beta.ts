import { continuedFraction } from "./continued-fraction.ts";
import { logGamma } from "./log-gamma.ts";

/**
 * Regularised incomplete beta function I_x(a, b), a, b > 0, 0 <= x <= 1.
 * Continued fraction of Abramowitz & Stegun 26.5.8, used on the side of the mean where it converges fast; the other
 * side by I_x(a, b) = 1 - I_{1-x}(b, a) [abramowitz-stegun].
 */
export const incompleteBeta = (x: number, a: number, b: number): number => {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  return front * continuedFraction((n) => [n === 1 ? 1 : coefficient(n - 1, x, a, b), 1]);
};

const coefficient = (n: number, x: number, a: number, b: number): number => {
  const m = Math.floor(n / 2);
  return n % 2 === 0
    ? (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    : (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
};
