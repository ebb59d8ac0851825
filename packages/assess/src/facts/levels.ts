import { findThicknessStep } from "@floorworthy/engine/statistics";
import type { Job } from "@floorworthy/job";
import { shown } from "./print.ts";
import type { CountedReading } from "./readings.ts";
import type { LevelChange } from "./survey-answer.ts";

/** Least gap between two levels; common practice, no source. */
const LEAST_GAP = 12.7;

/** The readings' two levels, if they have them; readings that only bound the thickness say nothing here. */
export const levelsAmong = ({ units }: Job, readings: readonly CountedReading[]): LevelChange | undefined => {
  const full = readings.filter(({ reading }) => reading.end === "through");
  const everywhere = full.every(({ reading }) => reading.at !== undefined);
  const placed = full.map(({ reading, low, high }) => ({
    x: everywhere ? reading.at!.x : 0,
    y: everywhere ? reading.at!.y : 0,
    value: (low + high) / 2,
  }));
  const found = findThicknessStep(placed, LEAST_GAP);
  if (found.kind === "one-level") return undefined;
  const values = (which: readonly number[]): number[] => which.map((i) => placed[i]!.value);
  const [low, high] = [Math.max(...values(found.low)), Math.min(...values(found.high))];
  return {
    kind: found.kind,
    low,
    high,
    words: `two levels, ${found.low.length} reading${found.low.length === 1 ? "" : "s"} of ${shown(low, "length", units)} or less and ${found.high.length} of ${shown(high, "length", units)} or more`,
  };
};
