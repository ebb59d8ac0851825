/**
 * Base reactions of a two-post lift at one carriage height.
 *
 *   P = φ r W + Wc ± ΔN          M_in = φ r W e ± ΔN e + F_in a − S H
 *   M_fa = φ r W y + r F h       V_in = F_in − S,  V_fa = r F,  twist = r F e
 *
 * S: force in the overhead beam (strut-force.ts). ΔN: vertical couple of a sideways work force above the carriage.
 * Bending of the columns is first order: the leaning of a loaded column is not fed back.
 */
import { isUnable, type Unable, unable } from "../quantities/index.ts";
import type { BaseLoad, BaseReactions, BaseTerms } from "./base-load.ts";
import { baseTerms, strutTerm } from "./base-terms.ts";
import type { ColumnFrame, LiftLoad } from "./column-frame.ts";
import { columnShare } from "./column-share.ts";
import { strutForce } from "./strut-force.ts";

/** @returns both bases in their own (u, v) axes, or Unable where the frame cannot be computed as described */
export const baseReactions = (frame: ColumnFrame, load: LiftLoad): BaseReactions | Unable => {
  const { reach: e, spacing } = frame;
  if (!(load.leftShare >= 0 && load.leftShare <= 1))
    return unable("lift load", "A column's share lies between 0 and 1.");
  if (!(load.carriageHeight >= 0)) return unable("lift load", "The carriage height is below the floor.");
  if (!(spacing > 2 * e))
    return unable("lift", "The arms reach past the middle: the spacing must exceed twice the reach.");
  const left = columnShare(frame, load, "left");
  const right = columnShare(frame, load, "right");
  const S = strutForce(frame, load.carriageHeight, left, right);
  if (isUnable(S)) return S;
  const strut = strutTerm(frame, load, S);
  const terms = { left: baseTerms(frame, load, left, strut), right: baseTerms(frame, load, right, strut) };
  return {
    left: values(terms.left),
    right: values(terms.right),
    strutForce: S,
    terms: { ...terms, strutForce: strut },
  };
};

const values = (terms: BaseTerms): BaseLoad => ({
  P: terms.P.value,
  inwardMoment: terms.inwardMoment.value,
  foreAftMoment: terms.foreAftMoment.value,
  inwardShear: terms.inwardShear.value,
  foreAftShear: terms.foreAftShear.value,
  twist: terms.twist.value,
});
