import {
  basicBreakoutTension,
  breakoutTension,
  depthBetweenEdges,
  projectedAreaOfOne,
  psiEccentricityTension,
  psiEdgeTension,
  psiSplitting,
} from "../codes/aci318-19/index.ts";
import { distance, type Polygon, unionArea } from "../geometry/index.ts";
import { type Term, toBase, units } from "../quantities/index.ts";
import type { Anchor } from "./anchor-group.ts";
import { breakoutRegion } from "./breakout-region.ts";
import type { DesignBasis } from "./design-basis.ts";
import { eccentricity } from "./eccentricity.ts";
import { boundingEdges, leastEdge } from "./edge-distances.ts";
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
  const hef = depthCounted(anchors, basis);
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
  const factors = [...eccentric(anchors, loads, hef), edge(caMin, hef), basis.psiC, splitting(caMin, hef, basis)];
  return { strength: strength(anchors.length, ANc, ANco, factors, basic(hef, basis)), regions };
};

const depthCounted = (anchors: readonly Anchor[], { hef, barriers }: DesignBasis): Term => {
  const edges = boundingEdges(anchors, barriers, toBase(1.5 * hef.value, "in")).map((ca) => ca / units.in.size);
  const s = Math.max(0, ...anchors.flatMap((a, i) => anchors.slice(i + 1).map((b) => distance(a, b)))) / units.in.size;
  const value = depthBetweenEdges(hef.value, edges, s);
  if (value === hef.value) return hef;
  return computed("h'ef", `embedment counted between ${edges.length} edges`, value, "in", {
    clause: "ACI 318-19 17.6.2.1.2",
    formula: "max(ca,max/1.5, s/3)",
    worked: `max(${figure(Math.max(...edges))}/1.5, ${figure(s)}/3)`,
    from: [hef],
  });
};

const eccentric = (anchors: readonly Anchor[], loads: readonly number[], hef: Term): readonly Term[] => {
  if (anchors.length === 1) return [];
  const e = eccentricity(anchors, loads);
  const psi = ([axis, mm]: readonly ["x" | "y", number]): Term => {
    const inches = mm / units.in.size;
    return computed(
      `ψec,N,${axis}`,
      `eccentricity of the pull along ${axis}`,
      psiEccentricityTension(inches, hef.value),
      "",
      {
        clause: "ACI 318-19 17.6.2.3",
        formula: "1/(1 + e'N/(1.5 hef))",
        worked: `1/(1 + ${figure(inches)}/(1.5 × ${figure(hef.value)}))`,
        from: [hef],
      },
    );
  };
  return [psi(["x", e.x]), psi(["y", e.y])];
};

const edge = (caMin: number, hef: Term): Term => {
  const inches = caMin / units.in.size;
  const none = inches === Number.POSITIVE_INFINITY;
  return computed("ψed,N", "nearness of an edge, joint or crack", none ? 1 : psiEdgeTension(inches, hef.value), "", {
    clause: "ACI 318-19 17.6.2.4",
    formula: "0.7 + 0.3 ca,min/(1.5 hef), at most 1",
    worked: none ? "no edge in reach" : `0.7 + 0.3 × ${figure(inches)}/(1.5 × ${figure(hef.value)})`,
    from: [hef],
  });
};

const splitting = (caMin: number, hef: Term, { concrete, product, cac }: DesignBasis): Term => {
  const clause = "ACI 318-19 17.6.2.6";
  const words = "splitting by the anchor's expansion";
  if (concrete.state === "cracked" || concrete.supplementary === "present" || product.kind === "cast-in")
    return computed("ψcp,N", words, 1, "", { clause, worked: "1: cracked, tied by reinforcement, or cast in" });
  const inches = caMin / units.in.size;
  return computed("ψcp,N", words, psiSplitting(inches, cac.value, hef.value), "", {
    clause,
    formula: "max(ca,min, 1.5 hef)/cac, at most 1",
    worked:
      inches === Number.POSITIVE_INFINITY
        ? "no edge"
        : `max(${figure(inches)}, 1.5 × ${figure(hef.value)})/${figure(cac.value)}`,
    from: [cac, hef],
  });
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
