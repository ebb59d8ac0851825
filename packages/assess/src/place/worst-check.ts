import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { liftTurn } from "../layout.ts";
import { anchorChecks } from "../margin/anchors.ts";
import { type BaseCase, baseCases } from "../margin/cases.ts";
import { type MarginInputs, marginInputs } from "../margin/inputs.ts";
import { slabChecks } from "../margin/slab.ts";

/** The check that governs the margin: the largest ratio of all that count, in cracked concrete. */
export interface WorstCheck {
  readonly ratio: number;
  readonly title: string;
  readonly group: string;
}

/**
 * Asks many places of one lift for their governing check. Contact of the plates and loads do not depend on the place but
 * for the concrete under the bases and the way the lift is turned: they are solved once for each of these.
 */
export const worstChecks = (): ((job: Job) => WorstCheck | Unable) => {
  const kept = new Map<string, readonly BaseCase[]>();
  return (job) => {
    const facts = factsOf(job);
    const inputs = marginInputs(job, facts, "worst");
    if (isUnable(inputs)) return inputs;
    const cases = countedCases(job, inputs, facts.bases, kept);
    return isUnable(cases) ? cases : governing(job, inputs, cases);
  };
};

const governing = (job: Job, inputs: MarginInputs, cases: readonly BaseCase[]): WorstCheck | Unable => {
  // asked as advice the anchors' checks leave out the load factors that count nowhere
  const anchors = anchorChecks(job, inputs, cases, "advice").checks;
  const slab = slabChecks(job, inputs, cases, "limit").checks.filter(({ weight }) => weight === "limit");
  const worst = [...anchors, ...slab]
    .filter(({ concrete }) => concrete !== "uncracked")
    .reduce<WorstCheck | undefined>(
      (best, { ratio, title, group }) => (best && best.ratio >= ratio ? best : { ratio, title, group }),
      undefined,
    );
  return worst ?? unable("margin", "Nothing could be checked here.");
};

const countedCases = (
  job: Job,
  inputs: MarginInputs,
  bases: readonly PlacedBase[],
  kept: Map<string, readonly BaseCase[]>,
): readonly BaseCase[] | Unable => {
  const key = [liftTurn(job).toFixed(9), ...inputs.concrete.map(({ h, f }) => `${h} ${f}`), inputs.k].join(" ");
  const before = kept.get(key);
  if (before) return before.map((c) => ({ ...c, base: bases.find(({ side }) => side === c.side)! }));
  const cases = baseCases(job, inputs, bases);
  if (isUnable(cases)) return cases;
  const counted = cases.filter(({ standing }) => standing === "counted");
  kept.set(key, counted);
  return counted;
};
