import {
  basicBreakoutShear,
  breakoutShear,
  edgeDistanceInNarrowMember,
  loadBearingLength,
  projectedShearArea,
  projectedShearAreaOfOne,
  psiCrackingShear,
  psiEccentricityShear,
  psiEdgeShear,
  psiThickness,
} from "../codes/aci318-19/index.ts";
import type { Term } from "../quantities/index.ts";
import type { DesignBasis } from "./design-basis.ts";
import type { EdgeRow } from "./edge-row.ts";
import { computed, figure } from "./terms.ts";

/**
 * `Vcbg`: strength of the row nearest to an edge against breaking out toward it, or along it (twice, with ψed = 1).
 *
 * @param row - lengths in inches
 */
export const shearBreakout = (row: EdgeRow, direction: "toward" | "along", basis: DesignBasis): Term => {
  const ca1 = countedDistance(row, basis.ha);
  const [AVc, AVco] = areas(row, ca1, basis.ha);
  const Vb = basic(ca1, basis);
  const factors = factorsOf(row, direction, ca1, basis);
  const [psiEc, psiEd, psiC, psiH] = factors.map((t) => t.value) as [number, number, number, number];
  const [times, twice] = direction === "along" ? [2, ["2"]] : [1, []];
  const value = times * breakoutShear(AVc.value / AVco.value, { psiEc, psiEd, psiC, psiH }, Vb.value);
  const ratio = `${figure(AVc.value)}/${figure(AVco.value)}`;
  return computed("Vcbg", `shear breakout ${direction} the ${row.barrier.kind}`, value, "lb", {
    clause: `ACI 318-19 17.7.2.1 (${direction === "along" ? "c" : "b"})`,
    formula: [...twice, "A_Vc/A_Vco", ...factors.map((t) => t.symbol), "Vb"].join(" "),
    worked: [...twice, ratio, ...factors.map((t) => figure(t.value)), figure(Vb.value)].join(" × "),
    from: [AVc, AVco, ...factors, Vb],
  });
};

const countedDistance = ({ ca1, ca2, gaps, barrier }: EdgeRow, ha: Term): Term => {
  const counted = edgeDistanceInNarrowMember(ca1, ca2, ha.value, Math.max(0, ...gaps));
  const clause = counted < ca1 ? { clause: "ACI 318-19 17.7.2.1.2" } : {};
  return computed("ca1", `distance to the ${barrier.kind}`, counted, "in", clause);
};

const areas = ({ ca2, gaps }: EdgeRow, ca1: Term, ha: Term): readonly [Term, Term] => {
  const half = 1.5 * ca1.value;
  const ends = ca2.reduce((sum, c) => sum + Math.min(half, c), 0);
  const width = gaps.reduce((sum, gap) => sum + Math.min(2 * half, gap), ends);
  const AVc = computed(
    "A_Vc",
    "projected area on the edge face",
    projectedShearArea(ca1.value, width, ha.value),
    "in²",
    {
      clause: "ACI 318-19 17.7.2.1.1",
      formula: "width × min(1.5 ca1, ha)",
      worked: `${figure(width)} × min(1.5 × ${figure(ca1.value)}, ${figure(ha.value)})`,
      from: [ca1, ha],
    },
  );
  const AVco = computed(
    "A_Vco",
    "projected area of one anchor in a deep member",
    projectedShearAreaOfOne(ca1.value),
    "in²",
    {
      clause: "ACI 318-19 17.7.2.1.3",
      formula: "4.5 ca1²",
      worked: `4.5 × ${figure(ca1.value)}²`,
      from: [ca1],
    },
  );
  return [AVc, AVco];
};

const basic = (ca1: Term, { da, hef, fc, lambdaA }: DesignBasis): Term => {
  const le = loadBearingLength(hef.value, da.value);
  const anchor = { da: da.value, le, ca1: ca1.value };
  const [d, c] = [figure(da.value), figure(ca1.value)];
  return computed("Vb", "basic breakout strength in shear", basicBreakoutShear(anchor, fc.value, lambdaA), "lb", {
    clause: "ACI 318-19 17.7.2.2.1",
    formula: "min(7 (le/da)^0.2 √da, 9) λa √f'c ca1^1.5",
    worked: `min(7 × (${figure(le)}/${d})^0.2 × √${d}, 9) × ${figure(lambdaA)} × √${figure(fc.value)} × ${c}^1.5`,
    from: [da, hef, fc, ca1],
  });
};

const factorsOf = (
  row: EdgeRow,
  direction: "toward" | "along",
  ca1: Term,
  { concrete, ha }: DesignBasis,
): readonly Term[] => {
  const psiEc = psiEccentricityShear(direction === "toward" ? row.eccentricity : 0, ca1.value);
  const psiEd = direction === "along" ? 1 : psiEdgeShear(Math.min(...row.ca2), ca1.value);
  const psi = (symbol: string, words: string, value: number, clause: string): Term =>
    computed(symbol, words, value, "", { clause: `ACI 318-19 ${clause}` });
  return [
    psi("ψec,V", "eccentricity of the shear", psiEc, "17.7.2.3"),
    psi("ψed,V", "nearness of a side edge", psiEd, "17.7.2.4"),
    psi(
      "ψc,V",
      `factor for ${concrete.state} concrete without edge bars`,
      psiCrackingShear(concrete.state),
      "17.7.2.5",
    ),
    psi("ψh,V", "thin slab: √(1.5 ca1/ha), at least 1", psiThickness(ca1.value, ha.value), "17.7.2.6"),
  ];
};
