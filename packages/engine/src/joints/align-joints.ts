/**
 * Fewer and straighter lines. The cheapest layout of `planJoints` knows only the length of its cuts; sawyers want lines that
 * run through and cross instead of stopping at each other (UFC 3-320-06A: no staggering) [ufc-3-320-06a].
 *
 *   burden(plan) = unmet rules + saw cut + stopCost × (lines that stop inside the slab) + worth of wanted lines missed
 *
 * Method: keep only the places the layout uses and the even division; take one place away,
 * plan again on so small a grid, and keep whatever lowers the burden, until nothing does. Leaves no more rules unmet
 * than it found, nor a greater burden. Cost: a few small plans for each place.
 */
import { isUnable } from "../quantities/index.ts";
import { evenDivision } from "./candidates.ts";
import type { JointPlan, JointTask, LineAxis } from "./joint-plan.ts";
import { UNMET } from "./panel-cost.ts";
import { planJoints } from "./plan-joints.ts";

/** What a layout costs as a whole, mm of saw cut. */
export const planBurden = (task: JointTask, plan: JointPlan): number =>
  plan.unmet.reduce((sum, { rule, panel: { x0, y0, x1, y1 } }) => {
    const [w, l] = [x1 - x0, y1 - y0];
    const excess =
      rule === "spacing" ? Math.max(w, l) / task.spacing : rule === "aspect" ? Math.max(w, l) / Math.min(w, l) : 1;
    return sum + UNMET[rule] * excess;
  }, 0) +
  plan.sawLength.value +
  task.stopCost * plan.stops.length +
  plan.refused.reduce((sum, { wanted }) => sum + wanted.worth, 0);

type Places = NonNullable<JointTask["places"]>;

const used = (plan: JointPlan, axis: LineAxis): readonly number[] => [
  ...new Set(plan.lines.filter((line) => line.axis === axis).map((line) => line.a[axis])),
];

/** Sweeps over all places; two or three are enough. */
const SWEEPS = 6;

export const alignJoints = (task: JointTask, plan: JointPlan, shouldStop: () => boolean = () => false): JointPlan => {
  let best = plan;
  let burden = planBurden(task, plan);
  let places: Places = {
    xs: [...new Set([...used(plan, "x"), ...evenDivision(task, "x"), ...wantedAt(task, "x")])],
    ys: [...new Set([...used(plan, "y"), ...evenDivision(task, "y"), ...wantedAt(task, "y")])],
  };
  const attempt = (candidate: Places): boolean => {
    const found = planJoints({ ...task, places: candidate });
    if (isUnable(found)) return false;
    const cost = planBurden(task, found);
    if (cost > burden + 1e-6) return false;
    const better = cost < burden - 1e-6;
    places = candidate;
    best = found;
    burden = cost;
    return better;
  };
  attempt(places);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let better = false;
    for (const [axis, at] of eachOf(places)) {
      if (shouldStop()) return best;
      if (places[axis].includes(at))
        better = attempt({ ...places, [axis]: places[axis].filter((v) => v !== at) }) || better;
    }
    if (!better) break;
  }
  return best;
};

const eachOf = ({ xs, ys }: Places): readonly (readonly ["xs" | "ys", number])[] => [
  ...xs.map((at) => ["xs", at] as const),
  ...ys.map((at) => ["ys", at] as const),
];

const wantedAt = ({ wanted }: JointTask, axis: LineAxis): readonly number[] =>
  wanted.filter((line) => line.axis === axis).map((line) => line.at);
