/** Why each line of the layout is worth its cut, with the panel there would be without it. */
import type { Rect } from "@floorworthy/engine/geometry";
import type { JointLine, JointPlan, JointTask } from "@floorworthy/engine/joints";
import type { Job } from "@floorworthy/job";
import { tape } from "./tape.ts";

const SLACK = 1e-3;

const overlapping = (p: Rect, q: Rect, along: "x" | "y"): boolean =>
  along === "y" ? p.y0 < q.y1 - SLACK && p.y1 > q.y0 + SLACK : p.x0 < q.x1 - SLACK && p.x1 > q.x0 + SLACK;

/** Longest side of a panel that would grow over the line if it were not cut, mm; 0 when none. */
const withoutIt = ({ axis, a }: JointLine, { panels }: JointPlan): number => {
  const along = axis === "x" ? "y" : "x";
  const at = a[axis];
  const before = panels.filter(({ rect }) => Math.abs((axis === "x" ? rect.x1 : rect.y1) - at) < SLACK);
  const after = panels.filter(({ rect }) => Math.abs((axis === "x" ? rect.x0 : rect.y0) - at) < SLACK);
  const size = (r: Rect) => (axis === "x" ? r.x1 - r.x0 : r.y1 - r.y0);
  return Math.max(
    0,
    ...before.flatMap((p) =>
      after.filter((q) => overlapping(p.rect, q.rect, along)).map((q) => size(p.rect) + size(q.rect)),
    ),
  );
};

const GENERIC = "It keeps the panels beside it within the spacing and near square.";

export const reasonsFor = (
  line: JointLine,
  plan: JointPlan,
  task: JointTask,
  units: Job["units"],
): readonly string[] => {
  const long = withoutIt(line, plan);
  const over = long > task.spacing + SLACK;
  const size = `Without it a panel would be ${tape(long, units)} long`;
  return [
    ...line.reasons.filter((reason) => reason !== GENERIC),
    over
      ? `${size}, over the ${tape(task.spacing, units)} between joints.`
      : long > 0
        ? `${size}, out of proportion to its width or across a line that must stop here.`
        : GENERIC,
  ];
};
