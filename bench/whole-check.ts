// The whole check of a two-post job, warm, as a multiple of one plate solve of the same floor in the same run.
import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { type Floor, solveFloor } from "@floorworthy/engine/plates";
import { readJob } from "@floorworthy/job";

const folder = new URL("../examples/", import.meta.url);
const load = (name: string): string => readFileSync(new URL(name.replace(/^.*examples\//, ""), folder), "utf8");
const read = readJob(load("records-in-hand.yaml"), { name: "records-in-hand.yaml", load });
if (!read.ok) throw new Error(read.issues[0]!.message);

const floor: Floor = {
  outline: { x0: 0, y0: 0, x1: 8000, y1: 8000 },
  thickness: 150,
  zones: [],
  E: 25_000,
  nu: 0.15,
  k: 0.027,
  unitWeight: 23.56e-6,
  joints: [],
};
const pad = (x: number) => ({ x0: x - 250, y0: 3750, x1: x + 250, y1: 4250 });
const corners = (r: ReturnType<typeof pad>) => [
  { x: r.x0, y: r.y0 },
  { x: r.x1, y: r.y0 },
  { x: r.x1, y: r.y1 },
  { x: r.x0, y: r.y1 },
];
const loads = [2400, 5600].map((x) => ({ kind: "pressure" as const, polygon: corners(pad(x)), p0: 0.1, px: 0, py: 0 }));

const median = (run: () => void): number => {
  for (let i = 0; i < 5; i++) run();
  const times = Array.from({ length: 15 }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  }).toSorted((a, b) => a - b);
  return times[7]!;
};

const solve = median(() =>
  solveFloor(floor, [{ name: "even", loads }], { support: "pushes-only", focus: [pad(2400), pad(5600)] }),
);
const whole = median(() => assess(read.job));
console.log(
  `one plate solve ${solve.toFixed(1)} ms; whole check ${whole.toFixed(1)} ms; ratio ${(whole / solve).toFixed(1)}`,
);
