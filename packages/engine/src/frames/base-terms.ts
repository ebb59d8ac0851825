import type { Term } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";
import type { BaseTerms } from "./base-load.ts";
import type { ColumnFrame, LiftLoad } from "./column-frame.ts";
import type { ColumnShare } from "./column-share.ts";

const STATICS = "statics of one column";

/** Every quantity of one base, unfolded. */
export const baseTerms = (frame: ColumnFrame, load: LiftLoad, share: ColumnShare, strut: Term): BaseTerms => {
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

/** The force in the overhead beam, unfolded. */
export const strutTerm = (frame: ColumnFrame, load: LiftLoad, S: number): Term => {
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
