import { jointSpacing, SPACING_CAP, sawDepth } from "@floorworthy/engine/joints";
import { fromBase, type Term, type Unit } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { JointWishes } from "./job-joint-plan.ts";
import { tape } from "./tape.ts";

const inch = 25.4;

/** Spacing over thickness by the slump ordered; 30 for stone of 3/4 in, the usual floor mix. */
const multipleFor = ({ pour }: Job): { readonly value: number; readonly why: string } => {
  const slump = pour?.slump;
  if (!slump?.known) return { value: 30, why: "30 times the thickness: stone of 3/4 in, slump not stated" };
  if (slump.value < 4 * inch - 1e-6) return { value: 36, why: "36 times the thickness: slump under 4 in" };
  if (slump.value > 5 * inch + 1e-6) return { value: 24, why: "24 times the thickness: slump over 5 in shrinks more" };
  return { value: 30, why: "30 times the thickness: stone of 3/4 in" };
};

/** A term in the job's own length unit, with the millimetres it was made of below it. */
const inUnits = (given: Term, { units }: Job, unit: Unit): Term => ({
  ...given,
  value: fromBase(given.value, units === "si" ? "mm" : unit),
  unit: units === "si" ? "mm" : unit,
});

export interface Spacing {
  /** mm */
  readonly limit: number;
  readonly spacing: Term;
  readonly depth: Term;
}

/** Largest distance between joints and depth of the cut, unfolded. */
export const spacingFor = (job: Job, h: Term, { multiple, cap = SPACING_CAP }: JointWishes): Spacing => {
  const usual = multipleFor(job);
  const n = multiple ?? usual.value;
  const s = jointSpacing(h.value, n, cap);
  const { units } = job;
  const from: readonly Term[] = [
    {
      symbol: "n",
      words: multiple === undefined ? usual.why : `${n} times the thickness, as asked`,
      value: n,
      unit: "",
      clause: "Portland Cement Association rule, in Beall, Fig. 2-15",
    },
    inUnits(h, job, "in"),
    inUnits({ symbol: "cap", words: "cap", value: cap, unit: "mm", clause: "NRMCA CIP 6, ACI 360R" }, job, "ft"),
  ];
  return {
    limit: s.value,
    spacing: {
      ...inUnits(s, job, "ft"),
      worked: `min(${n} × ${tape(h.value, units)}, ${tape(cap, units)})`,
      from,
    },
    depth: { ...inUnits(sawDepth(h.value, "wet"), job, "in"), from: [inUnits(h, job, "in")] },
  };
};
