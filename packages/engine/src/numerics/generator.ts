/** A stream of uniform numbers in [0, 1) with 32 random bits each. Calling it moves it on: keep one per purpose. */
export type Generator = () => number;

/**
 * Seeded generator: sfc32 (small fast counter, 128 bits of state), C. Doty-Humphrey's PractRand design [sfc32], its
 * state filled from the seed and stirred by twelve rounds. The same seed gives the same numbers on every machine.
 * Not for secrets. @param seed - any number; it is cut to 32 bits
 */
export const createGenerator = (seed: number): Generator => {
  let a = 0x9e3779b9;
  let b = seed | 0;
  let c = Math.floor(seed / 2 ** 32) | 0;
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let round = 0; round < 12; round++) next();
  return next;
};
