import type { Assessment } from "@floorworthy/assess";
import { anchorClear, type SurveyPlan } from "@floorworthy/assess/survey";
import type { Job } from "@floorworthy/job";
import type { Ground } from "../../drawing/drawing.ts";
import { keepClearOutline } from "../../plan/keep-clear.ts";
import type { Part } from "../../plan/part.ts";

/** Radius of a hole's ring on the plan, mm of the model. */
const RING = 45;

/** The numbered holes, and around each base the line within which the future anchors allow none. */
export const holesPart = (plan: SurveyPlan, job: Job, { layout }: Assessment): Part => ({
  items: [
    ...layout.bases
      .filter(({ anchors }) => anchors.length > 0)
      .map((base) => ({
        kind: "polygon" as const,
        tag: "anchors-to-come",
        points: keepClearOutline(base, anchorClear(job).distance),
        pen: "keep-clear" as const,
        hatch: "none" as const,
      })),
    ...plan.holes.map(({ at }) => ({
      kind: "circle" as const,
      tag: "holes",
      centre: at,
      radius: RING,
      pen: "tick" as const,
      hatch: "blank" as const,
    })),
  ],
  wanted: plan.holes.map(({ number, at }) => ({
    tag: "holes",
    words: String(number),
    lettering: "bold",
    at,
  })),
});

/** Tags of what the common plan shows for setting anchors and is in the way when holes are drilled. */
const notForDrilling: readonly string[] = ["windows", "keep-clear", "distances", "figures"];

/** The rings as large on the paper as a pencil finds them. */
export const ringed = (ground: Ground): Ground => ({
  ...ground,
  items: ground.items
    .filter(({ tag }) => !notForDrilling.includes(tag))
    .map((item) => (item.kind === "circle" && item.tag === "holes" ? { ...item, radius: 0.9 * ground.scale } : item)),
});
