import { distance, type Point, type Polygon, sides } from "@floorworthy/engine/geometry";
import { isMap, type Node } from "yaml";
import type { Choice, Quantity } from "../fact.ts";
import {
  choice,
  type Field,
  type Fields,
  group,
  name,
  plainNumberOrNone,
  pointOrNone,
  quantity,
  word,
} from "../fields/index.ts";
import type { Joint } from "../floor.ts";
import { type Place, report } from "../reading/place.ts";
import { existenceWords } from "./words.ts";

interface WrittenJoint {
  readonly name: string;
  readonly kind: Joint["kind"];
  readonly x: number | undefined;
  readonly y: number | undefined;
  readonly from: Point | undefined;
  readonly to: Point | undefined;
  readonly transfer: Choice<"none" | "interlock" | "dowels">;
  readonly opening: Quantity;
  readonly dowelDiameter: Quantity;
  readonly dowelSpacing: Quantity;
  readonly state: Joint["state"];
}

const fields: Fields<WrittenJoint> = {
  name: name("its name"),
  kind: word(
    {
      "saw-cut": "sawn to make the crack come there",
      tooled: "pressed in while wet",
      construction: "end of one pour, start of the next",
      isolation: "full depth, filled with soft board",
      cold: "unplanned seam between old and new concrete",
    },
    "what kind of joint",
    "saw-cut",
  ),
  x: plainNumberOrNone("length", "a joint right across the floor at this distance from the left wall"),
  y: plainNumberOrNone("length", "a joint right across the floor at this distance from the back wall"),
  from: pointOrNone("one end, in place of x or y"),
  to: pointOrNone("the other end"),
  transfer: choice(
    { none: "nothing crosses", interlock: "the crack's rough faces hold", dowels: "steel dowels cross" },
    "what carries load across it; none counts when left out",
  ),
  opening: quantity("length", "how far its two sides stand apart; without it interlock is not counted at the worst", {
    sign: "not-negative",
  }),
  dowelDiameter: quantity("length", "diameter of its dowels"),
  dowelSpacing: quantity("length", "between its dowels"),
  state: word(existenceWords, "is it there or planned", "standing"),
};

const written = group<WrittenJoint>("a joint", "a joint: x or y for one right across, or from and to", fields);

/** The parts of the line x = at (or y = at) inside a polygon, in order. */
export const chordsOf = (polygon: Polygon, axis: "x" | "y", at: number): readonly (readonly [Point, Point])[] => {
  const along = axis === "x" ? "y" : "x";
  const hits = sides(polygon)
    .filter(({ a, b }) => a[axis] <= at !== b[axis] <= at)
    .map(({ a, b }) => a[along] + ((at - a[axis]) / (b[axis] - a[axis])) * (b[along] - a[along]))
    .sort((p, q) => p - q);
  const place = (t: number): Point => (axis === "x" ? { x: at, y: t } : { x: t, y: at });
  return hits.flatMap((t, i) => (i % 2 === 0 && i + 1 < hits.length ? [[place(t), place(hits[i + 1]!)] as const] : []));
};

const across = (
  joint: WrittenJoint,
  axis: "x" | "y",
  distanceFromWall: number,
  node: Node,
  place: Place,
): readonly (readonly [Point, Point])[] => {
  const { outline } = place.desk;
  if (!outline) {
    report(place, node, "joint-without-outline", {
      message: "A joint right across the floor needs the outline of the bay.",
      hint: "Write bay.outline, or the joint's from and to.",
    });
    return [];
  }
  const chords = chordsOf(outline, axis, distanceFromWall);
  if (chords.length === 0)
    report(place, node, "joint-outside", {
      got: joint.name,
      message: `The joint at this ${axis} does not cross the bay.`,
      hint: "Check the distance and the bay's outline.",
    });
  return chords;
};

const endsOf = (joint: WrittenJoint, node: Node, place: Place): readonly (readonly [Point, Point])[] => {
  const { x, y, from, to } = joint;
  const has = (key: string) => isMap(node) && node.has(key);
  const ways = [has("x"), has("y"), has("from") || has("to")].filter(Boolean).length;
  if (ways !== 1 || has("from") !== has("to")) {
    report(place, node, "joint-place", {
      message: "The joint is not placed in exactly one way.",
      hint: "Write x, or y, or both from and to.",
    });
    return [];
  }
  if (x !== undefined) return across(joint, "x", x, node, place);
  if (y !== undefined) return across(joint, "y", y, node, place);
  if (!from || !to) return [];
  if (distance(from, to) >= 1) return [[from, to]];
  report(place, node, "no-length", {
    message: "The joint begins and ends at the same place.",
    hint: "Correct from or to.",
  });
  return [];
};

/** A written joint as the one or more straight joints it makes in the bay. */
export const jointForm: Field<readonly Joint[]> = {
  ...written,
  absent: () => [],
  read: (node, place) => {
    const joint = written.read(node, place);
    if (!isMap(node)) return [];
    const { kind, transfer, opening, dowelDiameter, dowelSpacing, state } = joint;
    return endsOf(joint, node, place).map(([from, to], i) => ({
      name: i === 0 ? joint.name : `${joint.name} (${i + 1})`,
      kind,
      from,
      to,
      transfer,
      opening,
      dowelDiameter,
      dowelSpacing,
      state,
    }));
  },
};
