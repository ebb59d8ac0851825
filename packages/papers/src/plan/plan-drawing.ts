import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import type { Drawing } from "../drawing/drawing.ts";
import { describePlan } from "./describe-plan.ts";
import { planGround } from "./plan-ground.ts";
import type { Scale } from "./scales.ts";

export interface PlanOptions {
  /** mm of paper; 200 × 200 unless told */
  readonly width?: number;
  readonly height?: number;
  /** the largest standard scale that fits unless told */
  readonly scale?: Scale;
}

/** The bay from above as a drawing of its own: setting-out dimensions from the left and the back wall, ink on paper. */
export const planDrawing = (
  job: Job,
  assessment: Assessment,
  { width = 200, height = 200, scale }: PlanOptions = {},
): Drawing => {
  const zone = { x0: 2, y0: 2, x1: width - 2, y1: height - 2 };
  const ground = planGround(job, assessment, zone, scale);
  const empty = {
    kind: "text",
    tag: "labels",
    at: { x: width / 2, y: height / 2 },
    words: "Neither the floor nor the lift has a place yet.",
    size: 3,
    align: "middle",
    lettering: "regular",
    reads: "across",
  } as const;
  return {
    title: `Plan: ${job.title}`,
    description: describePlan(job, assessment),
    width,
    height,
    items: ground ? [ground] : [empty],
  };
};
