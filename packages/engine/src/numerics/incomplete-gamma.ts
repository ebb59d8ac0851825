import { continuedFraction } from "./continued-fraction.ts";
import { logGamma } from "./log-gamma.ts";

/**
 * Regularised incomplete gamma function, both tails: `lower` = P(a, x), `upper` = Q(a, x) = 1 - P, each with full
 * relative accuracy where it is the smaller. a > 0, x >= 0.
 * Abramowitz & Stegun 6.5.29 (series, x < a + 1) and 6.5.31 (continued fraction, otherwise) [abramowitz-stegun].
 */
export const incompleteGamma = (a: number, x: number): { readonly lower: number; readonly upper: number } => {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x === Number.POSITIVE_INFINITY) return { lower: 1, upper: 0 };
  const front = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; term > sum * 1e-17; n++) {
      term *= x / (a + n);
      sum += term;
    }
    return { lower: front * sum, upper: 1 - front * sum };
  }
  const upper =
    front * continuedFraction((n) => (n === 1 ? [1, x + 1 - a] : [-(n - 1) * (n - 1 - a), x + 2 * n - 1 - a]));
  return { lower: 1 - upper, upper };
};
