/**
 * The bounding study of docs/theory/coupling.md: rigid base plate on elastic bedding whose pressure and pulls are handed to
 * the slab (one way), against the plate resting on the bending slab with the anchors as springs between them (both ways).
 * How far do slab stress, anchor pull and base rotation move with bedding and anchor stiffness?
 *
 * One column of an invented two-post lift, 20 × 18 in plate, five anchors, P = 5,650 lb, M = 225 kip·in inward. Slab far
 * from edges, k = 100 pci. Run: npx tsx bench/coupling.ts
 */
import { type BasePlate, solveContact } from "@floorworthy/engine/contact";
import {
  type Floor,
  type FloorLoad,
  type FloorResult,
  relativeStiffness,
  solveFloor,
  unboundedOutline,
} from "@floorworthy/engine/plates";
import { isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { type Anchor, cellLoad, cellsOf, corners, flexibility, restOnSlab } from "./coupling/plate-on-slab.ts";

const inches = (v: number): number => toBase(v, "in");
const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

const pound = toBase(1, "lb");
const load = { P: 5650 * pound, Mx: 0, My: 225_000 * pound * inches(1) };
const plate = { x0: inches(-10), x1: inches(10), y0: inches(-9), y1: inches(9) };
const anchors: Anchor[] = [
  [-7.5, -6.5],
  [-7.5, 0],
  [-7.5, 6.5],
  [4, -6.5],
  [4, 6.5],
].map(([x, y]) => ({ x: inches(x!), y: inches(y!) }));

const floorOf = (thickness: number): Floor => {
  const [E, nu, k] = [27_000, 0.15, 0.0271447];
  return {
    outline: unboundedOutline([{ x: 0, y: 0 }], relativeStiffness(E, nu, thickness, k), 5),
    thickness,
    zones: [],
    E,
    nu,
    k,
    unitWeight: 2.36e-5,
    joints: [],
  };
};

const slabUnder = (floor: Floor, loads: readonly FloorLoad[]): FloorResult =>
  able(solveFloor(floor, [{ name: "column", loads }], { support: "pushes-only", focus: [plate] }))[0]!;

interface Row {
  readonly pull: number;
  readonly toe: number;
  readonly bottom: number;
  readonly bottomAveraged: number;
  readonly top: number;
  readonly topAveraged: number;
  /** rad, of the plate against the far slab */
  readonly rotation: number;
}

const rowOf = (slab: FloorResult, pulls: readonly number[], toe: number, rotation: number): Row => ({
  pull: pulls.slice(0, 3).reduce((sum, T) => sum + T, 0) / pound,
  toe,
  bottom: slab.governing.stressBottom.value,
  bottomAveraged: slab.governing.stressBottomAveraged.value,
  top: slab.governing.stressTop.value,
  topAveraged: slab.governing.stressTopAveraged.value,
  rotation,
});

const pullLoads = (pulls: readonly number[]): FloorLoad[] =>
  anchors.map(({ x, y }, i) => ({ kind: "point", x, y, P: -pulls[i]! }));

/** One way: the plate does not know that the slab bends. */
const oneWay = (floor: Floor, bedding: number, stiffness: number): Row => {
  const base: BasePlate = {
    outline: corners(plate),
    anchors: anchors.map((a, i) => ({ id: `A${i + 1}`, ...a, stiffness, preload: 0 })),
    bedding,
  };
  const contact = able(solveContact(base, { ...load, Vx: 0, Vy: 0 }));
  const pulls = contact.anchorTension.map(({ T }) => T);
  const slab = slabUnder(floor, [
    ...contact.contactZone.map((polygon): FloorLoad => ({ kind: "pressure", polygon, ...contact.pressure })),
    ...pullLoads(pulls),
  ]);
  const tilt = slab.rotationAt({ x: 0, y: 0 }).dwdx;
  return rowOf(slab, pulls, contact.maxPressure, contact.tiltX + tilt);
};

const print = (name: string, row: Row): void => {
  const cells = [
    row.pull.toFixed(0),
    row.toe.toFixed(1),
    row.bottom.toFixed(2),
    row.bottomAveraged.toFixed(2),
    row.top.toFixed(2),
    row.topAveraged.toFixed(2),
    (1000 * row.rotation).toFixed(2),
  ];
  console.log(`| ${name} | ${cells.join(" | ")} |`);
};

for (const depth of [4, 6, 8, 12]) {
  const floor = floorOf(inches(depth));
  const cells = cellsOf(plate, 32, 9);
  const flex = flexibility(floor, plate, cells, anchors);
  console.log(`\nslab ${depth} in`);
  console.log(
    "| bedding N/mm³, anchor kN/mm | row, lb | toe, MPa | underside, MPa | averaged | top | averaged | rotation, mrad |",
  );
  console.log("|---|---|---|---|---|---|---|---|");
  for (const stiffness of [15_000, 40_000, 100_000])
    for (const bedding of [10, 30, 100, 300, 1000]) {
      const label = `${bedding}, ${stiffness / 1000}`;
      print(`${label} one way`, oneWay(floor, bedding, stiffness));
      const rest = restOnSlab(flex, bedding, stiffness, load);
      const slab = slabUnder(floor, [
        ...cells.flatMap((c, i) => (rest.forces[i]! > 0 ? [cellLoad(c, rest.forces[i]!)] : [])),
        ...pullLoads(rest.pulls),
      ]);
      const toe = Math.max(...cells.map((c, i) => rest.forces[i]! / c.area));
      print(`${label} both ways`, rowOf(slab, rest.pulls, toe, rest.tiltX));
    }
}
