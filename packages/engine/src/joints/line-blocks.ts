/** Where a joint line may not run. */
import type { JointTask, LineAxis } from "./joint-plan.ts";

/** A forbidden stretch of a line, and what forbids it. */
export interface LineBlock {
  readonly from: number;
  readonly to: number;
  readonly what: string;
}

const SLACK = 1e-6;

/** Forbidden stretches of the line at `at`. Touching the rim of a keep-out, or exactly the distance of an anchor, is allowed. */
export const lineBlocks = (
  task: Pick<JointTask, "keepOuts" | "anchors">,
  axis: LineAxis,
  at: number,
): readonly LineBlock[] => {
  const crossed = task.keepOuts.flatMap(({ rect, what }): LineBlock[] => {
    const [low, high] = axis === "x" ? [rect.x0, rect.x1] : [rect.y0, rect.y1];
    if (at <= low + SLACK || at >= high - SLACK) return [];
    return [
      { from: axis === "x" ? rect.y0 : rect.x0, to: axis === "x" ? rect.y1 : rect.x1, what: `it would cross ${what}` },
    ];
  });
  const near = task.anchors.flatMap(({ at: p, distance, what }): LineBlock[] => {
    const [off, along] = axis === "x" ? [at - p.x, p.y] : [at - p.y, p.x];
    if (Math.abs(off) >= distance - SLACK) return [];
    const half = Math.sqrt(distance * distance - off * off);
    return [{ from: along - half, to: along + half, what: `it would pass too near ${what}` }];
  });
  return [...crossed, ...near];
};

/** Whether a stretch from..to of a line is barred, and by what. */
export const barredBy = (blocks: readonly LineBlock[], from: number, to: number): LineBlock | undefined =>
  blocks.find((b) => b.from < to - SLACK && b.to > from + SLACK);
