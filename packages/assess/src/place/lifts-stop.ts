import type { Lift } from "@floorworthy/job";
import type { Stop } from "../assessment.ts";
import { anchoring } from "../facts/anchoring.ts";

/** A stop that speaks of holes only does not stop a lift that needs none; every other does. */
export const liftsStop = (lift: Lift, stop: Stop): "stops" | "holes-only" =>
  anchoring(lift) === "loose" && HOLES_ONLY.has(stop.id) ? "holes-only" : "stops";

const HOLES_ONLY = new Set(["post-tension", "pipes-not-located"]);
