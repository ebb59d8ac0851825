import type { Obstacle } from "@floorworthy/engine/placement";
import type { Job, Position } from "@floorworthy/job";
import { placeLift } from "./place/place-lift.ts";
import type { PlaceMove } from "./place/placing.ts";

/** Where the lift may stand instead, on a mark a tape can find, mm; or what keeps it from standing anywhere. */
export type Shift =
  | {
      readonly found: "place";
      readonly dx: number;
      readonly dy: number;
      readonly to: Position;
      /** the shortest move, exact */
      readonly smallest: PlaceMove;
      /** the mark, the shortest move and the window, in words */
      readonly sentence: string;
    }
  | { readonly found: "nowhere"; readonly why: string };

/**
 * The nearest practical place that keeps every distance of the maker's page, and of what is given `also`, and still lets
 * the vehicle in; undefined without a plan.
 */
export const smallestShift = (job: Job, also: readonly Obstacle[] = []): Shift | undefined => {
  if (!job.position || !job.bay.outline || !job.lift.base.outline) return undefined;
  const { answer, sentence, proposed, smallest } = placeLift(job, { also, stands: ["as-wanted"], fits: "aside" });
  if (answer === "not-known") return undefined;
  if (!proposed || !smallest) return { found: "nowhere", why: sentence };
  return { found: "place", dx: proposed.dx, dy: proposed.dy, to: proposed.position, smallest, sentence };
};
