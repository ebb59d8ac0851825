import type { Point, Rect } from "@floorworthy/engine/geometry";
import { type Entry, setFact, setPlain } from "@floorworthy/job/editing";
import type { WrittenTree } from "@floorworthy/job/listing";
import { factText, isGroup, isList, reach, under } from "../../form/reach.ts";
import type { Units } from "../../work/messages.ts";
import { readLength, readPlace, taped, tapedPoint } from "./tape.ts";

export type ThingKind =
  | "bay"
  | "wall"
  | "door"
  | "post"
  | "obstacle"
  | "zone"
  | "joint"
  | "crack"
  | "pipe"
  | "reading"
  | "lift";

/** Something of the plan that can be taken hold of: where it is written, and how its places go back into the file. */
export interface Thing {
  /** its path in the job file */
  readonly path: string;
  readonly kind: ThingKind;
  readonly label: string;
  readonly shape: "line" | "area" | "place" | "pair";
  readonly state: "standing" | "proposed";
  readonly points: readonly Point[];
  /** may its points move one by one */
  readonly bends: "bends" | "stiff";
  readonly put: (points: readonly Point[], units: Units) => (text: string) => string;
}

const nameOf = (tree: WrittenTree, kind: string): string => factText(under(tree, "name")) || kind;
const proposed = (tree: WrittenTree): Thing["state"] =>
  factText(under(tree, "state")) === "proposed" ? "proposed" : "standing";
const entry = (point: Point, units: Units): Entry => tapedPoint(point, units) as Entry;

const listOf = (tree: WrittenTree, path: string): readonly (readonly [string, WrittenTree])[] => {
  const there = reach(tree, path);
  return isList(there) ? there.map((item, i) => [`${path}[${i}]`, item] as const) : [];
};

const places = (tree: WrittenTree): readonly Point[] =>
  isList(tree) ? tree.flatMap((each) => readPlace(each) ?? []) : [];

/** Lines written as a row of places. */
const rows = (tree: WrittenTree, path: string, kind: ThingKind, key: string): readonly Thing[] =>
  listOf(tree, path).flatMap(([own, item]) => {
    const points = places(under(item, key));
    if (points.length < 2) return [];
    return [
      {
        path: own,
        kind,
        label: nameOf(item, kind),
        shape: "line",
        state: proposed(item),
        points,
        bends: "bends",
        put: (moved, units) => (text) =>
          setPlain(
            text,
            `${own}.${key}`,
            moved.map((p) => entry(p, units)),
          ),
      } satisfies Thing,
    ];
  });

/** Lines written by their two ends. */
const ended = (tree: WrittenTree, path: string, kind: ThingKind): readonly Thing[] =>
  listOf(tree, path).flatMap(([own, item]) => {
    const [from, to] = [readPlace(under(item, "from")), readPlace(under(item, "to"))];
    if (!from || !to) return [];
    return [
      {
        path: own,
        kind,
        label: nameOf(item, kind),
        shape: "line",
        state: proposed(item),
        points: [from, to],
        bends: "bends",
        put:
          ([a, b], units) =>
          (text) =>
            setPlain(setPlain(text, `${own}.from`, entry(a!, units)), `${own}.to`, entry(b!, units)),
      } satisfies Thing,
    ];
  });

/** Joints right across the bay, written by their distance from a wall. */
const across = (tree: WrittenTree, bay: Rect | undefined): readonly Thing[] =>
  listOf(tree, "floor.joints").flatMap(([own, item]) =>
    (["x", "y"] as const).flatMap((axis) => {
      const at = readLength(under(item, axis));
      if (at === undefined || !bay) return [];
      const points =
        axis === "x"
          ? [
              { x: at, y: bay.y0 },
              { x: at, y: bay.y1 },
            ]
          : [
              { x: bay.x0, y: at },
              { x: bay.x1, y: at },
            ];
      return [
        {
          path: own,
          kind: "joint",
          label: nameOf(item, "joint"),
          shape: "line",
          state: proposed(item),
          points,
          bends: "stiff",
          put:
            ([a], units) =>
            (text) =>
              setFact(text, `${own}.${axis}`, taped(a![axis], units)),
        } satisfies Thing,
      ];
    }),
  );

const rectangle = (corner: Point, width: number, depth: number): readonly Point[] => [
  corner,
  { x: corner.x + width, y: corner.y },
  { x: corner.x + width, y: corner.y + depth },
  { x: corner.x, y: corner.y + depth },
];

/** An outline as corners, or as a rectangle that stays one. */
const outlined = (own: string, item: WrittenTree, kind: ThingKind, label: string): readonly Thing[] => {
  const path = `${own}.outline`;
  const outline = under(item, "outline");
  const shared = { path: own, kind, label, shape: "area" as const, state: proposed(item) };
  if (isList(outline)) {
    const points = places(outline);
    if (points.length < 3) return [];
    return [
      {
        ...shared,
        points,
        bends: "bends",
        put: (moved, units) => (text) =>
          setPlain(
            text,
            path,
            moved.map((p) => entry(p, units)),
          ),
      },
    ];
  }
  const [width, depth] = [readLength(under(outline, "width")), readLength(under(outline, "depth"))];
  if (width === undefined || depth === undefined || !isGroup(outline)) return [];
  const centre = readPlace(outline.centre);
  const corner = centre
    ? { x: centre.x - width / 2, y: centre.y - depth / 2 }
    : (readPlace(outline.corner) ?? { x: 0, y: 0 });
  return [
    {
      ...shared,
      points: rectangle(corner, width, depth),
      bends: "stiff",
      put:
        ([a], units) =>
        (text) =>
          centre
            ? setPlain(text, `${path}.centre`, entry({ x: a!.x + width / 2, y: a!.y + depth / 2 }, units))
            : setPlain(text, `${path}.corner`, entry(a!, units)),
    },
  ];
};

const rectAround = (points: readonly Point[]): Rect => ({
  x0: Math.min(...points.map(({ x }) => x)),
  y0: Math.min(...points.map(({ y }) => y)),
  x1: Math.max(...points.map(({ x }) => x)),
  y1: Math.max(...points.map(({ y }) => y)),
});

/** Both column centres at once: the lift moves and turns as one. */
const lift = (tree: WrittenTree): readonly Thing[] => {
  const [left, right] = [readPlace(reach(tree, "columns.left")), readPlace(reach(tree, "columns.right"))];
  if (!left || !right) return [];
  return [
    {
      path: "columns",
      kind: "lift",
      label: "the lift",
      shape: "pair",
      state: "standing",
      points: [left, right],
      bends: "stiff",
      put:
        ([a, b], units) =>
        (text) =>
          setPlain(setPlain(text, "columns.left", entry(a!, units)), "columns.right", entry(b!, units)),
    },
  ];
};

const readings = (tree: WrittenTree): readonly Thing[] =>
  listOf(tree, "floor.readings").flatMap(([own, item]) => {
    const at = readPlace(under(item, "at"));
    if (!at) return [];
    return [
      {
        path: own,
        kind: "reading",
        label: factText(under(item, "thickness")) || "reading",
        shape: "place",
        state: "standing",
        points: [at],
        bends: "stiff",
        put:
          ([a], units) =>
          (text) =>
            setPlain(text, `${own}.at`, entry(a!, units)),
      } satisfies Thing,
    ];
  });

/** Everything of the plan as it stands in the job file, what lies lowest first. */
export const thingsOf = (tree: WrittenTree): readonly Thing[] => {
  const bay = outlined("bay", under(tree, "bay"), "bay", "the slab");
  const rect = bay[0] && rectAround(bay[0].points);
  const areas = (path: string, kind: ThingKind) =>
    listOf(tree, path).flatMap(([own, item]) => outlined(own, item, kind, nameOf(item, kind)));
  return [
    ...bay,
    ...areas("floor.zones", "zone"),
    ...rows(tree, "floor.pipes", "pipe", "line"),
    ...across(tree, rect),
    ...ended(tree, "floor.joints", "joint"),
    ...rows(tree, "floor.cracks", "crack", "line"),
    ...ended(tree, "bay.walls", "wall"),
    ...ended(tree, "bay.doors", "door"),
    ...areas("bay.posts", "post"),
    ...areas("bay.obstacles", "obstacle"),
    ...readings(tree),
    ...lift(tree),
  ];
};
