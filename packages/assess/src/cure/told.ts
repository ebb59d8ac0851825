import { constantTemperature, heated, type TemperatureStory } from "@floorworthy/engine/concrete";
import { printNumber } from "@floorworthy/engine/quantities";
import type { Job, Quantity } from "@floorworthy/job";
import { monthsStory } from "./months.ts";
import { filled, gapsIn, laidOver, type Piece, piecesOf } from "./pieces.ts";
import type { LogReading, StoryEnd } from "./readings.ts";
import { printTemperature } from "./words.ts";

/** What is known of the concrete's temperature, as stories without a gap. */
export interface Told {
  readonly state: "told" | "not-told";
  readonly low: TemperatureStory;
  readonly value: TemperatureStory;
  readonly high: TemperatureStory;
  /** what was filled in, and how */
  readonly notes: readonly string[];
}

const ends: readonly StoryEnd[] = ["low", "value", "high"];

/** The temperatures of the pour: a logger before single days before spells before the means of the months. */
export const toldTemperatures = (job: Job, poured: string | undefined, log: readonly LogReading[] = []): Told => {
  const { pour } = job;
  const [low, value, high] = ends.map((end) => storyAt(job, poured, log, end));
  const notes = [...notesOnGaps(job, poured, log), ...notesOnCovers(job)];
  return low && value && high
    ? { state: "told", low, value, high, notes }
    : {
        state: "not-told",
        low: constantTemperature(0),
        value: constantTemperature(0),
        high: constantTemperature(0),
        notes: pour?.months?.length && !poured ? ["The means of the months need the day of the pour."] : [],
      };
};

const storyAt = (
  job: Job,
  poured: string | undefined,
  log: readonly LogReading[],
  end: StoryEnd,
): TemperatureStory | undefined => {
  const pieces = piecesOf(job.pour, poured, log, end);
  const months = monthsStory(job.pour, poured, end);
  if (pieces.length === 0 && !months) return undefined;
  const told = months ? pieces.reduce(laidOver, months) : filled(pieces);
  return (job.pour?.covers ?? []).reduce(
    (story, { fromDay, toDay, holds }) =>
      holds.known ? heated(story, fromDay, toDay ?? Number.POSITIVE_INFINITY, holds[end]) : story,
    told,
  );
};

const day = (n: number): string => printNumber(n, 1);

const notesOnGaps = (job: Job, poured: string | undefined, log: readonly LogReading[]): string[] => {
  const pieces = piecesOf(job.pour, poured, log, "value");
  if (pieces.length === 0) return [];
  const months = monthsStory(job.pour, poured, "value") !== undefined;
  return gapsIn(pieces).map(({ from, to }) =>
    months
      ? `From day ${day(from)}${to === Number.POSITIVE_INFINITY ? " on" : ` to ${day(to)}`} the means of the months count.`
      : to === Number.POSITIVE_INFINITY
        ? `Nothing is told after day ${day(from)}: ${printTemperature(lastOf(pieces), job.units)}, the mean of the last week told, goes on.`
        : `Nothing is told from day ${day(from)} to ${day(to)}: the colder of its two ends counts.`,
  );
};

const lastOf = (pieces: readonly Piece[]): number => filled(pieces).at(-1)!.temperature;

const notesOnCovers = ({ pour }: Job): string[] =>
  (pour?.covers ?? []).flatMap(({ what, holds }) =>
    isKnown(holds)
      ? []
      : [
          `The ${what} is not counted: nobody has measured what it holds. A thermometer under it tells (covers: holds).`,
        ],
  );

const isKnown = (fact: Quantity): boolean => fact.known;
