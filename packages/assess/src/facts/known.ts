import type { Basis, KnownQuantity } from "@floorworthy/job";

/** Which end of every uncertain fact a calculation takes: the one that hurts, or the one that helps. */
export type End = "worst" | "best";

/** The end of a quantity that hurts (or helps) where a larger value means more strength. */
export const strengthEnd = (fact: KnownQuantity, end: End): number => (end === "worst" ? fact.low : fact.high);

/** The same where a larger value means more load. */
export const loadEnd = (fact: KnownQuantity, end: End): number => (end === "worst" ? fact.high : fact.low);

/** How a fact is known, in words for a sheet. */
export const basisWords = (basis: Basis): string => {
  switch (basis.kind) {
    case "measured":
      return ["measured", basis.how, basis.by && `by ${basis.by}`, basis.on].filter(Boolean).join(", ");
    case "documented":
      return ["documented", basis.document, basis.page && `p. ${basis.page}`].filter(Boolean).join(", ");
    case "assumed":
      return `assumed: ${basis.why}`;
    case "stated":
      return "stated, not shown";
  }
};
