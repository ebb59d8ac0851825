import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { shown } from "../facts/print.ts";
import { axlesOf, liftedBy } from "./lifted-by.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";
import type { VehicleWord } from "./vehicle-word.ts";

/** The answer and its reasons where no figure may follow. */
type Refusal = readonly [VehicleWord, ...string[]];

export const stopped = ({ stops }: Assessment): Refusal | undefined =>
  stops.length === 0
    ? undefined
    : [stops.every(({ outcome }) => outcome === "hold") ? "hold" : "no", ...stops.map(({ reason }) => reason)];

export const notThisVehicle = (
  job: Job,
  { weight, heavierAxle, offset, spacing, contradictions }: VehicleFacts,
): Refusal | undefined => {
  const { rated } = job.lift;
  if (!rated.known) return ["hold", "The rated load of the lift is not known: read it off the data plate."];
  if (!weight)
    return ["hold", "The weight of the vehicle is not known: read the door label or weigh it, axle by axle."];
  if (weight.high > rated.low)
    return [
      "no",
      `It weighs ${shown(weight.high, "force", job.units)}; the lift is rated for ${shown(rated.low, "force", job.units)}. No floor and no care makes up for that.`,
    ];
  const pair = rated.low / axlesOf(job.lift);
  if (job.lift.kind === "mobile-columns" && heavierAxle && heavierAxle.high > pair)
    return [
      "no",
      `One axle weighs ${shown(heavierAxle.high, "force", job.units)}; the two columns under it are rated for ${shown(pair, "force", job.units)}.`,
    ];
  const off = Math.max(Math.abs(offset[0]), Math.abs(offset[1]));
  if (liftedBy(job.lift) === "pads" && off >= spacing.low / 2)
    return [
      "no",
      `Its centre of gravity stands ${shown(off, "length", job.units)} off the line of the columns, outside the lifting points (${shown(spacing.low / 2, "length", job.units)} either way): it would tip off.`,
    ];
  return contradictions.length > 0 && contradictions.some((words) => words.startsWith("The front axle"))
    ? ["hold", ...contradictions]
    : undefined;
};

/** A lighter vehicle does not excuse a floor: the maker's page speaks of the lift. */
export const notThisFloor = ({ outcome, sentence }: Assessment): Refusal | undefined => {
  if (outcome === "accept" || outcome === "accept-if") return undefined;
  const word = outcome === "hold" ? "hold" : "no";
  return [
    word,
    sentence,
    "A lighter vehicle does not excuse the floor: the maker's page asks for the lift as it is rated.",
  ];
};
