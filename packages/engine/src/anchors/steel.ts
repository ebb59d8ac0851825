import { type Action, countedSteelStrength, steelShear, steelTension } from "../codes/aci318-19/index.ts";
import type { Term } from "../quantities/index.ts";
import type { DesignBasis } from "./design-basis.ts";
import { computed, figure, given } from "./terms.ts";

/** `Nsa` or `Vsa` of one anchor; undefined where the product's steel is not known. */
export const steelStrength = (action: Action, { product }: DesignBasis): Term | undefined => {
  if (product.Ase === undefined || product.futa === undefined) return undefined;
  const Ase = given("Ase", "effective steel area", product.Ase, "in²", "documented: product sheet");
  const specified = given("futa", "tensile strength of the steel", product.futa, "psi", "documented: product sheet");
  const fya = product.fya === undefined ? undefined : given("fya", "yield strength of the steel", product.fya, "psi");
  const counted = countedSteelStrength(specified.value, fya?.value);
  const futa =
    counted === specified.value
      ? specified
      : computed("futa", "steel strength counted", counted, "psi", {
          clause: "ACI 318-19 17.6.1.2",
          formula: "min(futa, 1.9 fya, 125,000)",
          from: fya === undefined ? [specified] : [specified, fya],
        });
  const worked = `${figure(Ase.value)} × ${figure(futa.value)}`;
  if (action === "tension")
    return computed("Nsa", "steel strength of one anchor in tension", steelTension(Ase.value, futa.value), "lb", {
      clause: "ACI 318-19 17.6.1.2",
      formula: "Ase futa",
      worked,
      from: [Ase, futa],
    });
  const kind = product.kind === "cast-in" ? "bolt" : "post-installed";
  return computed("Vsa", "steel strength of one anchor in shear", steelShear(kind, Ase.value, futa.value), "lb", {
    clause: "ACI 318-19 17.7.1.2",
    formula: "0.6 Ase futa",
    worked: `0.6 × ${worked}`,
    from: [Ase, futa],
  });
};
