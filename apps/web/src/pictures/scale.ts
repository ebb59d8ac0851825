/** A straight scale from the span of some values onto a stretch of the picture. */
export const scaleOf = (values: readonly number[], [from, to]: readonly [number, number]) => {
  const [low, high] = spanOf(values);
  return (value: number): number => from + ((value - low) / (high - low)) * (to - from);
};

const spanOf = (values: readonly number[]): readonly [number, number] => {
  const good = values.filter(Number.isFinite);
  const [low, high] = [Math.min(...good), Math.max(...good)];
  return high > low ? [low, high] : [low - 1, high + 1];
};

/** Some five round values within the span. */
export const ticksOf = (values: readonly number[]): readonly number[] => {
  const [low, high] = spanOf(values);
  const rough = (high - low) / 5;
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((m) => m * size >= rough) ?? 10) * size;
  const first = Math.ceil(low / step - 1e-9);
  return Array.from({ length: Math.floor(high / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step);
};
