/**
 * a1/(b1 + a2/(b2 + ...)) by Lentz's method in Thompson and Barnett's form, J. Comput. Phys. 64 (1986) 490-509
 * [thompson-barnett]. `term(n)` gives [a_n, b_n] for n = 1, 2, ...
 * Fails: never; after 10,000 terms the last value is returned.
 */
export const continuedFraction = (term: (n: number) => readonly [number, number]): number => {
  const tiny = 1e-300;
  let value = tiny;
  let c = value;
  let d = 0;
  for (let n = 1; n <= 10_000; n++) {
    const [a, b] = term(n);
    d = b + a * d;
    d = 1 / (d === 0 ? tiny : d);
    c = b + a / c;
    if (c === 0) c = tiny;
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return value;
};
