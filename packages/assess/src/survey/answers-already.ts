import { distance } from "@floorworthy/engine/geometry";
import { assumed, type Job, type ThicknessReading } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { basisWords } from "../facts/known.ts";
import { zoneUnder } from "../facts/thickness.ts";
import type { Corner } from "./corners.ts";
import { drillPractice } from "./practice.ts";
import { lengthWords } from "./words.ts";

const reach = assumed(drillPractice.speaksFor).value;

/**
 * A hole that came through, or one that stayed in concrete beyond what the maker asks. Radar, echoes, drawings, a bit that
 * dropped and was not hooked, and readings at an edge leave the question open.
 */
export const settles = (job: Job, reading: ThicknessReading): boolean => {
  const { thickness, method, end, place, near } = reading;
  if (!thickness.known || place === "thickened-edge" || near === "edge") return false;
  if (method !== "drill" && method !== "core") return false;
  if (end === "through") return true;
  const least = job.lift.asks.thickness;
  return end === "still-concrete" && least.known && thickness.low >= least.high;
};

const said = (job: Job, { thickness, method, end }: ThicknessReading): string =>
  `${method === "core" ? "core" : "hole"}, ${end === "still-concrete" ? "at least " : ""}${thickness.known ? lengthWords(thickness.value, job.units) : ""}`;

/** For each corner what answers there, or undefined. A reading only said to be at the base takes a corner nobody else has. */
export const answeredCorners = (
  job: Job,
  base: PlacedBase,
  corners: readonly Corner[],
): readonly (string | undefined)[] => {
  const answers: (string | undefined)[] = corners.map(() => undefined);
  const readings = job.floor.readings.filter((reading) => settles(job, reading));
  for (const reading of readings) {
    const { at, near } = reading;
    if (!at || (near !== undefined && near !== base.side)) continue;
    const open = corners
      .map((corner, i) => ({ i, far: distance(at, corner.at) }))
      .filter(({ i, far }) => far <= reach && answers[i] === undefined)
      .toSorted((p, q) => p.far - q.far)[0];
    if (open) answers[open.i] = said(job, reading);
  }
  for (const reading of readings.filter(({ at, near }) => !at && near === base.side)) {
    const i = answers.indexOf(undefined);
    if (i >= 0) answers[i] = said(job, reading);
  }
  return answers;
};

/** What answers in mid-bay, or undefined. */
export const answeredMiddle = (job: Job, middle: { readonly x: number; readonly y: number }): string | undefined => {
  const found = job.floor.readings.find(
    (reading) =>
      settles(job, reading) &&
      (reading.near === "middle" ||
        (reading.near === undefined && reading.at && distance(reading.at, middle) <= reach)),
  );
  return found && said(job, found);
};

/** A standing pad under the whole base whose thickness somebody measured or can show: no hole is needed in it. */
export const answeredByPad = (job: Job, base: PlacedBase): string | undefined => {
  const zone = zoneUnder(job, base);
  if (zone?.state !== "standing" || !zone.thickness.known || zone.thickness.basis.kind === "stated") return undefined;
  if (zone.thickness.basis.kind === "assumed") return undefined;
  return `${zone.name} is ${lengthWords(zone.thickness.value, job.units)} thick, ${basisWords(zone.thickness.basis)}`;
};
