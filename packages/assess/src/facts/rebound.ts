import { describeSample } from "@floorworthy/engine/statistics";
import type { Job } from "@floorworthy/job";
import { shown } from "./print.ts";

/** A spread of rebound readings above this share of their mean says that the slab is not one concrete; from memory. */
const UNEVEN = 0.15;

/**
 * What a rebound hammer says: whether the concrete is the same everywhere, never how strong it is. Without cores its
 * strength is off by a quarter to a third. @clause ASTM C805/C805M, 5
 */
export const reboundNotes = ({ floor, units }: Job): readonly string[] => {
  const values = floor.strength.rebound.flatMap((reading) => (reading.known ? [reading.value] : []));
  if (values.length === 0) return [];
  const never = "a rebound hammer compares places (ASTM C805); it is never a strength, and none is taken from it";
  if (values.length < 3)
    return [`${values.length} rebound reading${values.length === 1 ? "" : "s"}: too few to compare; ${never}`];
  const { mean, spread, lowest, highest } = describeSample(values);
  const range = `${values.length} rebound readings from ${shown(lowest, "stress", units)} to ${shown(highest, "stress", units)} as printed on the hammer, spread ${Math.round((100 * spread) / mean)} %`;
  return [
    spread / mean > UNEVEN
      ? `${range}: not one concrete, so take cores where it is lowest; ${never}`
      : `${range}: much the same everywhere; ${never}`,
  ];
};
