import { type Point, type Rect, type Segment, segmentsMeet } from "@floorworthy/engine/geometry";
import type { Label } from "./drawing.ts";
import { spanInside } from "./span-inside.ts";
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
  /** hatched parts that labels had better stay out of */
  readonly avoid?: readonly Rect[];
  /** lines a label had better not cover */
  readonly lines: readonly Segment[];
  /** the part of the paper the labels must stay in */
  readonly within: Rect;
}

const overlap = (a: Rect, b: Rect): number =>
  Math.max(0, Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0)) * Math.max(0, Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0));

/** Whether a line passes through a box. */
const crosses = (box: Rect, { a, b }: Segment): boolean => {
  const { x0, y0, x1, y1 } = box;
  if (Math.max(a.x, b.x) < x0 || Math.min(a.x, b.x) > x1 || Math.max(a.y, b.y) < y0 || Math.min(a.y, b.y) > y1)
    return false;
  const { from, until } = spanInside(a, b, box);
  return from <= until;
};

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

/** Cost of what lies in the way; the length of the leader is added to it. */
const costOf = (
  box: Rect,
  leader: Segment,
  taken: readonly Rect[],
  leaders: readonly Segment[],
  obstacles: Obstacles,
): number => {
  const outside = (box.x1 - box.x0) * (box.y1 - box.y0) - overlap(box, obstacles.within);
  const covered = taken.reduce((sum, other) => sum + overlap(box, other), 0);
  const home = { a: leader.a, b: leader.a };
  const led = taken.filter((other) => crosses(other, leader) && !crosses(other, home)).length;
  const run = obstacles.lines.filter((line) => crosses(box, line)).length;
  const crossed = leaders.filter((other) => crosses(box, other) || segmentsMeet(other, leader)).length;
  const hatched = (obstacles.avoid ?? []).some((other) => overlap(box, other) > 0) ? 14 : 0;
  return outside * 1000 + covered * 500 + led * 12 + run * 8 + crossed * 25 + hatched;
};

const candidateAt = (wanted: Wanted, radius: number, i: number): Omit<Candidate, "cost"> => {
  const angle = (2 * Math.PI * (i + 0.5)) / DIRECTIONS;
  const nudge = { x: radius * Math.cos(angle), y: radius * Math.sin(angle) + 0.3 * wanted.size };
  const align = nudge.x >= 0 ? "start" : "end";
  const at = { x: wanted.target.x + nudge.x, y: wanted.target.y + nudge.y };
  const box = grown(boxOfText({ ...wanted, at, align, reads: "across" }), 0.5);
  return { nudge, align, box, leader: { a: wanted.target, b: { x: at.x, y: at.y - 0.3 * wanted.size } } };
};

/** The cheapest place; rings farther out than the best cost so far cannot win and are not looked at. */
const bestPlace = (
  wanted: Wanted,
  taken: readonly Rect[],
  leaders: readonly Segment[],
  obstacles: Obstacles,
): Candidate => {
  let best: Candidate | undefined;
  for (const radius of RADII) {
    if (best && best.cost <= radius) break;
    for (let i = 0; i < DIRECTIONS; i++) {
      const candidate = candidateAt(wanted, radius, i);
      const cost = costOf(candidate.box, candidate.leader, taken, leaders, obstacles) + radius;
      if (!best || cost < best.cost) best = { ...candidate, cost };
    }
  }
  return best!;
};

/** Greedy: each label in turn takes the cheapest place near its target. */
export const placeLabels = (wanted: readonly Wanted[], obstacles: Obstacles): readonly Label[] => {
  const taken: Rect[] = [...obstacles.boxes];
  const leaders: Segment[] = [];
  return wanted.map((label): Label => {
    const best = bestPlace(label, taken, leaders, obstacles);
    taken.push(best.box);
    leaders.push(best.leader);
    const { tag, at, words, size, lettering } = label;
    return { kind: "label", tag, at, words, size, lettering, nudge: best.nudge, align: best.align };
  });
};
