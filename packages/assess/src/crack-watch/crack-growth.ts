/** A straight line through looks at a crack. Lengths mm, time in days. */
export interface CrackGrowth {
  /** mm a day, and one standard deviation of it */
  readonly rate: number;
  readonly deviation: number;
}

/** One standard deviation of a look with a crack card, and of a tape along a crack, mm. Common practice, no source. */
export const lookError = { width: 0.05, length: 6 } as const;

/**
 * Least squares; the reading error is widened where the looks scatter more than it explains.
 * Undefined with fewer than two days.
 */
export const fitGrowth = (
  looks: readonly { readonly day: number; readonly size: number }[],
  error: number,
): CrackGrowth | undefined => {
  const n = looks.length;
  const mean = (of: (look: (typeof looks)[number]) => number): number => looks.reduce((sum, l) => sum + of(l), 0) / n;
  const [day, size] = [mean((l) => l.day), mean((l) => l.size)];
  const spread = looks.reduce((sum, l) => sum + (l.day - day) ** 2, 0);
  if (n < 2 || !(spread > 0)) return undefined;
  const rate = looks.reduce((sum, l) => sum + (l.day - day) * (l.size - size), 0) / spread;
  const misfit = looks.reduce((sum, l) => sum + (l.size - size - rate * (l.day - day)) ** 2, 0);
  const scatter = n > 2 ? Math.max(error, Math.sqrt(misfit / (n - 2))) : error;
  return { rate, deviation: scatter / Math.sqrt(spread) };
};

/** 95 %, one side. */
const SURE = 1.645;

/** growing or closing: shown beyond the reading error; still: no more than `least` in a year is possible; undecided: the looks cannot tell. */
export type CrackVerdict = "growing" | "closing" | "still" | "undecided" | "one-look" | "not-looked";

export const verdictOf = (growth: CrackGrowth | undefined, least: number): CrackVerdict => {
  if (!growth) return "one-look";
  const { rate, deviation } = growth;
  if (rate > SURE * deviation) return "growing";
  if (-rate > SURE * deviation) return "closing";
  return (Math.abs(rate) + SURE * deviation) * 365.25 <= least ? "still" : "undecided";
};
