/** What is wrong with a box as one panel, and what a wanted line inside it would have been worth. */
import type { Rect } from "../geometry/index.ts";
import type { JointRule, JointTask } from "./joint-plan.ts";

/** Cost of leaving a rule unmet, mm of saw cut: each outweighs any number of cuts and the rules below it. */
export const UNMET: Readonly<Record<JointRule, number>> = {
  "re-entrant corner": 1e13,
  spacing: 1e11,
  "building column": 1e9,
  aspect: 1e7,
};

const SLACK = 1e-6;

export const tooWide = ({ spacing }: JointTask, { x0, y0, x1, y1 }: Rect): boolean =>
  Math.max(x1 - x0, y1 - y0) > spacing + SLACK;

export const tooLong = ({ aspect }: JointTask, { x0, y0, x1, y1 }: Rect): boolean => {
  const [w, l] = [x1 - x0, y1 - y0];
  return Math.max(w, l) > aspect * Math.min(w, l) + SLACK;
};

/** Building columns whose middle lies within the panel and on none of its sides. */
export const columnsWithin = ({ columns }: JointTask, { x0, y0, x1, y1 }: Rect) =>
  columns.filter(({ rect }) => {
    const [x, y] = [(rect.x0 + rect.x1) / 2, (rect.y0 + rect.y1) / 2];
    return x > x0 + SLACK && x < x1 - SLACK && y > y0 + SLACK && y < y1 - SLACK;
  });

/** Wanted lines that would run through the panel. */
export const wantedWithin = ({ wanted }: JointTask, { x0, y0, x1, y1 }: Rect) =>
  wanted.filter((w) => {
    const [low, high, from, to] = w.axis === "x" ? [x0, x1, y0, y1] : [y0, y1, x0, x1];
    return w.at > low + SLACK && w.at < high - SLACK && w.from < to - SLACK && w.to > from + SLACK;
  });

/** Cost of a rectangular panel: 0 when every rule is kept and no wanted line is missed. */
export const panelCost = (task: JointTask, rect: Rect): number => {
  const [w, l] = [rect.x1 - rect.x0, rect.y1 - rect.y0];
  let cost = 0;
  if (tooWide(task, rect)) cost += UNMET.spacing * (1 + (Math.max(w, l) - task.spacing) / task.spacing);
  if (tooLong(task, rect)) cost += UNMET.aspect * (Math.max(w, l) / Math.min(w, l));
  if (task.columns.length > 0) cost += UNMET["building column"] * columnsWithin(task, rect).length;
  if (task.wanted.length > 0) for (const line of wantedWithin(task, rect)) cost += line.worth;
  return cost;
};
