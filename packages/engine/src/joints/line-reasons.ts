/** Why a line is where it is, and why a wanted one is not there. */
import { type Polygon, signedArea } from "../geometry/index.ts";
import type { CutLine } from "./cut-lines.ts";
import type { JointTask, RefusedLine, WantedLine } from "./joint-plan.ts";
import { barredBy, lineBlocks } from "./line-blocks.ts";

const SLACK = 1e-6;
const touches = (line: CutLine, at: number, along: number): boolean =>
  Math.abs(line.at - at) < SLACK && along >= line.from - SLACK && along <= line.to + SLACK;

/** Corners where the outline turns inward. */
export const reentrantCorners = (slab: Polygon) => {
  const ring = signedArea(slab) < 0 ? slab.toReversed() : slab;
  return ring.filter((p, i) => {
    const [a, b] = [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!];
    return (p.x - a.x) * (b.y - p.y) - (p.y - a.y) * (b.x - p.x) < -SLACK;
  });
};

export const lineReasons = (task: JointTask, line: CutLine): readonly string[] => {
  const other = line.axis === "x" ? "y" : "x";
  const corner = reentrantCorners(task.slab).some((p) => touches(line, p[line.axis], p[other]));
  const columns = task.columns.filter(({ rect }) => {
    const middle = { x: (rect.x0 + rect.x1) / 2, y: (rect.y0 + rect.y1) / 2 };
    return touches(line, middle[line.axis], middle[other]);
  });
  const wanted = task.wanted.filter((w) => w.axis === line.axis && covers(line, w));
  return [
    ...(corner ? ["It starts from an inside corner of the slab, where a crack would."] : []),
    ...columns.map(({ what }) => `It meets ${what}.`),
    ...wanted.map(({ why }) => why),
    "It keeps the panels beside it within the spacing and near square.",
  ];
};

const covers = (line: CutLine, w: WantedLine): boolean =>
  Math.abs(line.at - w.at) < SLACK && line.from < w.to - SLACK && line.to > w.from + SLACK;

export const refusedLines = (task: JointTask, lines: readonly CutLine[]): readonly RefusedLine[] =>
  task.wanted
    .filter((w) => !lines.some((line) => line.axis === w.axis && covers(line, w)))
    .map((wanted) => {
      const block = barredBy(lineBlocks(task, wanted.axis, wanted.at), wanted.from, wanted.to);
      return {
        wanted,
        reason: block
          ? `Not cut: ${block.what}.`
          : "Not cut: the panels keep every rule without it, and it would cost more saw cut than it is worth here.",
      };
    });
