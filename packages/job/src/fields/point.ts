import type { Point } from "@floorworthy/engine/geometry";
import { isMap, isSeq, type Node } from "yaml";
import { at, type Place, report } from "../reading/place.ts";
import { entriesOf } from "./entries.ts";
import type { Field } from "./field.ts";
import { readWritten } from "./number-text.ts";

type Axes = readonly [string, string];
export const planAxes: Axes = ["x", "y"];
export const liftAxes: Axes = ["u", "v"];

const parts = (node: Node, place: Place, axes: Axes): readonly [Node, Node] | undefined => {
  if (isSeq(node) && node.items.length === 2 && node.items.every(Boolean)) return node.items as unknown as [Node, Node];
  if (isMap(node)) {
    const entries = entriesOf(node, place, axes, "a place");
    const [a, b] = axes.map((axis) => entries?.get(axis)?.value);
    if (a && b) return [a, b];
    if (!entries || entries.size < node.items.length) return undefined;
  }
  report(place, node, "not-a-point", {
    got: isSeq(node) ? `a list of ${node.items.length}` : "",
    message: "A place is written as two lengths.",
    hint: `Write ${axes[0]} and ${axes[1]} in brackets, such as [5 ft, 12 ft 3 in].`,
  });
  return undefined;
};

/** Two lengths in brackets or as a group, mm; undefined after reporting. */
export const readPoint = (node: Node, place: Place, axes: Axes): Point | undefined => {
  const pair = parts(node, place, axes);
  if (!pair) return undefined;
  const key = (i: 0 | 1): string | number => (isSeq(node) ? i : axes[i]);
  const a = readWritten(pair[0], at(place, key(0)), "length", "any");
  const b = readWritten(pair[1], at(place, key(1)), "length", "any");
  return a && b ? { x: a.value, y: b.value } : undefined;
};

/** A place that must be known where it is written. */
export const point = (doc: string, axes: Axes = planAxes): Field<Point> => ({
  shape: { kind: "point", axes },
  doc,
  need: "required",
  absent: () => ({ x: 0, y: 0 }),
  read: (node, place) => readPoint(node, place, axes) ?? { x: 0, y: 0 },
});

/** A place that may be left out. */
export const pointOrNone = (doc: string): Field<Point | undefined> => ({
  shape: { kind: "point", axes: planAxes },
  doc,
  need: "optional",
  absent: () => undefined,
  read: (node, place) => readPoint(node, place, planAxes),
});

/** A line through two or more places. */
export const readLine = (
  node: Node,
  place: Place,
  axes: Axes,
  least: number,
  most = 200,
): readonly Point[] | undefined => {
  if (!isSeq(node)) {
    report(place, node, "not-a-list", {
      message: "A list of places was expected here.",
      hint: "Begin each place on its own line with a dash and a space.",
    });
    return undefined;
  }
  const count = node.items.length;
  if (count < least) {
    report(place, node, "too-few-points", {
      got: String(count),
      message: `${count === 1 ? "One place is" : `${count} places are`} written; at least ${least} are needed.`,
      hint: "Add the missing places.",
    });
    return undefined;
  }
  if (count > most) {
    report(place, node, "too-many-items", {
      got: String(count),
      message: `The list has ${count} items; the form takes up to ${most}.`,
      hint: "Leave out places that change little.",
    });
    return undefined;
  }
  const points = node.items.map((item, i) => readPoint((item as Node | null) ?? node, at(place, i), axes));
  return points.every((p) => p !== undefined) ? points : undefined;
};

export const line = (doc: string): Field<readonly Point[]> => ({
  shape: { kind: "list", of: point("a place"), least: 2, most: 200 },
  doc,
  need: "required",
  absent: () => [],
  read: (node, place) => readLine(node, place, planAxes, 2) ?? [],
});
