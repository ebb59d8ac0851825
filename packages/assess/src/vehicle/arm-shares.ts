import { padLoads } from "@floorworthy/engine/frames";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { shown, term } from "../facts/print.ts";
import { liftedBy } from "./lifted-by.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

const arms = [
  ["leftFront", "left arm toward the back wall"],
  ["leftRear", "left arm toward the door"],
  ["rightFront", "right arm toward the back wall"],
  ["rightRear", "right arm toward the door"],
] as const;

/**
 * What each arm carries, for a body that rests on all four pads, pads midway about the line of the columns. Empty where
 * the centre of gravity or the lifting points are not known: four supports share by places nobody has measured.
 */
export const armShares = (job: Job, facts: VehicleFacts): Term[] => {
  const { weight, offset, offsetKnown, spacing, spacingKnown } = facts;
  if (liftedBy(job.lift) === "axles" || !weight || offsetKnown === "assumed" || spacingKnown === "assumed") return [];
  const foreAft = (offset[0] + offset[1]) / 2;
  const loads = padLoads({ weight: weight.high, leftShare: 0.5, foreAft, padSpacing: spacing.low }, 0);
  const length = (mm: number) => shown(mm, "length", job.units);
  return arms.map(([key, words]) =>
    term("N", `${words} carries`, loads[key], "force", job.units, {
      formula: "W/2 (1/2 ± y/d)",
      worked: `${shown(weight.high, "force", job.units)}/2 × (1/2 ${key.endsWith("Rear") ? "+" : "−"} ${length(foreAft)}/${length(spacing.low)})`,
      basis: "statics; weight shared evenly between the columns",
    }),
  );
};

/** One arm is taken for a quarter of the rated load where the maker does not say; common practice, no source. */
export const armsOver = (job: Job, facts: VehicleFacts): string | undefined => {
  const { rated } = job.lift;
  const { weight, offset, spacing } = facts;
  if (liftedBy(job.lift) === "axles" || !rated.known || !weight) return undefined;
  const off = Math.max(Math.abs(offset[0]), Math.abs(offset[1]));
  const most = (weight.high / 2) * (0.5 + off / spacing.low);
  return most > rated.low / 4
    ? `At ${shown(off, "length", job.units)} off the line one arm carries ${shown(most, "force", job.units)}, more than a quarter of the rated load (${shown(rated.low / 4, "force", job.units)}): ask the maker what one arm may carry, or set the vehicle nearer to the line.`
    : undefined;
};
