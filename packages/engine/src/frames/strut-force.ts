/**
 * Force method for two cantilevers on rotational base springs, joined at their heads by a pinned strut:
 *
 *   S = (Σ Mi dM + Σ Fi dF − slack) / (2 g + Ls / EA)
 *   dM = a(2H − a)/2EI + H/k    head moves by this under a unit couple at height a
 *   dF = a²(3H − a)/6EI + aH/k  ... under a unit force at height a
 *   g  = H³/3EI + H²/k          ... under a unit force at the head
 *
 * Only the part of the loads that brings the heads together finds the strut: equal and opposite parts sway freely.
 * Method: unit-load theorem; Roark's Formulas 8th ed., Table 8.1, cases 1a and 3a for the cantilever [roark-8].
 * Needs: 0 ≤ a ≤ H. EI cancels where base and strut are rigid and there is no slack, so it may be missing then.
 */
import { type Unable, unable } from "../quantities/index.ts";
import type { ColumnFrame } from "./column-frame.ts";

/** What acts on one column at carriage height: a couple (N·mm) and a force (N), both positive toward the vehicle. */
export interface ColumnAction {
  readonly couple: number;
  readonly force: number;
}

/** Strut force, N, compression positive, of an overhead-tied frame with its carriages at `height`; 0 without a tie. */
export const strutForce = (
  frame: ColumnFrame,
  height: number,
  left: ColumnAction,
  right: ColumnAction,
): number | Unable => {
  if (frame.top === "free-standing") return 0;
  const H = frame.tieHeight;
  if (H === undefined || !(H > 0)) return unable("overhead beam", "The height of the overhead beam is not known.");
  if (!(height <= H)) return unable("overhead beam", "The carriage stands above the overhead beam.");
  const slack = frame.strutSlack ?? 0;
  const strut = frame.strutEA ?? "rigid";
  const plain = frame.baseStiffness === "rigid" && strut === "rigid" && slack === 0;
  const EI = frame.columnEI ?? (plain ? H ** 3 : undefined);
  if (EI === undefined || !(EI > 0)) {
    return unable("columns", "A base spring, a strut stiffness or slack needs the bending stiffness of the columns.");
  }
  if (frame.baseStiffness !== "rigid" && !(frame.baseStiffness > 0)) {
    return unable("base spring", "A base without rotational stiffness cannot hold a column.");
  }
  const spring = frame.baseStiffness === "rigid" ? 0 : 1 / frame.baseStiffness;
  const a = height;
  const dM = (a * (2 * H - a)) / (2 * EI) + H * spring;
  const dF = (a ** 2 * (3 * H - a)) / (6 * EI) + a * H * spring;
  const g = H ** 3 / (3 * EI) + H ** 2 * spring;
  const closing = (left.couple + right.couple) * dM + (left.force + right.force) * dF;
  const taken = Math.sign(closing) * Math.max(0, Math.abs(closing) - slack);
  return taken / (2 * g + (strut === "rigid" ? 0 : frame.spacing / strut));
};
