import { psiEccentricityTension, psiEdgeTension, psiSplitting } from "../codes/aci318-19/index.ts";
import { type Term, units } from "../quantities/index.ts";
import type { Anchor } from "./anchor-group.ts";
import type { DesignBasis } from "./design-basis.ts";
import { eccentricity } from "./eccentricity.ts";
import { computed, figure } from "./terms.ts";

/** ψec,N along x and along y; none for a single anchor. */
export const eccentric = (anchors: readonly Anchor[], loads: readonly number[], hef: Term): readonly Term[] => {
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

/** ψed,N from ca,min, mm. */
export const nearEdge = (caMin: number, hef: Term): Term => {
  const inches = caMin / units.in.size;
  const none = inches === Number.POSITIVE_INFINITY;
  return computed("ψed,N", "nearness of an edge, joint or crack", none ? 1 : psiEdgeTension(inches, hef.value), "", {
    clause: "ACI 318-19 17.6.2.4",
    formula: "0.7 + 0.3 ca,min/(1.5 hef), at most 1",
    worked: none ? "no edge in reach" : `0.7 + 0.3 × ${figure(inches)}/(1.5 × ${figure(hef.value)})`,
    from: [hef],
  });
};

/** ψcp,N from ca,min, mm: only post-installed anchors in uncracked, untied concrete split it. */
export const splitting = (caMin: number, hef: Term, { concrete, product, cac }: DesignBasis): Term => {
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
