/**
 * Base reactions of a two-post lift at one carriage height.
 *
 *   P = φ r W + Wc ± ΔN          M_in = φ r W e ± ΔN e + F_in a − S H
 *   M_fa = φ r W y + r F h       V_in = F_in − S,  V_fa = r F,  twist = r F e
 *
 * S: force in the overhead beam (strut-force.ts). ΔN: vertical couple of a sideways work force above the carriage.
 * Bending of the columns is first order: the leaning of a loaded column is not fed back.
 */
import { isUnable, type Term, type Unable, unable } from "../quantities/index.ts";
import type { BaseLoad, BaseReactions, BaseTerms } from "./base-load.ts";
import type { ColumnFrame, LiftLoad } from "./column-frame.ts";
import { shown } from "./shown.ts";
import { type ColumnAction, strutForce } from "./strut-force.ts";

const STATICS = "statics of one column";

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

interface Share extends ColumnAction {
  readonly r: number;
  /** φ r W, N */
  readonly lifted: number;
  /** N, vertical couple of a lateral work force */
  readonly shifted: number;
  /** fore-aft offset of this column's share, mm */
  readonly y: number;
  /** fore-aft work force on this column, N, and its height, mm */
  readonly foreAftForce: number;
  readonly workHeight: number;
}

const columnShare = (frame: ColumnFrame, load: LiftLoad, side: "left" | "right"): Share => {
  const r = side === "left" ? load.leftShare : 1 - load.leftShare;
  const sign = side === "left" ? 1 : -1;
  const work = load.workForce;
  const workHeight = work?.height ?? load.carriageHeight;
  const lateral = work?.direction === "lateral" ? work.force : 0;
  const foreAftForce = work?.direction === "fore-aft" ? r * work.force : 0;
  const shifted = (-sign * lateral * (workHeight - load.carriageHeight)) / (frame.spacing - 2 * frame.reach);
  const lifted = load.dynamicFactor * r * load.weight;
  const crosswise = load.crosswise ?? 0;
  const across = side === "left" ? crosswise : r > 0 ? (-crosswise * load.leftShare) / r : 0;
  return {
    r,
    lifted,
    shifted,
    y: load.foreAft + across,
    foreAftForce,
    workHeight,
    couple: (lifted + shifted) * frame.reach,
    force: sign * r * lateral,
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

const baseTerms = (frame: ColumnFrame, load: LiftLoad, share: Share, strut: Term): BaseTerms => {
  const { r, lifted, shifted, y, foreAftForce, workHeight, couple, force } = share;
  const [e, a, S] = [frame.reach, load.carriageHeight, strut.value];
  const H = frame.top === "overhead-tied" ? (frame.tieHeight ?? 0) : 0;
  const N: Term = {
    symbol: "N",
    words: "lifted weight on this column",
    value: lifted + shifted,
    unit: "N",
    clause: STATICS,
    formula: shifted === 0 ? "φ r W" : "φ r W + ΔN",
    worked: `${shown(load.dynamicFactor)} × ${shown(r)} × ${shown(load.weight)}${shifted === 0 ? "" : ` + ${shown(shifted)}`}`,
  };
  const applied: Term = {
    symbol: "M",
    words: "inward moment the arms bring to the column",
    value: couple,
    unit: "N·mm",
    clause: STATICS,
    formula: "N e",
    worked: `${shown(N.value)} × ${shown(e)}`,
    from: [N],
  };
  return {
    P: {
      symbol: "P",
      words: "vertical load on the base",
      value: N.value + frame.columnWeight,
      unit: "N",
      clause: STATICS,
      formula: "N + Wc",
      worked: `${shown(N.value)} + ${shown(frame.columnWeight)}`,
      from: [N],
    },
    inwardMoment: {
      symbol: "M_in",
      words: "inward moment at the base",
      value: couple + force * a - S * H,
      unit: "N·mm",
      clause: STATICS,
      formula: frame.top === "overhead-tied" ? "M + F_in a − S H" : "M + F_in a",
      worked: `${shown(couple)} + ${shown(force)} × ${shown(a)}${H > 0 ? ` − ${shown(S)} × ${shown(H)}` : ""}`,
      from: H > 0 ? [applied, strut] : [applied],
    },
    foreAftMoment: {
      symbol: "M_fa",
      words: "fore-aft moment at the base",
      value: lifted * y + foreAftForce * workHeight,
      unit: "N·mm",
      clause: STATICS,
      formula: "φ r W y + r F h",
      worked: `${shown(lifted)} × ${shown(y)} + ${shown(foreAftForce)} × ${shown(workHeight)}`,
    },
    inwardShear: {
      symbol: "V_in",
      words: "shear on the floor toward the vehicle",
      value: force - S,
      unit: "N",
      clause: STATICS,
      formula: "F_in − S",
      worked: `${shown(force)} − ${shown(S)}`,
      from: [strut],
    },
    foreAftShear: {
      symbol: "V_fa",
      words: "shear on the floor toward the door",
      value: foreAftForce,
      unit: "N",
      clause: STATICS,
      formula: "r F",
      worked: shown(foreAftForce),
    },
    twist: {
      symbol: "M_t",
      words: "twist about the column's axis",
      value: foreAftForce * e,
      unit: "N·mm",
      clause: STATICS,
      formula: "r F e",
      worked: `${shown(foreAftForce)} × ${shown(e)}`,
    },
  };
};

const strutTerm = (frame: ColumnFrame, load: LiftLoad, S: number): Term => {
  const base = { symbol: "S", words: "force in the overhead beam, compression positive", value: S, unit: "N" } as const;
  if (frame.top === "free-standing") return { ...base, words: "force in the overhead beam: there is none" };
  const rho = load.carriageHeight / (frame.tieHeight ?? Number.NaN);
  return {
    ...base,
    clause:
      "two columns and a pinned strut, force method; Roark 8th ed. Table 8.1 case 3c where base and beam are rigid",
    formula: "(Σ M dM + Σ F dF − slack) / (2 g + Ls/EA)",
    worked: `carriage at ${shown(rho)} of the beam's height, base ${frame.baseStiffness === "rigid" ? "rigid" : `${shown(frame.baseStiffness)} N·mm/rad`}`,
  };
};
