import {
  breakoutCoefficient,
  countedStrength,
  criticalEdge,
  lightweightFactorForAnchors,
  psiCrackingTension,
} from "../codes/aci318-19/index.ts";
import type { Term } from "../quantities/index.ts";
import type { AnchorConcrete, AnchorMode, AnchorProduct, Barrier } from "./anchor-group.ts";
import { effectiveDepth } from "./effective-depth.ts";
import { computed, given } from "./terms.ts";

/** What every anchor check starts from, in the units of the page (lb, in, psi). */
export interface DesignBasis {
  readonly product: AnchorProduct;
  readonly concrete: AnchorConcrete;
  readonly barriers: readonly Barrier[];
  readonly mode: AnchorMode;
  readonly fc: Term;
  readonly ha: Term;
  readonly da: Term;
  readonly hef: Term;
  readonly lambdaA: number;
  readonly kc: Term;
  readonly psiC: Term;
  readonly cac: Term;
}

export const designBasis = (
  product: AnchorProduct,
  concrete: AnchorConcrete,
  barriers: readonly Barrier[],
  mode: AnchorMode,
): DesignBasis => {
  const hef = effectiveDepth(product, concrete);
  return {
    product,
    concrete,
    barriers,
    mode,
    fc: strength(product, concrete),
    ha: given("ha", "thickness of the slab", concrete.thickness, "in"),
    da: given("da", "anchor diameter", product.da, "in"),
    hef,
    lambdaA: lightweightFactorForAnchors(product.kind, concrete.lambda ?? 1),
    ...cracking(product, concrete, mode),
    cac:
      product.cac === undefined
        ? computed("cac", "critical edge distance for splitting", criticalEdge(product.kind, hef.value), "in", {
            clause: "ACI 318-19 Table 17.9.5",
            from: [hef],
          })
        : given("cac", "critical edge distance for splitting", product.cac, "in", "documented: product sheet"),
  };
};

const strength = (product: AnchorProduct, concrete: AnchorConcrete): Term => {
  const fc = given("f'c", "compressive strength", concrete.fc, "psi");
  const counted = countedStrength(product.kind, fc.value);
  if (counted === fc.value) return fc;
  const words = "compressive strength counted for anchors";
  return computed("f'c", words, counted, "psi", { clause: "ACI 318-19 17.3.1", from: [fc] });
};

/** Common practice takes 24 for uncracked concrete in the service allowance. */
const UNCRACKED_ALLOWANCE_K = 24;

/** kc with the ψc,N that belongs to it: a k for uncracked concrete leaves ψc,N = 1. */
const cracking = (product: AnchorProduct, { state }: AnchorConcrete, mode: AnchorMode) => {
  const installation = product.kind === "cast-in" ? "cast-in" : "post-installed";
  const ofUncracked = product.kUncracked ?? allowanceK(product, mode);
  const own = state === "uncracked" && ofUncracked !== undefined;
  const sheet = state === "cracked" ? product.kCracked : product.kUncracked;
  const value = own ? ofUncracked : (sheet ?? breakoutCoefficient(installation));
  const clause = own && sheet === undefined ? "common practice, no source" : "ACI 318-19 17.6.2.2.1";
  const basis = sheet === undefined ? {} : { basis: "documented: product sheet" };
  const psiC = psiCrackingTension(state, own ? "product-k" : installation);
  return {
    kc: { ...computed("kc", `breakout coefficient, ${installation}`, value, "", { clause }), ...basis },
    psiC: computed("ψc,N", `factor for ${state} concrete`, psiC, "", { clause: "ACI 318-19 17.6.2.5" }),
  };
};

const allowanceK = ({ kind }: AnchorProduct, mode: AnchorMode): number | undefined =>
  mode === "service-allowance" && kind !== "cast-in" ? UNCRACKED_ALLOWANCE_K : undefined;
