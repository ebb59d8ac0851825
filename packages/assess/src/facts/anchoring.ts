import type { Lift } from "@floorworthy/job";

/**
 * Whether a lift is bolted down. Columns with arms are, whatever a file says: they fall until anchored. Where the sheet of
 * another kind does not say, columns on wheels are not and every other is.
 */
export const anchoring = ({ fixing, kind }: Pick<Lift, "fixing" | "kind">): "anchored" | "loose" => {
  if (kind === "two-post" || kind === "one-post") return "anchored";
  if (fixing.known) return fixing.value;
  return kind === "mobile-columns" ? "loose" : "anchored";
};
