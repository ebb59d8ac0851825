/** Places of some lines of words, moved apart to at least `gap` in their order, within bounds. */
export const spread = (
  wanted: readonly number[],
  gap: number,
  [low, high]: readonly [number, number],
): readonly number[] => {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const placed = [...wanted];
  let last = low - gap;
  for (const i of order) {
    placed[i] = Math.max(wanted[i]!, last + gap);
    last = placed[i]!;
  }
  let next = high + gap;
  for (const i of order.toReversed()) {
    placed[i] = Math.min(placed[i]!, next - gap);
    next = placed[i]!;
  }
  return placed;
};
