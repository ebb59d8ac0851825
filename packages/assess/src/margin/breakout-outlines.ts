import { breakoutRegion } from "@floorworthy/engine/anchors";
import { type Polygon, unionOutline } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { barriersFor } from "../barriers.ts";
import { placedBases } from "../layout.ts";

/** What of the concrete around the anchors of one base would come out with them, seen from above, mm. */
export interface BreakoutOutline {
  readonly side: string;
  /** 1.5 hef */
  readonly reach: number;
  readonly anchors: readonly { readonly id: string; readonly outline: Polygon }[];
  readonly together: readonly Polygon[];
}

/** The breakout bodies of every base, cut off by edges, joints and cracks as the check cuts them; empty without hef. */
export const breakoutOutlines = (job: Job): readonly BreakoutOutline[] => {
  const hef = job.lift.anchors.product.effectiveEmbedment;
  if (!hef.known) return [];
  const reach = 1.5 * hef.value;
  return placedBases(job)
    .filter((base) => base.anchors.length > 0)
    .map((base) => {
      const barriers = barriersFor(job, base);
      const anchors = base.anchors.map(({ id, at }) => ({ id, outline: breakoutRegion(at, barriers, reach) }));
      return { side: base.side, reach, anchors, together: unionOutline(anchors.map(({ outline }) => outline)) };
    });
};
