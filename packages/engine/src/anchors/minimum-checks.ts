import { minimumEdge, minimumSpacing } from "../codes/aci318-19/index.ts";
import { distance } from "../geometry/index.ts";
import type { Check, Term } from "../quantities/index.ts";
import { check } from "./allowance.ts";
import type { Anchor } from "./anchor-group.ts";
import type { DesignBasis } from "./design-basis.ts";
import { nearestBarrier } from "./nearest-barrier.ts";
import { names } from "./tension-checks.ts";
import { computed, given } from "./terms.ts";

/** The distances and thicknesses of 17.9 that keep an anchor from splitting the slab: what is needed against what is there. */
export const minimumChecks = (anchors: readonly Anchor[], basis: DesignBasis): readonly Check[] =>
  [
    edgeCheck(anchors, basis),
    spacingCheck(anchors, basis),
    thicknessCheck(anchors, basis),
    depthCheck(anchors, basis),
  ].filter((c) => c !== undefined);

const SHEET = "documented: product sheet";

const edgeCheck = (anchors: readonly Anchor[], { product, da, barriers }: DesignBasis): Check | undefined => {
  const found = anchors.flatMap((anchor) => {
    const near = nearestBarrier(anchor, barriers);
    return near === undefined ? [] : [{ anchor, near }];
  });
  if (found.length === 0) return undefined;
  const { anchor, near } = found.reduce((a, b) => (b.near.distance < a.near.distance ? b : a));
  const words = "edge distance needed";
  const needed =
    product.cmin === undefined
      ? computed("ca,min", words, minimumEdge(product.kind, da.value, product.setting), "in", {
          clause: "ACI 318-19 Table 17.9.2(b)",
          formula: `${minimumEdge(product.kind, 1, product.setting)} da`,
          from: [da],
        })
      : given("ca,min", words, product.cmin, "in", SHEET);
  const there = given("ca", `distance to the nearest ${near.barrier.kind}`, near.distance, "in");
  return minimum("anchor-edge-minimum", "Edge distance of the anchors", needed, there, names([anchor]));
};

const spacingCheck = (anchors: readonly Anchor[], { product, da, hef }: DesignBasis): Check | undefined => {
  const pairs = anchors.flatMap((a, i) => anchors.slice(i + 1).map((b) => ({ pair: [a, b], s: distance(a, b) })));
  if (pairs.length === 0) return undefined;
  const { pair, s } = pairs.reduce((a, b) => (b.s < a.s ? b : a));
  const words = "spacing needed";
  const needed =
    product.smin === undefined
      ? computed("s,min", words, minimumSpacing(product.kind, da.value, hef.value), "in", {
          clause: "ACI 318-19 Table 17.9.2(a)",
          formula: product.kind === "screw" ? "max(0.6 hef, 6 da)" : "6 da",
          from: [da, hef],
        })
      : given("s,min", words, product.smin, "in", SHEET);
  return minimum(
    "anchor-spacing-minimum",
    "Spacing of the anchors",
    needed,
    given("s", "least spacing", s, "in"),
    names(pair),
  );
};

const thicknessCheck = (anchors: readonly Anchor[], { product, ha }: DesignBasis): Check | undefined =>
  product.hmin === undefined
    ? undefined
    : minimum(
        "anchor-thickness-minimum",
        "Slab thickness for the anchor",
        given("h,min", "thickness the product needs", product.hmin, "in", SHEET),
        ha,
        names(anchors),
      );

const depthCheck = (anchors: readonly Anchor[], { product, ha }: DesignBasis): Check => {
  const depth = given("hnom", "depth of the anchor in the slab", product.hnom ?? product.hef, "in", SHEET);
  return minimum("anchor-depth", "Anchor shorter than the slab is thick", depth, ha, names(anchors));
};

const minimum = (id: string, title: string, needed: Term, there: Term, governs: string): Check => ({
  ...check(id, title, needed, there, governs),
  clause: needed.clause ?? (id === "anchor-depth" ? "common practice, no source" : "product sheet"),
});
