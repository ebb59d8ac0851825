/** Saw cuts, forms, filler. */
import { distance, type Polygon, sides } from "@floorworthy/engine/geometry";
import { outlineLength } from "@floorworthy/engine/orders";
import { toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { JobJointPlan } from "../joint-plan/index.ts";
import { run } from "./amounts.ts";
import { costOf } from "./costs.ts";
import type { Cost, OrderLine } from "./order.ts";

const mm = ({ value, unit }: { value: number; unit: string }): number =>
  toBase(value, unit === "m" ? "m" : unit === "ft" ? "ft" : "mm");

const line = (id: string, what: string, term: OrderLine["takes"], note: string, cost: Cost): OrderLine => ({
  id,
  group: "edges and joints",
  what,
  takes: term,
  buy: term,
  sold: "",
  note,
  cost,
});

/** The sawyer comes for no less than the call. */
const sawCost = (job: Job, length: number): Cost => {
  const [cut, call] = [costOf(job, "saw", length), costOf(job, "sawCall", 1)];
  return call.amount > cut.amount ? { ...call, at: `least call ${call.at}` } : cut;
};

export const edgeLines = (job: Job, plan: JobJointPlan, outline: Polygon | undefined): readonly OrderLine[] => {
  const { units } = job;
  if (plan.basis === "as-it-is") {
    const length = plan.cutOuts.reduce((sum, cut) => sum + mm(cut.length), 0);
    return length > 0
      ? [
          {
            ...line(
              "saw-out",
              "Saw through the old slab",
              run("Ls", "full-depth cut round the cut-outs", length, units, {
                from: plan.cutOuts.map(({ what, length: l }) => ({ ...l, words: `round ${what}` })),
              }),
              "Full depth, wet; no overcut corners.",
              sawCost(job, length),
            ),
            group: "old slab",
          },
        ]
      : [];
  }
  const filler = plan.isolation.reduce((sum, { length }) => sum + mm(length), 0);
  const walls = plan.isolation
    .filter(({ shape }) => shape === "along")
    .reduce((sum, { outline: ends }) => sum + distance(ends[0]!, ends.at(-1)!), 0);
  const open = outline ? Math.max(0, outlineLength(outline) - walls) : 0;
  const sawn = mm(plan.sawLength);
  return [
    ...(sawn > 0
      ? [
          line(
            "saw-joints",
            "Saw joints",
            run("Ls", "joints to saw", sawn, units, { from: plan.sawLength.from ?? [] }),
            "Lines and depth: joint plan. Hour: cure and saw card.",
            costOf(job, "jointSaw", sawn),
          ),
        ]
      : []),
    ...(filler > 0
      ? [
          line(
            "filler",
            "Isolation filler, full depth",
            run("Li", "filler along walls and round columns", filler, units, {
              from: plan.isolation.map(({ what, length }) => ({ ...length, words: what })),
            }),
            "1/2 in, top edge level with the floor.",
            costOf(job, "formwork", filler),
          ),
        ]
      : []),
    ...(open > 1
      ? [
          line(
            "forms",
            "Edge forms",
            run("Lf", "edge of the slab where no wall stands", open, units, {
              formula: "round the slab − along walls",
              from: outline ? sides(outline).map(({ a, b }) => run("L", "side", distance(a, b), units)) : [],
            }),
            walls > 0
              ? "Where no wall stands at the edge."
              : "No wall is stated: less where the slab is poured against one.",
            costOf(job, "formwork", open),
          ),
        ]
      : []),
  ];
};
