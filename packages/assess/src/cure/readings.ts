/** Which end of the temperatures told. */
export type StoryEnd = "low" | "value" | "high";

/** One line of a logger, day counted from midnight of the day of the pour, °C. */
export interface LogReading {
  readonly day: number;
  readonly temperature: number;
}
