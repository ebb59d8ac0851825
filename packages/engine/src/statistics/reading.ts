/**
 * A measured value, or what is known of it. "At least": the bit was at its mark and still in concrete. "At most": it
 * dropped before the mark. "Between": read off a coarse rule.
 */
export type Reading =
  | { readonly kind: "exact"; readonly value: number }
  | { readonly kind: "at-least"; readonly value: number }
  | { readonly kind: "at-most"; readonly value: number }
  | { readonly kind: "between"; readonly low: number; readonly high: number };

/** The span in which the value lies: a point, or open to one side. */
export const spanOf = (reading: Reading): { readonly low: number; readonly high: number } => {
  switch (reading.kind) {
    case "exact":
      return { low: reading.value, high: reading.value };
    case "at-least":
      return { low: reading.value, high: Number.POSITIVE_INFINITY };
    case "at-most":
      return { low: Number.NEGATIVE_INFINITY, high: reading.value };
    case "between":
      return { low: Math.min(reading.low, reading.high), high: Math.max(reading.low, reading.high) };
  }
};
