/** A set of values in short, in their own unit. */
export interface Sample {
  readonly count: number;
  readonly mean: number;
  /** sample standard deviation, divisor n - 1; 0 for a single value */
  readonly spread: number;
  readonly lowest: number;
  readonly highest: number;
}

/** Describes at least one value, in the unit of the values. */
export const describeSample = (values: readonly number[]): Sample => {
  const count = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    count,
    mean,
    spread: count > 1 ? Math.sqrt(squares / (count - 1)) : 0,
    lowest: Math.min(...values),
    highest: Math.max(...values),
  };
};
