/** How long one base plate takes, against the same plate as a grid of 100 × 90 springs. Run: npx tsx bench/contact.ts */
import { type BasePlate, solveContact } from "@floorworthy/engine/contact";
import type { Reaction } from "@floorworthy/engine/frames";
import { isUnable } from "@floorworthy/engine/quantities";
import { fibrePlate } from "./fibre-plate.ts";

const plate: BasePlate = {
  outline: [
    { x: -250, y: -225 },
    { x: 250, y: -225 },
    { x: 250, y: 225 },
    { x: -250, y: 225 },
  ],
  anchors: [
    [-190, -165],
    [-190, 0],
    [-190, 165],
    [100, -165],
    [100, 165],
  ].map(([x, y], i) => ({ id: `A${i + 1}`, x: x!, y: y!, stiffness: 40_000, preload: 0 })),
  bedding: 100,
};

const loads: Reaction[] = Array.from({ length: 24 }, (_, i) => {
  const t = (2 * Math.PI * i) / 24;
  return { P: 25_000, Mx: 15e6 * Math.sin(t), My: 20e6 * Math.cos(t), Vx: 0, Vy: 0 };
});

const millisecondsPerLoad = (solve: (load: Reaction) => unknown, rounds: number): number => {
  for (const load of loads) solve(load);
  const start = performance.now();
  for (let i = 0; i < rounds; i++) for (const load of loads) solve(load);
  return (performance.now() - start) / (rounds * loads.length);
};

const exact = millisecondsPerLoad((load) => solveContact(plate, load), 400);
const grid = millisecondsPerLoad((load) => fibrePlate(plate, load, 100), 2);
const steps = loads.map((load) => {
  const result = solveContact(plate, load);
  return isUnable(result) ? Number.NaN : result.iterations;
});
console.log(`contact   one load ${(1000 * exact).toFixed(0)} µs, at most ${Math.max(...steps)} Newton steps`);
console.log(
  `          spring grid 100 × 90 ${(1000 * grid).toFixed(0)} µs: ${(grid / exact).toFixed(0)} times as long`,
);
