/**
 * Joints of a whole slab: the cheapest layout of straight cuts on the grid that keeps every rule, or, where none does, the
 * one that breaks the least important rules the least, with each unmet rule named.
 *
 * Always kept: no cut over a keep-out or nearer an anchor than asked. Kept in this order: every inside corner starts a
 * joint; spacing; building columns on a joint; aspect. Cracks cannot be prevented but can be placed: even a perfect
 * layout cracks at random in up to 3 % of its panels (ACI 302.1R) [aci-302].
 */
import { distanceToBoundary, type Point, type Polygon, type Rect } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/index.ts";
import { candidates } from "./candidates.ts";
import { type CutLine, cutLines } from "./cut-lines.ts";
import { gridModel } from "./grid-model.ts";
import type {
  BuildingColumn,
  IsolationJoint,
  JointPlan,
  JointTask,
  Panel,
  PlanWatch,
  UnmetRule,
} from "./joint-plan.ts";
import { lineReasons, reentrantCorners, refusedLines } from "./line-reasons.ts";
import { columnsWithin, tooLong, tooWide } from "./panel-cost.ts";
import { type Box, partition } from "./partition.ts";

const PLACE = "joint plan";

export const planJoints = (task: JointTask, watch: PlanWatch = {}): JointPlan | Unable => {
  if (task.slab.length < 4 || !alongWalls(task.slab)) {
    return unable(
      PLACE,
      "The slab's outline has sides that do not run along the walls; joints are planned for square outlines only.",
    );
  }
  if (!(task.spacing > 0) || !(task.aspect >= 1) || !(task.step > 0)) {
    return unable(PLACE, "The joint spacing, the panel proportion or the grid step is not a usable number.");
  }
  const grid = candidates(task);
  const model = gridModel(task, grid);
  const found = partition(task, model, watch);
  if (found === "stopped") return unable(PLACE, "The search was stopped before it had an answer.");
  const lines = cutLines(model, found.cuts);
  const rect = (b: Box): Rect => ({
    x0: model.xs[b.i0]!,
    y0: model.ys[b.j0]!,
    x1: model.xs[b.i1]!,
    y1: model.ys[b.j1]!,
  });
  const rects = found.panels.map(rect);
  const length = lines.reduce((s, line) => s + line.to - line.from, 0);
  return {
    lines: lines.map((line) => ({
      axis: line.axis,
      a: line.axis === "x" ? { x: line.at, y: line.from } : { x: line.from, y: line.at },
      b: line.axis === "x" ? { x: line.at, y: line.to } : { x: line.to, y: line.at },
      reasons: lineReasons(task, line),
    })),
    isolation: task.columns.map(isolationJoint),
    panels: rects.map(panel),
    unmet: rects.flatMap((r) => unmetRules(task, r)),
    refused: refusedLines(task, lines),
    stops: lines.flatMap((line) => lineStops(task, line)),
    sawLength: { symbol: "Ls", words: "length of saw cut", value: length, unit: "mm" },
    cost: found.cost,
    grid,
  };
};

/** Ends of a line inside the slab. */
const lineStops = ({ slab }: JointTask, { axis, at, from, to }: CutLine): readonly Point[] =>
  [from, to]
    .map((v) => (axis === "x" ? { x: at, y: v } : { x: v, y: at }))
    .filter((p) => distanceToBoundary(p, slab) > 1e-6);

const alongWalls = (slab: Polygon): boolean =>
  slab.every((p, i) => {
    const q = slab[(i + 1) % slab.length]!;
    return p.x === q.x || p.y === q.y;
  });

const panel = (rect: Rect): Panel => {
  const [width, length] = [rect.x1 - rect.x0, rect.y1 - rect.y0];
  return { rect, width, length, aspect: Math.max(width, length) / Math.min(width, length) };
};

/** Half an inch of filler; joints run into the corners of the turned square. NRMCA CIP 6 [cip-6]. */
const isolationJoint = ({ rect: { x0, y0, x1, y1 }, what }: BuildingColumn): IsolationJoint => {
  const [x, y] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const reach = (x1 - x0 + y1 - y0) / 2 + 12.7 * Math.SQRT2;
  return {
    outline: [
      { x: x - reach, y },
      { x, y: y - reach },
      { x: x + reach, y },
      { x, y: y + reach },
    ],
    what,
  };
};

const unmetRules = (task: JointTask, rect: Rect): readonly UnmetRule[] => {
  const inches = (mm: number) => `${Number((mm / 25.4).toFixed(1))} in`;
  const [w, l] = [rect.x1 - rect.x0, rect.y1 - rect.y0];
  const holds = task.keepOuts.find(
    ({ rect: k }) => k.x0 < rect.x1 && k.x1 > rect.x0 && k.y0 < rect.y1 && k.y1 > rect.y0,
  );
  const blamed = holds?.what;
  const because = holds ? `: ${holds.what} leaves no place for a cut` : "";
  const corner = reentrantCorners(task.slab).find(
    (p) => p.x > rect.x0 && p.x < rect.x1 && p.y > rect.y0 && p.y < rect.y1,
  );
  const onSide = cornerOnSide(task.slab, rect);
  return [
    ...(corner || onSide
      ? [
          {
            rule: "re-entrant corner" as const,
            panel: rect,
            because: blamed,
            words: `No joint can start from an inside corner of this panel${because}.`,
          },
        ]
      : []),
    ...(tooWide(task, rect)
      ? [
          {
            rule: "spacing" as const,
            panel: rect,
            because: blamed,
            words: `A panel stays ${inches(w)} × ${inches(l)}, over ${inches(task.spacing)}${because}.`,
          },
        ]
      : []),
    ...columnsWithin(task, rect).map(({ what }) => ({
      rule: "building column" as const,
      panel: rect,
      because: blamed,
      words: `No joint can reach ${what}${because}.`,
    })),
    ...(tooLong(task, rect)
      ? [
          {
            rule: "aspect" as const,
            panel: rect,
            because: blamed,
            words: `A panel stays ${inches(w)} × ${inches(l)}, longer than ${task.aspect} times its width${because}.`,
          },
        ]
      : []),
  ];
};

/** A panel that is not wholly slab: its box holds ground outside the outline. */
const cornerOnSide = (slab: Polygon, rect: Rect): boolean => {
  const area = (rect.x1 - rect.x0) * (rect.y1 - rect.y0);
  return area - overlap(slab, rect) > 1e-3 * Math.max(1, Math.sqrt(area));
};

/** Area of a square-cornered outline within a rectangle: strips between its corners' x, each side counted with its sign. */
const overlap = (slab: Polygon, { x0, y0, x1, y1 }: Rect): number => {
  let sum = 0;
  slab.forEach((p, i) => {
    const q = slab[(i + 1) % slab.length]!;
    if (p.y !== q.y) return;
    const width = Math.min(Math.max(q.x, x0), x1) - Math.min(Math.max(p.x, x0), x1);
    sum += width * (Math.min(Math.max(p.y, y0), y1) - y0);
  });
  return Math.abs(sum);
};
