import { psiCrackingPullout, pullout, pulloutOfHead } from "../codes/aci318-19/index.ts";
import { fromBase, type Term } from "../quantities/index.ts";
import type { DesignBasis } from "./design-basis.ts";
import { computed, figure, given } from "./terms.ts";

/**
 * `Npn` of one anchor: from the product's tests for the state of the concrete, or from the head of a cast-in anchor;
 * undefined where neither is known. A value for cracked concrete serves for uncracked too, on the safe side.
 */
export const pulloutStrength = (basis: DesignBasis): Term | undefined => {
  const { product, concrete } = basis;
  if (product.kind === "cast-in") return product.Abrg === undefined ? undefined : head(product.Abrg, basis);
  const Np = concrete.state === "cracked" ? product.NpCracked : (product.NpUncracked ?? product.NpCracked);
  if (Np === undefined) return undefined;
  return computed("Npn", "pull-out strength of one anchor", fromBase(Np, "lb"), "lb", {
    clause: "ACI 318-19 17.6.3.2.1",
    formula: "Np of the product's tests",
    from: [given("Np", "pull-out strength, 5 % fractile", Np, "lb", "documented: product sheet")],
  });
};

const head = (area: number, { fc, concrete }: DesignBasis): Term => {
  const Abrg = given("Abrg", "net bearing area of the head", area, "in²", "documented: product sheet");
  const psi = psiCrackingPullout(concrete.state, "cast-in");
  return computed("Npn", "pull-out strength of one anchor", pullout(psi, pulloutOfHead(Abrg.value, fc.value)), "lb", {
    clause: "ACI 318-19 17.6.3.2.2 (a)",
    formula: "ψc,P 8 Abrg f'c",
    worked: `${figure(psi)} × 8 × ${figure(Abrg.value)} × ${figure(fc.value)}`,
    from: [Abrg, fc],
  });
};
