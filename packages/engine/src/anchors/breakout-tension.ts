import { basicBreakoutTension, breakoutTension, projectedAreaOfOne } from "../codes/aci318-19/index.ts";
import { type Polygon, unionArea } from "../geometry/index.ts";
import { type Term, toBase, units } from "../quantities/index.ts";
import type { Anchor } from "./anchor-group.ts";
import { eccentric, nearEdge, splitting } from "./breakout-factors.ts";
import { breakoutRegion } from "./breakout-region.ts";
import { depthBetween } from "./depth-between-edges.ts";
import type { DesignBasis } from "./design-basis.ts";
import { leastEdge } from "./edge-distances.ts";
import { computed, figure } from "./terms.ts";

/** A breakout strength and the bodies it stands on. */
export interface Breakout {
  readonly strength: Term;
  /** one convex region for each anchor, mm */
  readonly regions: readonly Polygon[];
}

/**
 * `Ncb`, `Ncbg`: breakout strength of anchors that act together, with the true union of their bodies (17.6.2).
 *
 * @param anchors - at least one
 * @param loads - what each carries, N: only their proportions count, for the eccentricity
 */
export const breakout = (anchors: readonly Anchor[], loads: readonly number[], basis: DesignBasis): Breakout => {
  const hef = depthBetween(anchors, basis);
  const reach = toBase(1.5 * hef.value, "in");
  const regions = anchors.map((anchor) => breakoutRegion(anchor, basis.barriers, reach));
  const ANc = computed("A_Nc", "projected area of the breakout bodies", unionArea(regions) / units["in²"].size, "in²", {
    clause: "ACI 318-19 17.6.2.1.1",
    formula: "union of squares 3 hef × 3 hef, cut at edges, joints and cracks",
    from: [hef],
  });
  const ANco = computed("A_Nco", "projected area of one anchor far from edges", projectedAreaOfOne(hef.value), "in²", {
    clause: "ACI 318-19 17.6.2.1.4",
    formula: "9 hef²",
    worked: `9 × ${figure(hef.value)}²`,
    from: [hef],
  });
  const caMin = leastEdge(anchors, basis.barriers, reach);
  const factors = [...eccentric(anchors, loads, hef), nearEdge(caMin, hef), basis.psiC, splitting(caMin, hef, basis)];
  return { strength: strength(anchors.length, ANc, ANco, factors, basic(hef, basis)), regions };
};

const basic = (hef: Term, { kc, fc, lambdaA }: DesignBasis): Term =>
  computed(
    "Nb",
    "basic breakout strength of one anchor",
    basicBreakoutTension(kc.value, fc.value, hef.value, lambdaA),
    "lb",
    {
      clause: "ACI 318-19 17.6.2.2.1",
      formula: "kc λa √f'c hef^1.5",
      worked: `${figure(kc.value)} × ${figure(lambdaA)} × √${figure(fc.value)} × ${figure(hef.value)}^1.5`,
      from: [kc, fc, hef],
    },
  );

const strength = (n: number, ANc: Term, ANco: Term, psi: readonly Term[], Nb: Term): Term => {
  const [psiEd, psiC, psiCp] = psi.slice(-3).map((t) => t.value) as [number, number, number];
  const psiEc = psi.slice(0, -3).reduce((product, t) => product * t.value, 1);
  const symbol = n === 1 ? "Ncb" : "Ncbg";
  const value = breakoutTension(ANc.value / ANco.value, { psiEc, psiEd, psiC, psiCp }, Nb.value);
  return computed(
    symbol,
    n === 1 ? "breakout strength of one anchor" : `breakout strength of ${n} anchors together`,
    value,
    "lb",
    {
      clause: `ACI 318-19 17.6.2.1 (${n === 1 ? "a" : "b"})`,
      formula: `A_Nc/A_Nco ${psi.map((t) => t.symbol).join(" ")} Nb`,
      worked: `${figure(ANc.value)}/${figure(ANco.value)} × ${psi.map((t) => figure(t.value)).join(" × ")} × ${figure(Nb.value)}`,
      from: [ANc, ANco, ...psi, Nb],
    },
  );
};
