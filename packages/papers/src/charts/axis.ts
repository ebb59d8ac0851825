/** From a value to a place on the paper along one straight axis. */
export interface Axis {
  readonly at: (value: number) => number;
  readonly low: number;
  readonly high: number;
}

/** @param from - place of `low`, mm of paper; `to` of `high` */
export const axis = (low: number, high: number, from: number, to: number): Axis => {
  const span = high > low ? high - low : 1;
  return { low, high, at: (value) => from + ((value - low) / span) * (to - from) };
};

const DAY = 86_400_000;

/** A calendar date as days since 1970, for an axis of time. */
export const dayNumber = (date: string): number => Math.round(Date.parse(date) / DAY);

/** First days of the years in a span; every second or fifth year where they would crowd. */
export const yearTicks = (
  low: number,
  high: number,
  most: number,
): readonly { readonly day: number; readonly year: number }[] => {
  const first = new Date(low * DAY).getUTCFullYear() + 1;
  const last = new Date(high * DAY).getUTCFullYear();
  const years = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
  const step = [1, 2, 5, 10].find((s) => years.length / s <= most) ?? 20;
  return years
    .filter((year) => year % step === 0 || step === 1)
    .map((year) => ({ year, day: Date.UTC(year, 0, 1) / DAY }));
};
