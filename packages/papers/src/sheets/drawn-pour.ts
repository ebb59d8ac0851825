/** The job as it is to be poured: planned joints and ordered bars drawn into it. */
import type { Assessment } from "@floorworthy/assess";
import { type JobJointPlan, planJobJoints, withPlannedJoints } from "@floorworthy/assess/joint-plan";
import { type Order, orderFor } from "@floorworthy/assess/order";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import type { Bars, Job } from "@floorworthy/job";
import { boundsOf } from "../drawing/hatch.ts";
import { nothing, type Part } from "../plan/part.ts";

export interface DrawnPour {
  /** with the planned joints and the ordered bars in place of what was only wished for */
  readonly job: Job;
  readonly plan: JobJointPlan | Unable;
  readonly order: Order | Unable;
}

const designed = (value: number) => ({
  known: true as const,
  value,
  low: value,
  high: value,
  written: `${value} mm`,
  basis: { kind: "assumed" as const, why: "as ordered" },
});

/** The order's layers as the section draws them; the job's own where it has them. */
const layersOf = (job: Job, order: Order | Unable): readonly Bars[] => {
  if (isUnable(order)) return job.floor.bars;
  const seen = new Map<string, Bars>();
  for (const { bar, depth, spacing } of order.mats) {
    if (depth === undefined) continue;
    seen.set(`${bar.size} ${depth}`, {
      size: bar.size,
      spacing: designed(spacing),
      depth: designed(depth),
      direction: "both",
    });
  }
  return seen.size > 0 ? [...seen.values()] : job.floor.bars;
};

export const drawnPour = (job: Job, assessment: Assessment): DrawnPour => {
  const plan = planJobJoints(job, assessment);
  const order = orderFor(job, assessment, isUnable(plan) ? {} : { joints: plan });
  const joined = isUnable(plan) ? job : withPlannedJoints(job, plan);
  return { job: { ...joined, floor: { ...joined.floor, bars: layersOf(job, order) } }, plan, order };
};

const clipped = (from: number, to: number, low: number, high: number): readonly [number, number] | undefined => {
  const [a, b] = [Math.max(from, low), Math.min(to, high)];
  return b - a > 1 ? [a, b] : undefined;
};

/** The bars in the drill's reach, drawn where they run through the thick parts: they show that the windows are clear. */
export const barsPart = (order: Order | Unable): Part => {
  if (isUnable(order)) return nothing;
  const thick = order.parts.flatMap(({ outline, kind }) => (outline && kind !== "slab" ? [boundsOf(outline)] : []));
  const items = order.mats
    .filter(({ windows }) => windows === "kept clear")
    .flatMap(({ bars, direction, where }) =>
      bars.flatMap(({ at, from, to }) =>
        thick.flatMap(({ x0, y0, x1, y1 }) => {
          const [low, high, start, end] = direction === "x" ? [y0, y1, x0, x1] : [x0, x1, y0, y1];
          const part = at > low && at < high ? clipped(from, to, start, end) : undefined;
          if (!part || (where !== "slab" && part[1] - part[0] < (to - from) / 2)) return [];
          const point = (v: number) => (direction === "x" ? { x: v, y: at } : { x: at, y: v });
          return [
            { kind: "line" as const, tag: "bars", from: point(part[0]), to: point(part[1]), pen: "thin" as const },
          ];
        }),
      ),
    );
  return { items, wanted: [] };
};
