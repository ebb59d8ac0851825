/** A value read at a point of the plan; any one unit of length for the place, any for the value. */
export interface PlacedValue {
  readonly x: number;
  readonly y: number;
  readonly value: number;
}

/** Two levels in a set of readings, which must then never be averaged. Indices refer to the readings given. */
export type StepFinding =
  | { readonly kind: "one-level" }
  | {
      /** "step": a straight line in plan parts the two; "mixed": two levels, but not parted by a line */
      readonly kind: "step" | "mixed";
      readonly low: readonly number[];
      readonly high: readonly number[];
      /** lowest of the high less highest of the low */
      readonly gap: number;
      /** difference of the means */
      readonly difference: number;
    };

/**
 * Looks for two levels: the widest gap between neighbouring values is at least `leastGap` and at least twice every other
 * gap between neighbours, or at least twice `leastGap` whatever the others are. How often it is wrong is measured in tests/laws/thickness-step.
 * @param leastGap - 1/2 in (12.7 mm) for slab thickness: common practice, no source
 */
export const findThicknessStep = (readings: readonly PlacedValue[], leastGap: number): StepFinding => {
  const order = readings.map((_, i) => i).sort((a, b) => readings[a]!.value - readings[b]!.value);
  const gaps = order.slice(1).map((i, k) => readings[i]!.value - readings[order[k]!]!.value);
  const gap = Math.max(0, ...gaps);
  const cut = gaps.indexOf(gap) + 1;
  const others = Math.max(0, ...gaps.filter((_, k) => k !== cut - 1));
  if (gap < leastGap || gap < Math.min(2 * others, 2 * leastGap)) return { kind: "one-level" };
  const [low, high] = [order.slice(0, cut), order.slice(cut)];
  const mean = (set: readonly number[]): number => set.reduce((sum, i) => sum + readings[i]!.value, 0) / set.length;
  return {
    kind: partedByLine(readings, low, high) ? "step" : "mixed",
    low,
    high,
    gap,
    difference: mean(high) - mean(low),
  };
};

const partedByLine = (points: readonly PlacedValue[], a: readonly number[], b: readonly number[]): boolean => {
  for (let degree = 0; degree < 360; degree++) {
    const [c, s] = [Math.cos((degree * Math.PI) / 180), Math.sin((degree * Math.PI) / 180)];
    const along = (i: number): number => c * points[i]!.x + s * points[i]!.y;
    if (Math.max(...a.map(along)) < Math.min(...b.map(along))) return true;
  }
  return false;
};
