import { depthLimitInThinMember } from "../codes/aci318-19/index.ts";
import { fromBase, type Term } from "../quantities/index.ts";
import type { AnchorConcrete, AnchorProduct } from "./anchor-group.ts";
import { computed, figure, given } from "./terms.ts";

/** `hef` counted, in: the product's, or the limit of 17.9.4 in a thin member unless the product's sheet qualifies it. */
export const effectiveDepth = (product: AnchorProduct, concrete: AnchorConcrete): Term => {
  const hef = given("hef", "effective embedment of the product", product.hef, "in", "documented: product sheet");
  const ha = given("ha", "thickness of the slab", concrete.thickness, "in");
  const limit = depthLimitInThinMember(product.kind, ha.value);
  if (hef.value <= limit) return { ...hef, words: "effective embedment counted" };
  const from = product.hefQualifiedFrom;
  if (from !== undefined && concrete.thickness >= from)
    return {
      ...hef,
      words: "effective embedment counted",
      basis: `documented: the product sheet qualifies it in members from ${figure(fromBase(from, "in"))} in`,
    };
  return computed("hef", "effective embedment counted: limited by the thin slab", limit, "in", {
    clause: "ACI 318-19 17.9.4",
    formula: "max(2/3 ha, ha − 4 in), at most hef",
    worked: `max(2/3 × ${figure(ha.value)}, ${figure(ha.value)} − 4) = ${figure(limit)} < ${figure(hef.value)}`,
    from: [hef, ha],
  });
};
