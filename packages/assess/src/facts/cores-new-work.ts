import { coreAcceptance } from "@floorworthy/engine/codes/aci318-19";
import { coreLengthFactorC42 } from "@floorworthy/engine/concrete";
import { fromBase, isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { shown, term } from "./print.ts";
import type { Evidence, TestedCore } from "./strength-finding.ts";

const CLAUSE = "ACI 318-19 26.12.6.1(e)";

/**
 * Cores of new work against what was ordered: three average 85 % of f'c and none is below 75 %. Whole percentages as the
 * clause prints them (ASTM E29), the strict reading beside. Where they do not comply, they are judged as old concrete.
 */
export const newWorkCores = (job: Job, cores: readonly TestedCore[], fc: number, asOld: Evidence): Evidence => {
  const corrected = cores.map((core, i) => byLength(job, core, i));
  const values = corrected.flatMap((c) => (c ? [c.value] : []));
  if (values.length < 3)
    return {
      ...asOld,
      notes: [
        ...(asOld.notes ?? []),
        `${values.length} core${values.length === 1 ? "" : "s"} of new work: ${CLAUSE} asks for three`,
      ],
    };
  const found = coreAcceptance(values, fromBase(fc, "psi"));
  const percent = (symbol: string, words: string, value: number, asked: number): Term => ({
    symbol,
    words: `${words}; asked: ${asked} %`,
    value,
    unit: "%",
    clause: CLAUSE,
  });
  const terms = [
    percent("f̄/f'c", "average of the cores in % of f'c", found.averagePercent, 85),
    percent("f_min/f'c", "weakest core in % of f'c", found.leastPercent, 75),
    ...corrected.flatMap((c) => (c ? [c.term] : [])),
  ];
  const readings =
    found.strict === found.rounded
      ? ""
      : "; to the last decimal they would not, in the whole percentages of the clause (ASTM E29) they do";
  if (found.rounded !== "complies")
    return {
      ...asOld,
      beside: [...asOld.beside, ...terms.slice(0, 2)],
      notes: [
        ...(asOld.notes ?? []),
        `the cores do not comply with the ordered ${shown(fc, "stress", job.units)} (${CLAUSE}), so they are judged as old concrete`,
      ],
    };
  return {
    shown: fc,
    worst: Math.min(fc, Math.max(asOld.worst, 0.85 * fc)),
    best: Math.max(asOld.best, fc),
    why: `${values.length} cores of new work comply with the ordered ${shown(fc, "stress", job.units)} (${CLAUSE})${readings}`,
    from: "cores",
    atMost: undefined,
    workings: term("f'c", "compressive strength ordered, shown by cores", fc, "stress", job.units, {
      clause: CLAUSE,
      formula: "average ≥ 0.85 f'c, none < 0.75 f'c",
      from: terms,
    }),
    beside: [asOld.workings, ...asOld.beside],
  };
};

/** psi, with the length factor of the core test; a core whose size nobody wrote counts as short as it is wide. */
const byLength = ({ units }: Job, core: TestedCore, i: number): { value: number; term: Term } | undefined => {
  const known = core.length.known && core.diameter.known;
  const slenderness = core.length.known && core.diameter.known ? core.length.value / core.diameter.value : 1;
  const factor = coreLengthFactorC42(Math.min(2, slenderness));
  if (isUnable(factor)) return undefined;
  const value = core.strength.low * factor;
  return {
    value: fromBase(value, "psi"),
    term: term(`f${i + 1}`, "core with its length factor", value, "stress", units, {
      formula: "F_l/d f_core",
      worked: `${Math.round(factor * 1000) / 1000} × ${shown(core.strength.low, "stress", units)}`,
      clause: "ASTM C42/C42M 7.9.1",
      basis: known ? "core report" : "length or diameter not written: counted as short as it is wide",
    }),
  };
};
