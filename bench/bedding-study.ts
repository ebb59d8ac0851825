/** The table of docs/theory/frames.md: how pull, toe pressure and tilt move with bedding and anchor stiffness. Run: npx tsx bench/bedding-study.ts */
import { type BasePlate, baseRotation, solveContact } from "@floorworthy/engine/contact";
import { baseReactions, type ColumnFrame, type LiftLoad, type Reaction, toPlan } from "@floorworthy/engine/frames";
import { fromBase, isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";

const inches = (v: number): number => toBase(v, "in");
const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

const tied: ColumnFrame = {
  top: "overhead-tied",
  spacing: inches(126),
  tieHeight: inches(144),
  columnWeight: toBase(650, "lb"),
  reach: inches(45),
  baseStiffness: "rigid",
};
const load: LiftLoad = {
  weight: toBase(10_000, "lb"),
  dynamicFactor: 1,
  leftShare: 0.5,
  foreAft: 0,
  carriageHeight: inches(28),
};
const reaction = (frame: ColumnFrame): Reaction => toPlan(able(baseReactions(frame, load)).left, "left");
const [free, held] = [reaction({ ...tied, top: "free-standing" }), reaction(tied)];

const plate = (bedding: number, stiffness: number): BasePlate => ({
  outline: [
    [-10, -9],
    [10, -9],
    [10, 9],
    [-10, 9],
  ].map(([x, y]) => ({ x: inches(x!), y: inches(y!) })),
  anchors: [
    [-7.5, -6.5],
    [-7.5, 0],
    [-7.5, 6.5],
    [4, -6.5],
    [4, 6.5],
  ].map(([x, y], i) => ({ id: `A${i + 1}`, x: inches(x!), y: inches(y!), stiffness, preload: 0 })),
  bedding,
});

for (const bedding of [10, 30, 100, 300, 1000]) {
  for (const stiffness of [15_000, 40_000, 100_000]) {
    const at = plate(bedding, stiffness);
    const [one, two] = [able(solveContact(at, free)), able(solveContact(at, held))];
    const row = ({ anchorTension }: typeof one): string =>
      fromBase(
        anchorTension.slice(0, 3).reduce((sum, { T }) => sum + T, 0),
        "lb",
      ).toFixed(0);
    const secant = able(baseRotation(at, held)).stiffnessAboutY / 1e9;
    const cells = [
      bedding,
      stiffness / 1000,
      row(one),
      one.maxPressure.toFixed(1),
      (1000 * one.tiltX).toFixed(2),
      row(two),
      secant.toFixed(1),
    ];
    console.log(`| ${cells.join(" | ")} |`);
  }
}
