import { fromBase, toBase, type Unit } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { addDays } from "../facts/calendar.ts";

type Units = Job["units"];

export const printTemperature = (celsius: number, units: Units): string =>
  units === "si" ? `${Math.round(celsius)} °C` : `${Math.round(fromBase(celsius, "°F"))} °F`;

/** °C, in the round figures of the trade. */
export const constantTemperatures = (units: Units): readonly number[] =>
  units === "si" ? [5, 10, 15, 20] : [40, 50, 60, 73].map((f) => toBase(f, "°F"));

export const temperatureUnit = (units: Units): Unit => (units === "si" ? "°C" : "°F");

/** A day after the pour with its date where the day of the pour is known. */
export interface CureDate {
  /** days after the pour; Infinity where it never comes */
  readonly day: number;
  readonly date: string | undefined;
}

/** Nobody waits longer than ten years: what takes longer never comes. */
const NEVER = 3650;

/** Days are whole: what comes in the course of a day is there on the next. */
export const cureDate = (day: number, poured: string | undefined): CureDate => {
  const whole = day <= NEVER ? Math.ceil(day - 1e-9) : Number.POSITIVE_INFINITY;
  return { day: whole, date: poured !== undefined && Number.isFinite(whole) ? addDays(poured, whole) : undefined };
};

/** "2026-03-09 (day 34)", "day 34", "never". */
export const dateWords = ({ day, date }: CureDate): string =>
  !Number.isFinite(day) ? "never" : date ? `${date} (day ${day})` : `day ${day} after the pour`;

/** When covers come off; where no day can be named they stay until the strength is shown. */
export const coversOffWords = (off: CureDate): string =>
  Number.isFinite(off.day) ? dateWords(off) : "when the strength is shown";
