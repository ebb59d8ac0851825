import type { Point, Rect } from "@floorworthy/engine/geometry";
import { grown, overlaps, rectOf } from "./boxes.ts";
import type { Thing } from "./things.ts";

/** A name on the plan: where its middle is, and which way it runs. */
export interface PlanLabel {
  readonly path: string;
  readonly text: string;
  readonly at: Point;
  readonly runs: "across" | "along";
}

/** Width of a letter and height of a line, in sizes of the letters. */
const WIDE = 0.56;
const HIGH = 1.05;

/** Walls and lines first, then what stands on the floor: where two names meet, the later one gives way or is left out. */
const order: readonly Thing["kind"][] = ["joint", "zone", "crack", "pipe", "obstacle", "post", "door", "wall"];

/** The names of things, each beside its thing where there is room; none over another, or over the lift or a reading. */
export const planLabels = (things: readonly Thing[], letters: number, taken: readonly Rect[] = []): PlanLabel[] => {
  const full = [...taken, ...things.flatMap((thing) => ownRoom(thing, letters))];
  const slab = things.find(({ kind }) => kind === "bay");
  const bay = slab && rectOf(slab.points);
  const placed: PlanLabel[] = [];
  const wanted = things
    .filter(({ kind, label }) => order.includes(kind) && label !== "")
    .toSorted((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
  for (const thing of wanted) {
    const found = places(thing, letters).find((label) => {
      const box = boxOf(label, letters);
      return !full.some((other) => overlaps(box, other)) && fits(thing, box, bay);
    });
    if (!found) continue;
    placed.push(found);
    full.push(boxOf(found, letters));
  }
  return placed;
};

const boxOf = ({ text, at, runs }: PlanLabel, letters: number): Rect => {
  const [half, rise] = [(text.length * WIDE * letters) / 2, (HIGH * letters) / 2];
  const [dx, dy] = runs === "across" ? [half, rise] : [rise, half];
  return { x0: at.x - dx, y0: at.y - dy, x1: at.x + dx, y1: at.y + dy };
};

/** What stands on an area is named inside it, lines of the floor within the bay, if at all. */
const fits = ({ shape, points, kind }: Thing, box: Rect, bay: Rect | undefined): boolean => {
  const inFloor = shape === "line" && kind !== "wall" && kind !== "door" && bay;
  const around = shape === "area" && kind !== "zone" ? rectOf(points) : inFloor || undefined;
  if (!around) return true;
  return box.x0 >= around.x0 && box.x1 <= around.x1 && box.y0 >= around.y0 && box.y1 <= around.y1;
};

const ownRoom = ({ kind, points, label }: Thing, letters: number): Rect[] => {
  if (kind === "lift") return points.map((p) => grown({ x0: p.x, y0: p.y, x1: p.x, y1: p.y }, 320));
  if (kind === "wall" || kind === "door")
    return points.slice(1).map((b, i) => grown(rectOf([points[i]!, b]), 0.25 * letters));
  const first = points[0];
  if (kind !== "reading" || !first) return [];
  const { x, y } = first;
  return [{ x0: x - letters, y0: y - letters, x1: x + (label.length * WIDE + 1) * letters, y1: y + letters }];
};

const places = ({ path, label: text, points, shape, kind }: Thing, letters: number): PlanLabel[] => {
  if (shape === "area") {
    const { x0, y0, x1, y1 } = rectOf(points);
    const middle = (x0 + x1) / 2;
    const ys = kind === "zone" ? [y0 - 0.75 * letters, y1 + 0.75 * letters, (y0 + y1) / 2] : [(y0 + y1) / 2];
    return [
      ...ys.map((y): PlanLabel => ({ path, text, at: { x: middle, y }, runs: "across" })),
      { path, text, at: { x: middle, y: (y0 + y1) / 2 }, runs: "along" },
    ];
  }
  const [a, b] = longest(points);
  if (!a || !b) return [];
  const runs = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y) ? ("across" as const) : ("along" as const);
  const straight = Math.abs(runs === "across" ? b.y - a.y : b.x - a.x) < letters;
  const level = kind === "wall" || kind === "door" ? 0.95 : straight ? 0.72 : 1.2;
  return [0.2, 0.8, 0.5, 0.35, 0.65].flatMap((t) =>
    [-1, 1].map((side): PlanLabel => {
      const off = side * level * letters;
      const [x, y] = [a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)];
      return { path, text, runs, at: runs === "across" ? { x, y: y + off } : { x: x + off, y } };
    }),
  );
};

const longest = (points: readonly Point[]): readonly Point[] =>
  points
    .slice(1)
    .map((b, i) => [points[i]!, b] as const)
    .toSorted(([a, b], [c, d]) => Math.hypot(d.x - c.x, d.y - c.y) - Math.hypot(b.x - a.x, b.y - a.y))[0] ?? [];
