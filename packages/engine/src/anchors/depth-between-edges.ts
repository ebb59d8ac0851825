import { depthBetweenEdges } from "../codes/aci318-19/index.ts";
import { distance } from "../geometry/index.ts";
import { type Term, toBase, units } from "../quantities/index.ts";
import type { Anchor } from "./anchor-group.ts";
import type { DesignBasis } from "./design-basis.ts";
import { boundingEdges } from "./edge-distances.ts";
import { computed, figure } from "./terms.ts";

/** `hef` counted for a group: less where three or more edges bound it within 1.5 hef (17.6.2.1.2). */
export const depthBetween = (anchors: readonly Anchor[], { hef, barriers }: DesignBasis): Term => {
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
