/**
 * How long the feasible positions of a lift take in a bay with 12 obstacles, one way of standing, against judging a grid of
 * 50 mm point by point with the same distances; everything about the place of a lift in a demo job; and the margin over 200
 * places of it. Run: npx tsx bench/placement.ts
 */
import { readFileSync } from "node:fs";
import { marginMap, placeLift } from "@floorworthy/assess/place";
import type { Polygon } from "@floorworthy/engine/geometry";
import {
  blockedBy,
  feasiblePositions,
  type LiftFootprint,
  type Obstacle,
  type Placement,
  type Room,
} from "@floorworthy/engine/placement";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";

const box = (x: number, y: number, w: number, d: number): Polygon => [
  { x, y },
  { x: x + w, y },
  { x: x + w, y: y + d },
  { x, y: y + d },
];
const column = (x: number) => [-1, 1].flatMap((v) => [-160, 0, 160].map((u) => ({ x: x + u, y: v * 165 })));
const lift: LiftFootprint = {
  anchors: [...column(-1600).slice(0, 5), ...column(1600).slice(0, 5)],
  plates: [box(-1850, -230, 500, 460), box(1350, -230, 500, 460)],
  body: box(-1850, -300, 3700, 600),
  vehicle: box(-950, -2200, 1900, 5000),
};
const room: Room = {
  outline: [...box(0, 0, 9000, 9000).slice(0, 3), { x: 1500, y: 9000 }, { x: 1500, y: 8200 }, { x: 0, y: 8200 }],
  clear: { anchors: 150, vehicle: 100 },
};
const floor = { anchors: 150, plates: 50 };
const line = (i: number, x0: number, y0: number, x1: number, y1: number): Obstacle => ({
  id: `line-${i}`,
  name: `line ${i}`,
  shape: { a: { x: x0, y: y0 }, b: { x: x1, y: y1 } },
  clear: floor,
});
const obstacles: readonly Obstacle[] = [
  line(1, 0, 4500, 9000, 4500),
  line(2, 4500, 0, 4500, 9000),
  line(3, 1200, 3000, 2600, 3900),
  line(4, 6000, 6200, 7900, 5800),
  line(5, 7000, 2000, 7400, 3500),
  line(6, 500, 7000, 2100, 6400),
  line(7, 5200, 900, 5900, 2400),
  { id: "drain", name: "drain", shape: box(3300, 6900, 300, 300), clear: floor },
  { id: "footing", name: "footing", shape: box(8200, 4000, 500, 500), clear: { ...floor, body: 0 } },
  { id: "bench", name: "bench", shape: box(0, 0, 9000, 700), clear: { body: 300, vehicle: 600 } },
  { id: "post", name: "post", shape: box(6900, 7700, 150, 150), clear: { body: 100, vehicle: 300 } },
  { id: "patch", name: "patch", shape: [...box(2000, 5100, 400, 400), { x: 1800, y: 5300 }], clear: floor },
];

const solve = (): Placement => {
  const answer = feasiblePositions(lift, room, obstacles, [{ mirror: "as-drawn", angle: 0 }]);
  if (isUnable(answer)) throw new Error(answer.reason);
  return answer[0]!;
};
const median = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)]!;
const time = (run: () => unknown): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

const first = time(solve);
for (let i = 0; i < 5; i++) solve();
const polygons = median(Array.from({ length: 25 }, () => time(solve)));
const placement = solve();
const points = Array.from({ length: 180 * 180 }, (_, i) => ({ x: 50 * (i % 180), y: 50 * Math.floor(i / 180) }));
const grid = time(() => points.filter((p) => blockedBy(placement, p).length === 0));
const corners = placement.regions.flatMap(({ outline, holes }) => [outline, ...holes]).flat().length;
console.log(
  `placement  12 obstacles ${polygons.toFixed(1)} ms (first time ${first.toFixed(1)}), ${placement.regions.length} regions, ${corners} corners`,
);
console.log(`           grid of 50 mm ${grid.toFixed(0)} ms: ${(grid / polygons).toFixed(0)} times as long`);

for (const name of ["records-in-hand", "saw-cut-in-the-way"]) {
  const read = readJob(readFileSync(`examples/${name}.yaml`, "utf8"), { name });
  if (!read.ok) throw new Error(name);
  const { job } = read;
  placeLift(job);
  const all = median(Array.from({ length: 9 }, () => time(() => placeLift(job))));
  const placing = placeLift(job);
  const before = process.cpuUsage();
  const start = performance.now();
  const map = marginMap(job, placing, { count: 200 });
  const wall = performance.now() - start;
  const { user } = process.cpuUsage(before);
  if (isUnable(map)) throw new Error(map.reason);
  const ways = placing.ways.length;
  console.log(`${name}  place ${all.toFixed(1)} ms (${ways} ways of standing)`);
  console.log(
    `           margin at ${map.points.length} places ${(wall / 1000).toFixed(1)} s (processor ${(user / 1e6).toFixed(1)} s), ${map.least?.ratio?.toFixed(3)} to ${map.most?.ratio?.toFixed(3)}`,
  );
}
