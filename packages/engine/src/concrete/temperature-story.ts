/**
 * The temperature of the concrete from the pour on, as a list of stretches of constant temperature. The last one has
 * no end. Days are counted from the pour; temperatures in °C.
 */
export interface Stretch {
  /** day on which the stretch ends; Infinity for the last */
  readonly until: number;
  readonly temperature: number;
}

/** At least one stretch; an empty list is the answer to an empty log, and is refused where the log is read. */
export type TemperatureStory = readonly Stretch[];

/** The same temperature for ever. */
export const constantTemperature = (temperature: number): TemperatureStory => [
  { until: Number.POSITIVE_INFINITY, temperature },
];

/** `first` until `day`, then `after` (whose own days keep counting from the pour). */
export const untilDay = (day: number, first: TemperatureStory, after: TemperatureStory): TemperatureStory => [
  ...first.filter((_, i) => startOf(first, i) < day).map((s) => ({ ...s, until: Math.min(s.until, day) })),
  ...after.filter((s) => s.until > day),
];

const startOf = (story: TemperatureStory, i: number): number => (i === 0 ? 0 : story[i - 1]!.until);

/** The story with a heater or blanket that holds at least `temperature` from day `from` to day `to`. */
export const heated = (story: TemperatureStory, from: number, to: number, temperature: number): TemperatureStory =>
  untilDay(
    from,
    story,
    untilDay(
      to,
      story.map((s) => ({ ...s, temperature: Math.max(s.temperature, temperature) })),
      story,
    ),
  );

/** Mean temperatures of stretches: each holds from the end of the one before until its day; the last goes on. */
export const dailyMeans = (means: readonly { readonly until: number; readonly mean: number }[]): TemperatureStory =>
  means.map(({ until, mean }, i) => ({
    until: i === means.length - 1 ? Number.POSITIVE_INFINITY : until,
    temperature: mean,
  }));

/**
 * Lowest and highest of each day from the pour on, as a sine wave cut into twelve two-hour stretches (each the mean of
 * the wave over it), so that the frost of a night counts as a night. The last day repeats for ever as its mean.
 */
export const dailyExtremes = (days: readonly { readonly low: number; readonly high: number }[]): TemperatureStory => {
  const parts = 12;
  const mean = (i: number): number =>
    (parts / (2 * Math.PI)) * (Math.cos((2 * Math.PI * i) / parts) - Math.cos((2 * Math.PI * (i + 1)) / parts));
  const story = days.flatMap(({ low, high }, day) =>
    Array.from({ length: parts }, (_, i) => ({
      until: day + (i + 1) / parts,
      temperature: (low + high) / 2 + ((high - low) / 2) * mean(i),
    })),
  );
  const last = days[days.length - 1];
  return last === undefined ? [] : [...story, ...constantTemperature((last.low + last.high) / 2)];
};

/** Logged readings, joined by straight lines and cut into stretches at most two hours long; flat outside the log. */
export const loggedTemperatures = (
  readings: readonly { readonly day: number; readonly temperature: number }[],
): TemperatureStory => {
  const first = readings[0];
  const last = readings[readings.length - 1];
  if (first === undefined || last === undefined) return [];
  const between = readings.slice(1).flatMap((b, i) => {
    const a = readings[i]!;
    const parts = Math.max(1, Math.ceil((b.day - a.day) * 12));
    return Array.from({ length: parts }, (_, k) => ({
      until: a.day + ((b.day - a.day) * (k + 1)) / parts,
      temperature: a.temperature + ((b.temperature - a.temperature) * (k + 0.5)) / parts,
    }));
  });
  const before = first.day > 0 ? [{ until: first.day, temperature: first.temperature }] : [];
  return [...before, ...between.filter((s) => s.until > 0), ...constantTemperature(last.temperature)];
};

/**
 * Twelve monthly means (January first), joined through the middles of the months, from a pour `startOfYear` days after
 * the beginning of the year (0 to 365), day by day for three years.
 */
export const monthlyMeans = (means: readonly number[], startOfYear: number): TemperatureStory => {
  const at = (day: number): number => {
    const months = (((((startOfYear + day) / 365.25) * 12 - 0.5) % 12) + 12) % 12;
    const month = Math.floor(months);
    return means[month % 12]! + (means[(month + 1) % 12]! - means[month % 12]!) * (months - month);
  };
  const days = Array.from({ length: 3 * 365 }, (_, day) => ({ until: day + 1, temperature: at(day + 0.5) }));
  return [...days, ...constantTemperature(means.reduce((sum, mean) => sum + mean, 0) / 12)];
};

/** The temperature on a day (the stretch that ends on it counts up to it). */
export const temperatureOn = (story: TemperatureStory, day: number): number =>
  (story.find((s) => s.until > day) ?? story[story.length - 1])!.temperature;
