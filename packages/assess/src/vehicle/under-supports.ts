import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, KnownQuantity } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { marginOf } from "../margin/margin.ts";
import { type FloorUnder, wordOf } from "./floor-answer.ts";
import { axlesOf, liftedBy } from "./lifted-by.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

const PLACE = "floor under a vehicle";

/**
 * Lifts on more than two columns: the lift's own margin as if the heavier axle stood on every pair of columns, so that the
 * pair under it carries what it carries, and the others more than they do. `carried` is the job with this vehicle's weight in it.
 */
export const underSupports = (carried: Job, { heavierAxle }: VehicleFacts): FloorUnder | Unable => {
  const { kind } = carried.lift;
  if (liftedBy(carried.lift) === "pads")
    return unable(PLACE, `One vehicle on a lift of kind "${kind}" is not computed.`);
  if (!heavierAxle) return unable(PLACE, "The vehicle's weight is not known.");
  const rated = times(axlesOf(carried.lift), heavierAxle);
  const job = { ...carried, lift: { ...carried.lift, rated } };
  const margin = marginOf(job, factsOf(job));
  if (margin.verdict === "not-computed") return unable(PLACE, margin.sentence);
  const checks = margin.checks.filter(({ weight }) => weight === "limit").toSorted((a, b) => b.ratio - a.ratio);
  return { heights: [], checks, word: wordOf(checks), side: undefined, unable: margin.unable };
};

const times = (count: number, axle: KnownQuantity): KnownQuantity => ({
  ...axle,
  value: count * axle.value,
  low: count * axle.low,
  high: count * axle.high,
  written: `${count} × ${axle.written}`,
});
