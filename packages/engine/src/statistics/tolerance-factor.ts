import {
  chiSquareUpperTail,
  findRoot,
  gaussRule,
  noncentralTQuantile,
  normalCdf,
  normalDensity,
  normalQuantile,
} from "../numerics/index.ts";

/**
 * k such that mean - k·spread of `count` normal values lies, with probability `confidence`, below all but a part
 * 1 - `content` of the population (and mean + k·spread above all but that part).
 * k = t'(confidence; n - 1, z√n)/√n, t' the noncentral t: Owen (1958), Natrella (1963) [natrella].
 */
export const oneSidedToleranceFactor = (count: number, content: number, confidence: number): number =>
  noncentralTQuantile(confidence, count - 1, normalQuantile(content) * Math.sqrt(count)) / Math.sqrt(count);

/**
 * k such that mean ± k·spread holds, with probability `confidence`, at least the part `content` of the population.
 * Exact: the coverage condition integrated over the sample mean (Wald and Wolfowitz 1946, without their approximation).
 */
export const twoSidedToleranceFactor = (count: number, content: number, confidence: number): number => {
  const nodes = meansOf(count).map(({ offset, weight }) => ({ weight, half: halfWidth(offset, content) }));
  const shortfall = (k: number): number =>
    nodes.reduce(
      (sum, node) => sum + node.weight * chiSquareUpperTail((count - 1) * (node.half / k) ** 2, count - 1),
      0,
    ) - confidence;
  let high = 2 * normalQuantile((1 + content) / 2);
  while (shortfall(high) < 0) high *= 2;
  return findRoot(shortfall, high / 64, high, 1e-10, 100);
};

/** Offsets of the sample mean from the population's, in population spreads, with their probabilities. */
const meansOf = (count: number): { offset: number; weight: number }[] => {
  const rule = gaussRule(48);
  return Array.from(rule.points, (point, i) => {
    const u = 9 * point;
    return { offset: u / Math.sqrt(count), weight: 2 * 9 * rule.weights[i]! * normalDensity(u) };
  });
};

/** r with Φ(offset + r) - Φ(offset - r) = content. */
const halfWidth = (offset: number, content: number): number =>
  findRoot(
    (r) => normalCdf(offset + r) - normalCdf(offset - r) - content,
    0,
    Math.abs(offset) + normalQuantile((1 + content) / 2) + 1,
    1e-13,
    100,
  );
