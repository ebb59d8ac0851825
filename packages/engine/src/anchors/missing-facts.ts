import type { AnchorConcrete, AnchorMode, AnchorProduct } from "./anchor-group.ts";

/** The absent facts of the product, and what each of them costs. */
export const missingFacts = (
  product: AnchorProduct,
  { state }: AnchorConcrete,
  mode: AnchorMode,
): readonly string[] => {
  const lacks = (is: boolean, text: string): readonly string[] => (is ? [text] : []);
  const { kind } = product;
  const postInstalled = kind !== "cast-in";
  const Np = state === "cracked" ? product.NpCracked : (product.NpUncracked ?? product.NpCracked);
  return [
    ...lacks(product.Ase === undefined, "Ase, effective steel area: steel is not checked"),
    ...lacks(product.futa === undefined, "futa, strength of the anchor steel: steel is not checked"),
    ...lacks(
      product.ductile === undefined && product.Ase !== undefined && product.futa !== undefined,
      "ductility of the steel: counted as brittle",
    ),
    ...lacks(
      postInstalled && kind !== "adhesive" && Np === undefined,
      `Np, pull-out strength in ${state} concrete: pull-out is not checked`,
    ),
    ...lacks(!postInstalled && product.Abrg === undefined, "Abrg, bearing area of the head: pull-out is not checked"),
    ...lacks(kind === "adhesive", "characteristic bond stress: bond (ACI 318-19 17.6.5) is not checked"),
    ...lacks(
      postInstalled && product.category === undefined && mode === "strength-design",
      "category of the anchor (ACI 355.2 or 355.4): counted as category 3",
    ),
    ...lacks(postInstalled && product.hmin === undefined, "minimum slab thickness of the product: not checked"),
    ...lacks(
      product.cmin === undefined,
      "minimum edge distance of the product: the default of ACI 318-19 17.9.2 counts",
    ),
    ...lacks(product.smin === undefined, "minimum spacing of the product: the default of ACI 318-19 17.9.2 counts"),
    ...lacks(
      postInstalled && product.cac === undefined && state === "uncracked",
      "critical edge distance of the product: the default of ACI 318-19 17.9.5 counts",
    ),
  ];
};
