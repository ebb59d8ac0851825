import { type Point, type Rect, type Segment, segmentsMeet } from "@floorworthy/engine/geometry";
import type { Label } from "./drawing.ts";
import { boxOfText, type Lettering } from "./text-width.ts";

/** A label that wants a place, with its target on the paper and in the model. */
export interface Wanted {
  readonly tag: string;
  readonly words: string;
  readonly lettering: Lettering;
  /** place in the model that the leader points to */
  readonly at: Point;
  /** the same on the paper */
  readonly target: Point;
  readonly size: number;
}

export interface Obstacles {
  /** what no label may cover: other words, plates */
  readonly boxes: readonly Rect[];
  /** what a label had better not cover */
  readonly lines: readonly Segment[];
  /** the part of the paper the labels must stay in */
  readonly within: Rect;
}

const overlap = (a: Rect, b: Rect): number =>
  Math.max(0, Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0)) * Math.max(0, Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0));

const corners = ({ x0, y0, x1, y1 }: Rect): readonly Segment[] => {
  const [a, b, c, d] = [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ] as const;
  return [
    { a, b },
    { a: b, b: c },
    { a: c, b: d },
    { a: d, b: a },
  ];
};

const crosses = (box: Rect, line: Segment): boolean =>
  (line.a.x > box.x0 && line.a.x < box.x1 && line.a.y > box.y0 && line.a.y < box.y1) ||
  corners(box).some((side) => segmentsMeet(side, line));

const grown = (box: Rect, by: number): Rect => ({ x0: box.x0 - by, y0: box.y0 - by, x1: box.x1 + by, y1: box.y1 + by });

const RADII = [2.2, 4, 6, 8.5, 11, 14, 18, 23, 29, 36, 45, 60];
const DIRECTIONS = 24;

interface Candidate {
  readonly nudge: Point;
  readonly align: "start" | "end";
  readonly box: Rect;
  readonly leader: Segment;
  readonly cost: number;
}

const candidatesOf = (
  wanted: Wanted,
  taken: readonly Rect[],
  leaders: readonly Segment[],
  obstacles: Obstacles,
): Candidate[] =>
  RADII.flatMap((radius) =>
    Array.from({ length: DIRECTIONS }, (_, i): Candidate => {
      const angle = (2 * Math.PI * (i + 0.5)) / DIRECTIONS;
      const nudge = { x: radius * Math.cos(angle), y: radius * Math.sin(angle) + 0.3 * wanted.size };
      const align = nudge.x >= 0 ? "start" : "end";
      const at = { x: wanted.target.x + nudge.x, y: wanted.target.y + nudge.y };
      const box = grown(boxOfText({ ...wanted, at, align, reads: "across" }), 0.5);
      const leader = { a: wanted.target, b: { x: at.x, y: at.y - 0.3 * wanted.size } };
      const w = obstacles.within;
      const area = (box.x1 - box.x0) * (box.y1 - box.y0);
      const outside = area - overlap(box, w);
      const covered = taken.reduce((sum, other) => sum + overlap(box, other), 0);
      const led = taken.filter(
        (other) => !crosses(grown(other, -0.1), { a: wanted.target, b: wanted.target }) && crosses(other, leader),
      ).length;
      const run = obstacles.lines.filter((line) => crosses(box, line)).length;
      const crossed = leaders.filter((other) => crosses(box, other) || segmentsMeet(other, leader)).length;
      const cost = outside * 1000 + covered * 500 + led * 12 + run * 6 + crossed * 25 + radius;
      return { nudge, align, box, leader, cost };
    }),
  );

/** Greedy: each label in turn takes the cheapest place near its target. */
export const placeLabels = (wanted: readonly Wanted[], obstacles: Obstacles): readonly Label[] => {
  const taken: Rect[] = [...obstacles.boxes];
  const leaders: Segment[] = [];
  return wanted.map((label): Label => {
    const best = candidatesOf(label, taken, leaders, obstacles).reduce((a, b) => (b.cost < a.cost ? b : a));
    taken.push(best.box);
    leaders.push(best.leader);
    const { tag, at, words, size, lettering } = label;
    return { kind: "label", tag, at, words, size, lettering, nudge: best.nudge, align: best.align };
  });
};
