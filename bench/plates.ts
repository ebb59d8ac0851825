/**
 * How long the plate takes: whole solve of a two-column bay with pads, six cases, ground that only pushes; the factor
 * against a dense one of the same matrix; the whole solve against CalculiX where ccx is installed. Trust the ratios.
 * Run: npx tsx bench/plates.ts
 */
import { bandIndex, bandMatrix, copyBand, plainBandKernel } from "@floorworthy/engine/numerics";
import { type Floor, type FloorCase, solveFloor } from "@floorworthy/engine/plates";
import { basePlates, floor, loads } from "./calculix/bay.ts";
import { mesh } from "./calculix/cases.ts";
import { deck } from "./calculix/deck.ts";
import { hasCalculix, runCalculix } from "./calculix/run.ts";
import { denseCholesky } from "./dense-cholesky.ts";

const scaled = (factor: number): FloorCase => ({
  name: `${factor}`,
  loads: loads.map((load) => (load.kind === "pressure" ? { ...load, p0: load.p0 * factor } : load)),
});
const six = [1, 0.92, 0.84, 0.76, 0.68, 0.6].map(scaled);

const best = (rounds: number, action: () => void): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < rounds; i++) {
    const start = performance.now();
    action();
    least = Math.min(least, performance.now() - start);
  }
  return least;
};

const solve = (one: Floor, cases: readonly FloorCase[], fineness = 1) => {
  const results = solveFloor(one, cases, { support: "pushes-only", focus: basePlates, fineness });
  if ("unable" in results) throw new Error(results.reason);
  return results;
};

const floors: readonly [string, Floor][] = [
  ["plain slab", { ...floor, zones: [] }],
  ["bay with pads", floor],
  [
    "bay with pads and two joints",
    {
      ...floor,
      joints: [
        { axis: "x", at: 3250, transfer: { kind: "none" } },
        { axis: "y", at: 1500, transfer: { kind: "springs", shear: 10, rotation: 0 } },
      ],
    },
  ],
  ["weightless: half of it lifts", { ...floor, unitWeight: 0 }],
];
console.log("floor                          unknowns  factorings   1 case ms  6 cases ms  next case ms");
for (const [name, one] of floors) {
  const [first] = solve(one, six);
  const factorings = solve(one, six)
    .map((r) => r.iterations)
    .join(" ");
  const single = best(25, () => solve(one, six.slice(0, 1)));
  const all = best(25, () => solve(one, six));
  console.log(
    `${name.padEnd(30)} ${String(first!.unknowns).padStart(8)}  ${factorings}  ${single.toFixed(1).padStart(9)}  ${all.toFixed(1).padStart(10)}  ${((all - single) / 5).toFixed(1).padStart(12)}`,
  );
}

const [order, half] = [900, 75];
const matrix = bandMatrix(order, half);
for (let i = 0; i < order; i++)
  for (let j = Math.max(0, i - half); j <= i; j++)
    matrix.values[bandIndex(matrix, i, j)] = i === j ? 2 * half : -Math.abs(Math.sin(7 * i + 3 * j));
const band = best(30, () => void plainBandKernel.factor(copyBand(matrix)));
const dense = best(3, () =>
  denseCholesky(order, (i, j) => (i - j <= half ? matrix.values[bandIndex(matrix, i, j)]! : 0)),
);
console.log(
  `\nfactor of ${order} unknowns, half-band ${half}: band ${band.toFixed(2)} ms; dense ${dense.toFixed(0)} ms = ${(dense / band).toFixed(0)} x`,
);

if (hasCalculix()) {
  const { seconds } = runCalculix(deck(floor, mesh, new Set()));
  const plate = best(20, () => {
    solveFloor(floor, [{ name: "bay", loads }], { support: "both-ways", focus: basePlates });
  });
  console.log(
    `CalculiX, ${mesh.elements.length} shells of 8 nodes: ${seconds.toFixed(1)} s; the plate, same floor: ${plate.toFixed(1)} ms = ${((1000 * seconds) / plate).toFixed(0)} x`,
  );
} else console.log("ccx is not installed: no comparison with CalculiX in this run.");
