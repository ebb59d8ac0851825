import type { Point } from "@floorworthy/engine/geometry";
import { fromBase, printFraction, readQuantity } from "@floorworthy/engine/quantities";
import type { WrittenTree } from "@floorworthy/job/listing";
import { factText, isGroup, isList } from "../../form/reach.ts";
import type { Units } from "../../work/messages.ts";

/** A length as it is written into the job file: sixteenths of an inch, or whole millimetres. */
export const taped = (mm: number, units: Units): string =>
  units === "si" ? `${Math.round(mm)} mm` : `${printFraction(fromBase(mm, "in"), 16).replaceAll(",", "")} in`;

export const tapedPoint = ({ x, y }: Point, units: Units): readonly [string, string] => [
  taped(x, units),
  taped(y, units),
];

const lengthOf = (tree: WrittenTree): number | undefined => {
  const reading = readQuantity(factText(tree), "length");
  return reading.ok ? reading.value : undefined;
};

export const readLength = lengthOf;

/** A place as written, mm; undefined where it is none. */
export const readPlace = (tree: WrittenTree): Point | undefined => {
  const [a, b] = isList(tree) ? tree : isGroup(tree) ? [tree.x, tree.y] : [];
  const [x, y] = [lengthOf(a), lengthOf(b)];
  return x === undefined || y === undefined ? undefined : { x, y };
};
