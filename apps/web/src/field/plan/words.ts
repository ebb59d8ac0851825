import { fromBase, type Unit } from "@floorworthy/engine/quantities";
import type { Job, Quantity } from "@floorworthy/job";
import { shown } from "../../quantities/shown.ts";

type Units = Job["units"];

/** What a bare number means on a card. */
export const cardUnits = (units: Units) =>
  units === "si"
    ? ({ length: "mm", torque: "N·m", temperature: "°C" } as const)
    : ({ length: "in", torque: "lb-ft", temperature: "°F" } as const);

/** Where a wrench or a tape reads on: eighths are tapped, millimetres are typed. */
export const lengthHand = (units: Units) => (units === "si" ? {} : ({ fractions: "eighths" } as const));

/** A place as a job file writes it. */
export const placeWritten = (mm: number, units: Units): string =>
  units === "si" ? `${Math.round(mm)} mm` : `${Number(fromBase(mm, "in").toFixed(2))} in`;

/** As it was written, or in the unit of the card. */
export const factWords = (fact: Quantity | undefined, unit: Unit, units: Units): string | undefined =>
  fact?.known ? fact.written || shown(fromBase(fact.value, unit), unit, units) : undefined;

/** Quarter, half and whole flats of a hexagon nut, and nothing. */
export const flats = [
  { value: "0", words: "did not turn" },
  { value: "15", words: "15° ¼ flat" },
  { value: "30", words: "30° ½ flat" },
  { value: "60", words: "60° 1 flat" },
] as const;
