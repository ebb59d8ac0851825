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
  const { da, hef, fc, ha, lambdaA, concrete } = basis;
  const side = row.ca2.map((c) => c) as [number, number];
  const counted = edgeDistanceInNarrowMember(
    row.ca1,
    side,
    ha.value,
    row.gaps.reduce((a, b) => Math.max(a, b), 0),
  );
  const ca1 = computed("ca1", `distance to the ${row.barrier.kind}`, counted, "in", {
    ...(counted < row.ca1 ? { clause: "ACI 318-19 17.7.2.1.2" } : {}),
  });
  const half = 1.5 * counted;
  const width =
    side.reduce((w, c) => w + Math.min(half, c), 0) + row.gaps.reduce((w, gap) => w + Math.min(2 * half, gap), 0);
  const AVc = computed("A_Vc", "projected area on the edge face", projectedShearArea(counted, width, ha.value), "in²", {
    clause: "ACI 318-19 17.7.2.1.1",
    formula: "width × min(1.5 ca1, ha)",
    worked: `${figure(width)} × min(1.5 × ${figure(counted)}, ${figure(ha.value)})`,
    from: [ca1, ha],
  });
  const AVco = computed(
    "A_Vco",
    "projected area of one anchor in a deep member",
    projectedShearAreaOfOne(counted),
    "in²",
    {
      clause: "ACI 318-19 17.7.2.1.3",
      formula: "4.5 ca1²",
      worked: `4.5 × ${figure(counted)}²`,
      from: [ca1],
    },
  );
  const le = loadBearingLength(hef.value, da.value);
  const Vb = computed(
    "Vb",
    "basic breakout strength of one anchor in shear",
    basicBreakoutShear({ da: da.value, le, ca1: counted }, fc.value, lambdaA),
    "lb",
    {
      clause: "ACI 318-19 17.7.2.2.1",
      formula: "min(7 (le/da)^0.2 √da, 9) λa √f'c ca1^1.5",
      worked: `min(7 × (${figure(le)}/${figure(da.value)})^0.2 × √${figure(da.value)}, 9) × ${figure(lambdaA)} × √${figure(fc.value)} × ${figure(counted)}^1.5`,
      from: [da, hef, fc, ca1],
    },
  );
  const psi = {
    psiEc: psiEccentricityShear(direction === "toward" ? row.eccentricity : 0, counted),
    psiEd: direction === "along" ? 1 : psiEdgeShear(Math.min(...side), counted),
    psiC: psiCrackingShear(concrete.state),
    psiH: psiThickness(counted, ha.value),
  };
  const factors = [
    computed("ψec,V", "eccentricity of the shear", psi.psiEc, "", { clause: "ACI 318-19 17.7.2.3" }),
    computed("ψed,V", "nearness of a side edge", psi.psiEd, "", { clause: "ACI 318-19 17.7.2.4" }),
    computed("ψc,V", `factor for ${concrete.state} concrete, no edge bars`, psi.psiC, "", {
      clause: "ACI 318-19 17.7.2.5",
    }),
    computed("ψh,V", "thin slab", psi.psiH, "", {
      clause: "ACI 318-19 17.7.2.6",
      formula: "√(1.5 ca1/ha), at least 1",
    }),
  ];
  const times = direction === "along" ? 2 : 1;
  const value = times * breakoutShear(AVc.value / AVco.value, psi, Vb.value);
  return computed("Vcbg", `shear breakout ${direction} the ${row.barrier.kind}`, value, "lb", {
    clause: `ACI 318-19 17.7.2.1 (${direction === "along" ? "c" : "b"})`,
    formula: `${times === 2 ? "2 " : ""}A_Vc/A_Vco ψec,V ψed,V ψc,V ψh,V Vb`,
    worked: `${times === 2 ? "2 × " : ""}${figure(AVc.value)}/${figure(AVco.value)} × ${factors.map((t) => figure(t.value)).join(" × ")} × ${figure(Vb.value)}`,
    from: [AVc, AVco, ...factors, Vb],
  });
};
