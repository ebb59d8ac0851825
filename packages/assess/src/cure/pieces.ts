import {
  constantTemperature,
  dailyExtremes,
  loggedTemperatures,
  maturity,
  type TemperatureStory,
  temperatureOn,
  untilDay,
} from "@floorworthy/engine/concrete";
import type { Pour } from "@floorworthy/job";
import { daysBetween } from "../facts/calendar.ts";
import type { LogReading, StoryEnd } from "./readings.ts";

/** A part of the story: temperatures from one day to another, counted from the pour. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly story: TemperatureStory;
}

const shifted = (story: TemperatureStory, by: number): TemperatureStory => [
  ...(by > 0 ? [{ until: by, temperature: story[0]!.temperature }] : []),
  ...story.map(({ until, temperature }) => ({ until: until + by, temperature })),
];

const spells = (pour: Pour, end: StoryEnd): Piece[] =>
  pour.temperatures.flatMap(({ fromDay, toDay, mean }) =>
    mean.known ? [{ from: fromDay, to: toDay ?? Number.POSITIVE_INFINITY, story: constantTemperature(mean[end]) }] : [],
  );

const singleDays = (pour: Pour, poured: string | undefined): Piece[] =>
  (pour.days ?? []).flatMap(({ on, day, low, high }) => {
    const from = day !== undefined ? Math.floor(day) : on && poured ? daysBetween(poured, on) : undefined;
    return from === undefined || from < 0
      ? []
      : [{ from, to: from + 1, story: shifted(dailyExtremes([{ low, high }]), from) }];
  });

const logged = (log: readonly LogReading[]): Piece[] => {
  const [first, last] = [log[0], log.at(-1)];
  if (!first || !last || last.day <= 0) return [];
  return [{ from: Math.max(0, first.day), to: last.day, story: loggedTemperatures(log) }];
};

/** What was told, weakest first: a later piece covers an earlier one. */
export const piecesOf = (
  pour: Pour | undefined,
  poured: string | undefined,
  log: readonly LogReading[],
  end: StoryEnd,
): readonly Piece[] => [...(pour ? [...spells(pour, end), ...singleDays(pour, poured)] : []), ...logged(log)];

/** The piece laid over a story. */
export const laidOver = (base: TemperatureStory, { from, to, story }: Piece): TemperatureStory =>
  untilDay(from, base, untilDay(to, story, base));

/** Mean temperature from one day to another. */
export const meanOver = (story: TemperatureStory, from: number, to: number): number =>
  (maturity(story, to, -200) - maturity(story, from, -200)) / (to - from) - 200;

/** Days that no piece tells of, before `Infinity`. */
export const gapsIn = (pieces: readonly Piece[]): readonly { readonly from: number; readonly to: number }[] => {
  const sorted = pieces.toSorted((a, b) => a.from - b.from);
  const gaps: { from: number; to: number }[] = [];
  let end = 0;
  for (const { from, to } of sorted) {
    if (from > end + 1e-9) gaps.push({ from: end, to: from });
    end = Math.max(end, to);
  }
  if (end < Number.POSITIVE_INFINITY) gaps.push({ from: end, to: Number.POSITIVE_INFINITY });
  return gaps;
};

const WEEK = 7;

/**
 * A story for every day. A gap is counted at the colder of its two ends; after the last day told the mean of the last
 * week told goes on.
 */
export const filled = (pieces: readonly Piece[]): TemperatureStory => {
  const gaps = gapsIn(pieces);
  const told = (base: TemperatureStory): TemperatureStory => pieces.reduce(laidOver, base);
  const rough = told(constantTemperature(0));
  const inner = gaps.filter(({ to }) => to < Number.POSITIVE_INFINITY);
  const base: TemperatureStory = [
    ...inner.map(({ from, to }) => {
      const after = meanOver(rough, to, to + 1 / 24);
      return { until: to, temperature: from === 0 ? after : Math.min(meanOver(rough, from - 1 / 24, from), after) };
    }),
    ...constantTemperature(0),
  ];
  const whole = told(base);
  const last = gaps.find(({ to }) => to === Number.POSITIVE_INFINITY);
  if (!last) return whole;
  const begin = Math.max(0, last.from - WEEK);
  const goesOn = last.from > 0 ? meanOver(whole, begin, last.from) : temperatureOn(whole, 0);
  return untilDay(last.from, whole, constantTemperature(goesOn));
};
