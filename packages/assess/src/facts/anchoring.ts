import type { Lift } from "@floorworthy/job";

/**
 * Whether a lift is bolted down. Where its sheet does not say: columns with arms are; columns on wheels are not; any other
 * kind is unless the sheet says that it stands loose.
 */
export const anchoring = ({ fixing, kind }: Pick<Lift, "fixing" | "kind">): "anchored" | "loose" => {
  if (fixing.known) return fixing.value;
  return kind === "mobile-columns" ? "loose" : "anchored";
};
