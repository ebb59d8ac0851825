import { TRUCK_DISCHARGE_HOURS } from "@floorworthy/engine/orders";
import { isUnable, printNumber, type Term, type Unable } from "@floorworthy/engine/quantities";
import { type Job, priceOf } from "@floorworthy/job";
import type { Outcome } from "../assessment.ts";
import { shown } from "../facts/print.ts";
import type { JobJointPlan } from "../joint-plan/index.ts";

interface Known {
  readonly job: Job;
  readonly outcome: Outcome;
  /** MPa ordered */
  readonly strength: number;
  readonly plan: JobJointPlan | Unable;
  readonly steel: readonly string[];
  readonly drag: Term | undefined;
  /** in² per ft in the slab's weaker direction */
  readonly slabSteel: number;
  /** mm³ */
  readonly ordered: number;
  readonly load: number;
}

const strengthWarning = ({ job, strength }: Known): readonly string[] => {
  const { strength: asked } = job.lift.asks;
  if (!asked.known) return ["The strength the lift's maker asks is not known: do not order before it is."];
  return asked.high > strength + 1e-6
    ? [
        `The job orders ${shown(strength, "stress", job.units)}, the lift's maker asks ${shown(asked.high, "stress", job.units)}: order no less than that.`,
      ]
    : [];
};

const steelWarning = ({ job, drag, slabSteel }: Known): readonly string[] => {
  const { reinforcement } = job.floor;
  if (!drag || (reinforcement.known && reinforcement.value === "mesh")) return [];
  if (slabSteel >= drag.value) return [];
  const needs = `It takes ${printNumber(drag.value, 3)} in² per ft of steel each way to hold the largest panel's cracks closed (drag formula)`;
  return [
    slabSteel > 0
      ? `${needs}; the slab's bars give ${printNumber(slabSteel, 3)}.`
      : `${needs}; the slab has none. Cracks cannot be prevented, only placed: keep the joint plan.`,
  ];
};

const loadWarnings = ({ job, ordered, load }: Known): readonly string[] => {
  const full = priceOf(job, "fullLoad");
  const last = ordered % load;
  return [
    ...(ordered < full.value - 1
      ? [`Under ${shown(full.value, "volume", job.units)} plants charge for a short load, or send a small truck: ask.`]
      : []),
    ...(ordered > load && last > 1 && last < 0.25 * load
      ? ["The last load is small: call its volume in from the site once the other loads are placed."]
      : []),
  ];
};

export const warningsFor = (known: Known): readonly string[] => [
  ...(known.outcome === "hold" || known.outcome === "shift" || known.outcome === "wait"
    ? [`The answer for this floor is still "${known.outcome}": order when that is settled.`]
    : []),
  ...strengthWarning(known),
  ...known.steel,
  ...steelWarning(known),
  ...loadWarnings(known),
  ...(isUnable(known.plan)
    ? [`Joints are not in this order: ${known.plan.reason}`]
    : known.plan.unmet.map((u) => u.words)),
  `A truck must be empty ${printNumber(60 * TRUCK_DISCHARGE_HOURS, 0)} minutes after water met cement (ASTM C94); water added on site costs strength.`,
  "A loaded truck weighs some 33 t (74,000 lb): not on a new slab, a pad, or over the septic tank.",
];
