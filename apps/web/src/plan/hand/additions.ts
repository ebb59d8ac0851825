import type { Point } from "@floorworthy/engine/geometry";
import { addToList, type Entry, setPlain } from "@floorworthy/job/editing";
import type { Units } from "../../work/messages.ts";
import { taped, tapedPoint } from "./tape.ts";
import type { ThingKind } from "./things.ts";

/** What can be drawn, in the words of the trade; how it is drawn; and what is then written. */
export interface Addition {
  readonly kind: ThingKind;
  readonly title: string;
  readonly drawn: "place" | "line" | "area" | "lift";
  readonly write: (points: readonly Point[], count: number, units: Units) => (text: string) => string;
}

const adding =
  (list: string, make: (points: readonly Point[], count: number, units: Units) => Entry): Addition["write"] =>
  (points, count, units) =>
  (text) =>
    addToList(text, list, make(points, count, units)) ?? text;

const place = (point: Point | undefined, units: Units): Entry => tapedPoint(point ?? { x: 0, y: 0 }, units) as Entry;

const between = ([a, b]: readonly Point[], units: Units): Entry => ({
  width: taped(Math.max(25, Math.abs(b!.x - a!.x)), units),
  depth: taped(Math.max(25, Math.abs(b!.y - a!.y)), units),
  corner: place({ x: Math.min(a!.x, b!.x), y: Math.min(a!.y, b!.y) }, units),
});

const ends = ([a, b]: readonly Point[], units: Units) => ({ from: place(a, units), to: place(b, units) });

export const additions: readonly Addition[] = [
  {
    kind: "bay",
    title: "slab",
    drawn: "area",
    write: (points, _count, units) => (text) => setPlain(text, "bay.outline", between(points, units)),
  },
  {
    kind: "lift",
    title: "lift",
    drawn: "lift",
    write:
      ([a, b], _count, units) =>
      (text) =>
        setPlain(setPlain(text, "columns.left", place(a, units)), "columns.right", place(b, units)),
  },
  {
    kind: "wall",
    title: "wall",
    drawn: "line",
    write: adding("bay.walls", (p, n, u) => ({ name: `wall ${n}`, ...ends(p, u) })),
  },
  {
    kind: "door",
    title: "door",
    drawn: "line",
    write: adding("bay.doors", (p, n, u) => ({ name: `door ${n}`, ...ends(p, u) })),
  },
  {
    kind: "joint",
    title: "saw cut or joint",
    drawn: "line",
    write: adding("floor.joints", (p, n, u) => ({ name: `joint ${n}`, kind: "saw-cut", ...ends(p, u) })),
  },
  {
    kind: "crack",
    title: "crack",
    drawn: "line",
    write: adding("floor.cracks", (p, n, u) => ({ name: `crack ${n}`, line: p.map((each) => place(each, u)) })),
  },
  {
    kind: "pipe",
    title: "pipe",
    drawn: "line",
    write: adding("floor.pipes", (p, n, u) => ({ name: `pipe ${n}`, line: p.map((each) => place(each, u)) })),
  },
  {
    kind: "reading",
    title: "thickness reading",
    drawn: "place",
    write: adding("floor.readings", ([a], _n, u) => ({
      at: place(a, u),
      thickness: "unknown",
      method: "drill",
      end: "through",
    })),
  },
  {
    kind: "zone",
    title: "pad or strip",
    drawn: "area",
    write: adding("floor.zones", (p, n, u) => ({
      name: `pad ${n}`,
      kind: "pad",
      state: "proposed",
      outline: between(p, u),
    })),
  },
  {
    kind: "post",
    title: "building column",
    drawn: "area",
    write: adding("bay.posts", (p, n, u) => ({ name: `post ${n}`, outline: between(p, u) })),
  },
  {
    kind: "obstacle",
    title: "bench or stair",
    drawn: "area",
    write: adding("bay.obstacles", (p, n, u) => ({ name: `bench ${n}`, outline: between(p, u) })),
  },
];
