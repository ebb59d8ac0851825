import { segmentsMeet } from "../geometry/index.ts";
import { fromBase } from "../quantities/index.ts";
import type { Anchor } from "./anchor-group.ts";
import type { DesignBasis } from "./design-basis.ts";
import { figure } from "./terms.ts";

/** What a reader should know beside the numbers. Anchors and barriers in the same axes. */
export const notesOn = (anchors: readonly Anchor[], basis: DesignBasis): readonly string[] => {
  const { product, concrete, hef, barriers } = basis;
  const notes: string[] = [];
  if (!anchors.some(({ tension }) => tension > 0)) notes.push("No anchor is pulled in this case.");
  if (hef.clause !== undefined)
    notes.push(
      `The slab is thin for this anchor: ${figure(hef.value)} in of its ${figure(fromBase(product.hef, "in"))} in embedment count (ACI 318-19 17.9.4).`,
    );
  const psi = fromBase(concrete.fc, "psi");
  if (product.kind !== "cast-in" && psi < 2500)
    notes.push(
      `Anchors are qualified from 2500 psi (ACI 355.2); ${figure(psi)} psi lies below, so no product value holds here.`,
    );
  if (basis.fc.clause !== undefined)
    notes.push(`Only ${figure(basis.fc.value)} psi count for anchors (ACI 318-19 17.3.1).`);
  if (fromBase(product.hef, "in") < 1.5 && product.kind !== "cast-in")
    notes.push("An embedment below 1.5 in is shallower than any that is qualified (ACI 355.2).");
  const parting = barriers.find((barrier) =>
    anchors.some((a, i) => anchors.slice(i + 1).some((b) => segmentsMeet(barrier, { a, b }))),
  );
  if (parting) notes.push(`A ${parting.kind} runs between the anchors of one base; each side is checked by itself.`);
  return notes;
};
