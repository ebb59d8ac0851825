import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, KnownQuantity } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { marginOf } from "../margin/margin.ts";
import { type FloorUnder, wordOf } from "./floor-answer.ts";
import { liftedBy } from "./lifted-by.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

const PLACE = "floor under a vehicle";

/**
 * Lifts on more than two columns: the lift's own margin with a load whose half is the heavier axle, so that the end under
 * it carries what it carries, and the other end more than it does. `carried` is the job with this vehicle's weight in it.
 */
export const underSupports = (carried: Job, { heavierAxle }: VehicleFacts): FloorUnder | Unable => {
  const { kind } = carried.lift;
  if (liftedBy(carried.lift) === "pads")
    return unable(PLACE, `One vehicle on a lift of kind "${kind}" is not computed.`);
  if (!heavierAxle) return unable(PLACE, "The vehicle's weight is not known.");
  const rated = twice(heavierAxle);
  const job = { ...carried, lift: { ...carried.lift, rated } };
  const margin = marginOf(job, factsOf(job));
  if (margin.verdict === "not-computed") return unable(PLACE, margin.sentence);
  const checks = margin.checks.filter(({ weight }) => weight === "limit").toSorted((a, b) => b.ratio - a.ratio);
  return { heights: [], checks, word: wordOf(checks), side: undefined, unable: margin.unable };
};

const twice = (axle: KnownQuantity): KnownQuantity => ({
  ...axle,
  value: 2 * axle.value,
  low: 2 * axle.low,
  high: 2 * axle.high,
  written: `2 × ${axle.written}`,
});
