/**
 * A root of f between a and b, f(a) and f(b) of opposite sign: regula falsi with the Illinois halving, which keeps the
 * bracket. Dowell & Jarratt, BIT 11 (1971) 168-174 [dowell-jarratt].
 * Fails: never; after `steps` the best point so far is returned.
 */
export const findRoot = (f: (x: number) => number, a: number, b: number, tolerance = 1e-12, steps = 60): number => {
  let [x0, x1] = [a, b];
  let [f0, f1] = [f(a), f(b)];
  if (f0 === 0) return x0;
  for (let step = 0; step < steps && f1 !== 0 && Math.abs(x1 - x0) > tolerance * Math.max(1, Math.abs(x1)); step++) {
    const x = x1 - (f1 * (x1 - x0)) / (f1 - f0);
    const value = f(x);
    if (value * f1 < 0) [x0, f0] = [x1, f1];
    else f0 /= 2;
    [x1, f1] = [x, value];
  }
  return x1;
};
