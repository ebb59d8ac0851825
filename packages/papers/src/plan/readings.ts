import type { PlacedBase } from "@floorworthy/assess";
import type { Point } from "@floorworthy/engine/geometry";
import type { Job, ThicknessReading } from "@floorworthy/job";
import { printLength } from "../print/measure.ts";
import type { Part } from "./part.ts";

/** A reading that was only said to be near a base is drawn at a corner of that base, one corner after the other. */
const placeOf = (reading: ThicknessReading, bases: readonly PlacedBase[], turn: number): Point | undefined => {
  if (reading.at) return reading.at;
  const outline = bases.find((base) => base.side === reading.near)?.outline;
  const base = bases.find((b) => b.side === reading.near);
  const corner = outline?.[turn % outline.length];
  return base && corner
    ? { x: base.centre.x + 1.3 * (corner.x - base.centre.x), y: base.centre.y + 1.3 * (corner.y - base.centre.y) }
    : undefined;
};

/** The figure alone; how each was read stands in the notes. */
const readingWords = ({ thickness, end }: ThicknessReading, units: Job["units"]): string => {
  const figure = thickness.known ? printLength(thickness.value, units) : "no figure";
  return `${end === "still-concrete" ? "over " : ""}${figure}${end === "dropped" ? ", bit dropped" : ""}`;
};

export const readingsPart = (job: Job, bases: readonly PlacedBase[]): Part => {
  const drawn = job.floor.readings.flatMap((reading, i) => {
    const at = placeOf(reading, bases, i);
    return at ? [{ reading, at }] : [];
  });
  return {
    items: drawn.map(({ at }) => ({ kind: "symbol", tag: "readings", name: "reading", at, size: 1.4 })),
    wanted: drawn.map(({ reading, at }) => ({
      tag: "labels",
      words: readingWords(reading, job.units),
      lettering: "regular",
      at,
    })),
  };
};
