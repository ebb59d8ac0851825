/** How long the joint planner takes on 40 × 60 ft with ten obstacles. Run: npx tsx bench/joint-plan.ts */
import type { Rect } from "@floorworthy/engine/geometry";
import { type JointTask, planJoints } from "@floorworthy/engine/joints";
import { isUnable } from "@floorworthy/engine/quantities";

const ft = 304.8;
const obstacles: readonly (readonly [number, number, number, number])[] = [
  [4, 8, 9, 13],
  [14, 8, 19, 13],
  [24, 30, 28, 34],
  [33, 30, 37, 34],
  [5, 40, 8, 44],
  [20, 50, 22, 52],
  [10, 20, 12, 22],
  [30, 10, 33, 13],
  [2, 55, 4, 57],
  [36, 50, 38, 52],
];
const rect = ([x0, y0, x1, y1]: readonly [number, number, number, number]): Rect => ({
  x0: x0 * ft,
  y0: y0 * ft,
  x1: x1 * ft,
  y1: y1 * ft,
});
const task = (step: number): JointTask => ({
  slab: [
    { x: 0, y: 0 },
    { x: 40 * ft, y: 0 },
    { x: 40 * ft, y: 60 * ft },
    { x: 0, y: 60 * ft },
  ],
  spacing: 15 * ft,
  aspect: 1.5,
  keepOuts: obstacles.map((o, i) => ({ rect: rect(o), what: `obstacle ${i + 1}` })),
  anchors: [],
  columns: [{ rect: rect([19.5, 29.5, 20.5, 30.5]), what: "the building column" }],
  wanted: [{ axis: "x", at: 11.5 * ft, from: 8 * ft, to: 13 * ft, why: "It runs between the columns.", worth: 3000 }],
  step,
  stopCost: 1500,
});

for (const feet of [3, 2, 1]) {
  const times = Array.from({ length: 3 }, () => {
    const start = performance.now();
    planJoints(task(feet * ft));
    return performance.now() - start;
  });
  const plan = planJoints(task(feet * ft));
  if (isUnable(plan)) throw new Error(plan.reason);
  const grid = `${plan.grid.xs.length} × ${plan.grid.ys.length} places`;
  const cut = `${(plan.sawLength.value / ft).toFixed(1)} ft of cut, ${plan.unmet.length} rules unmet`;
  console.log(`${feet} ft grid, ${grid}: ${Math.min(...times).toFixed(0)} ms; ${cut}`);
}
