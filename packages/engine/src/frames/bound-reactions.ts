import { isUnable, type Term, type Unable } from "../quantities/index.ts";
import type { BaseLoad, BaseReactions, BaseTerms } from "./base-load.ts";
import { baseReactions } from "./base-reactions.ts";
import type { ColumnFrame, LiftLoad } from "./column-frame.ts";

/** The soft bound of a frame: what gives way under and between the columns. */
export interface SoftBound {
  /** rotational spring under each base, N·mm/rad */
  readonly baseStiffness: number;
  /** N·mm² */
  readonly columnEI: number;
  /** axial stiffness EA of the beam, N; rigid unless given */
  readonly strutEA?: number;
}

/**
 * Base reactions with rigid bases and with the soft bound, keeping of each quantity the one of larger magnitude.
 * Rigid bases bound the base moment and, at height, the strut; a soft base bounds the strut at low carriage.
 * Without a soft bound, or without a tie, this is `baseReactions`.
 */
export const boundReactions = (frame: ColumnFrame, load: LiftLoad, soft?: SoftBound): BaseReactions | Unable => {
  const stiff = baseReactions(frame, load);
  if (soft === undefined || frame.top === "free-standing" || isUnable(stiff)) return stiff;
  const give = baseReactions({ ...frame, ...soft }, load);
  if (isUnable(give)) return give;
  const strutForce = larger(stiff.terms.strutForce, give.terms.strutForce);
  const left = worst(stiff.terms.left, give.terms.left);
  const right = worst(stiff.terms.right, give.terms.right);
  return {
    left: values(left),
    right: values(right),
    strutForce: strutForce.value,
    terms: { left, right, strutForce },
  };
};

const larger = (stiff: Term, give: Term): Term => {
  const kept = Math.abs(give.value) > Math.abs(stiff.value) ? give : stiff;
  return stiff.value === give.value
    ? stiff
    : {
        ...kept,
        basis: kept === give ? "assumed: soft base, the worse bound" : "assumed: rigid base, the worse bound",
      };
};

const quantities = ["P", "inwardMoment", "foreAftMoment", "inwardShear", "foreAftShear", "twist"] as const;

const worst = (stiff: BaseTerms, give: BaseTerms): BaseTerms =>
  Object.fromEntries(quantities.map((q) => [q, larger(stiff[q], give[q])])) as Record<keyof BaseLoad, Term>;

const values = (terms: BaseTerms): BaseLoad =>
  Object.fromEntries(quantities.map((q) => [q, terms[q].value])) as Record<keyof BaseLoad, number>;
