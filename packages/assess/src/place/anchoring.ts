import type { Lift } from "@floorworthy/job";
import type { Stop } from "../assessment.ts";

/**
 * Whether a lift is bolted down. Where its sheet does not say: columns with arms are; columns on wheels are not; any other
 * kind is unless the sheet says that it stands loose.
 */
export const anchoring = ({ fixing, kind }: Lift): "anchored" | "loose" => {
  if (fixing.known) return fixing.value;
  return kind === "mobile-columns" ? "loose" : "anchored";
};

/** A stop that speaks of holes only does not stop a lift that needs none; every other does. */
export const liftsStop = (lift: Lift, stop: Stop): "stops" | "holes-only" =>
  anchoring(lift) === "loose" && HOLES_ONLY.has(stop.id) ? "holes-only" : "stops";

const HOLES_ONLY = new Set(["post-tension", "pipes-not-located"]);
