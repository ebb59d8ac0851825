import type { Check, Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { liftedBy } from "./lifted-by.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

export const ratedCheck = ({ lift, units }: Job, { weight }: VehicleFacts): Check | undefined => {
  const { rated } = lift;
  if (!rated.known || !weight) return undefined;
  return {
    id: "rated-load",
    title: "Weight against the rated load",
    demand: term("W", "weight of the vehicle", weight.high, "force", units, { basis: basisWords(weight.basis) }),
    capacity: term("Wr", "rated load of the lift", rated.low, "force", units, { basis: basisWords(rated.basis) }),
    ratio: weight.high / rated.low,
    clause: "the lift's data plate",
  };
};

export const placeTerms = (job: Job, { behindFrontAxle }: VehicleFacts): Term[] =>
  behindFrontAxle === undefined || liftedBy(job.lift) === "axles"
    ? []
    : [
        term(
          "x",
          "centre of gravity behind the front axle; the line of the columns belongs there",
          behindFrontAxle,
          "length",
          job.units,
          {
            formula: "wheelbase × rear axle / weight",
            basis: "statics; tools and cargo move it",
          },
        ),
      ];
