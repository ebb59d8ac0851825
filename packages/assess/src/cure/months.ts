import { monthlyMeans, type TemperatureStory } from "@floorworthy/engine/concrete";
import type { MonthName, Pour } from "@floorworthy/job";
import type { StoryEnd } from "./readings.ts";

const order: readonly MonthName[] = [
  "january",
  "february",
  "march",
  "april",
  "may",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

/** Twelve means, the months between two written ones on a straight line round the year. */
const twelve = (months: NonNullable<Pour["months"]>, end: StoryEnd): readonly number[] | undefined => {
  const known = months.flatMap(({ month, mean }) =>
    month !== undefined && mean.known ? [{ at: order.indexOf(month), value: mean[end] }] : [],
  );
  if (known.length === 0) return undefined;
  return order.map((_, at) => {
    const back = known.map((k) => ({ ...k, away: (at - k.at + 12) % 12 })).toSorted((a, b) => a.away - b.away)[0]!;
    const on = known.map((k) => ({ ...k, away: (k.at - at + 12) % 12 })).toSorted((a, b) => a.away - b.away)[0]!;
    const span = back.away + on.away;
    return span === 0 ? back.value : back.value + ((on.value - back.value) * back.away) / span;
  });
};

const startOfYear = (date: string): number =>
  (Date.parse(date) - Date.UTC(Number(date.slice(0, 4)), 0, 1)) / 86_400_000;

/** The monthly means as a story from the day of the pour; undefined where none is written or the day is not known. */
export const monthsStory = (
  pour: Pour | undefined,
  poured: string | undefined,
  end: StoryEnd,
): TemperatureStory | undefined => {
  const means = poured === undefined ? undefined : twelve(pour?.months ?? [], end);
  return means && monthlyMeans(means, startOfYear(poured!));
};
