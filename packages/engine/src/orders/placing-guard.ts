/**
 * Whether a pour can be mixed and placed before its first concrete sets. Concrete placed against concrete that has set
 * makes a cold joint, and a cold joint under a column is a crack planned in the wrong place.
 */
import type { Check, Term } from "../quantities/index.ts";

/** Hand mixing from bags, or any batch plant. */
export interface MixingPlan {
  /** number of batches or bags in all */
  readonly batches: number;
  /** batches one mixer makes in an hour, filling and emptying counted */
  readonly perHour: number;
  readonly mixers: number;
  /** h from adding water to initial set, at the day's temperature */
  readonly setHours: number;
  /** h kept back for vibrating and striking off the last batch, 0.5 by common practice */
  readonly finishingHours: number;
}

/** Time to place everything against the time the first concrete stays workable. */
export const placingGuard = (plan: MixingPlan): Check => {
  const rate = plan.perHour * plan.mixers;
  const needed = rate > 0 ? plan.batches / rate : Number.POSITIVE_INFINITY;
  const window = Math.max(0, plan.setHours - plan.finishingHours);
  const hours = (symbol: string, words: string, value: number): Term => ({ symbol, words, value, unit: "h" });
  return {
    id: "placing-cold-joint",
    title: "Placing before the first concrete sets",
    demand: {
      ...hours("t", "time to mix and place everything", needed),
      formula: "batches / (batches per hour × mixers)",
      worked: `${plan.batches} / (${plan.perHour} × ${plan.mixers})`,
    },
    capacity: {
      ...hours("ts", "time the first concrete stays workable", window),
      formula: "initial set − finishing",
      worked: `${plan.setHours} − ${plan.finishingHours}`,
      clause: "common practice, no source",
    },
    ratio: plan.batches === 0 ? 0 : window > 0 ? needed / window : Number.POSITIVE_INFINITY,
    clause: "common practice, no source",
  };
};

/** Mixers that would do, or "none": no number of mixers is fast enough when nothing stays workable. */
export const mixersNeeded = (plan: Omit<MixingPlan, "mixers">): number | "none" => {
  const window = plan.setHours - plan.finishingHours;
  if (!(window > 0) || !(plan.perHour > 0)) return "none";
  return Math.max(1, Math.ceil(plan.batches / (plan.perHour * window) - 1e-9));
};

/** ASTM C94 asks a truck to be empty within 90 min of adding water. */
export const TRUCK_DISCHARGE_HOURS = 1.5;
