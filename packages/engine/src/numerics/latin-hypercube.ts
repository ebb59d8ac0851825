import type { Generator } from "./generator.ts";

/**
 * `count` points in the unit cube of `dimensions`: in every dimension each of the `count` equal slices holds one point.
 * McKay, Beckman & Conover, Technometrics 21 (1979) 239-245 [mckay-beckman-conover].
 */
export const latinHypercube = (count: number, dimensions: number, next: Generator): Float64Array[] => {
  const points = Array.from({ length: count }, () => new Float64Array(dimensions));
  for (let d = 0; d < dimensions; d++) {
    const slices = shuffled(count, next);
    for (let i = 0; i < count; i++) points[i]![d] = (slices[i]! + next()) / count;
  }
  return points;
};

/** 0 .. count - 1 in random order (Fisher and Yates). */
const shuffled = (count: number, next: Generator): number[] => {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(next() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
};
