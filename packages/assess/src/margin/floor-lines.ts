import {
  distanceToLine,
  type Point,
  polygonDistance,
  type Segment,
  segmentDistance,
  segmentsMeet,
  sides,
} from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import type { End } from "../facts/known.ts";
import { type Crossing, crackCrossing, jointCrossing } from "./crossing.ts";

/** A joint or crack as a straight line, and what holds its sides together. */
export interface FloorLine extends Segment {
  readonly name: string;
  readonly crossing: Crossing;
  /** stated: somebody said that nothing crosses */
  readonly openness: "stated" | "not-stated";
  readonly kind: "joint" | "crack";
}

/** A crack that strays less than this from its chord is that chord, mm. */
const STRAIGHT = 50;

/** Joints that are there (all of a floor to be poured) and cracks, for the bases of one panel. */
export const floorLines = (job: Job, bases: readonly PlacedBase[], end: End): FloorLine[] => [
  ...job.floor.joints
    .filter((j) => j.state === "standing" || job.floor.state === "to-be-poured")
    .map((joint) => ({
      a: joint.from,
      b: joint.to,
      name: joint.name,
      crossing: jointCrossing(joint, end),
      openness: joint.transfer.known && joint.transfer.value === "none" ? ("stated" as const) : ("not-stated" as const),
      kind: "joint" as const,
    })),
  ...job.floor.cracks.flatMap((crack) =>
    straightened(crack.line, bases).map((line) => ({
      ...line,
      name: crack.name,
      crossing: crackCrossing(job, crack, end),
      openness: "not-stated" as const,
      kind: "crack" as const,
    })),
  ),
];

/** The chord of a crack that is nearly straight; of one that wanders, the pieces nearest to the bases. */
const straightened = (line: readonly Point[], bases: readonly PlacedBase[]): Segment[] => {
  const [a, b] = [line[0], line.at(-1)];
  if (!a || !b || line.length < 2) return [];
  const chord = { a, b };
  if (length(chord) > 1 && line.every((p) => distanceToLine(p, chord) < STRAIGHT)) return [chord];
  const pieces = line.slice(1).map((q, i) => ({ a: line[i]!, b: q }));
  const nearest = bases.map((base) =>
    pieces.reduce((best, piece) => (toBase(piece, base) < toBase(best, base) ? piece : best)),
  );
  return [...new Set(nearest)].filter((piece) => length(piece) > 1);
};

export const length = ({ a, b }: Segment): number => Math.hypot(b.x - a.x, b.y - a.y);

/** From a base plate, mm; 0 where it crosses the plate. */
export const toBase = (line: Segment, base: PlacedBase): number =>
  base.outline.length < 3 ? Infinity : Math.min(...sides(base.outline).map((side) => segmentDistance(side, line)));

/** The same line drawn on through the whole floor. */
export const drawnOn = (line: FloorLine, reach: number): FloorLine => {
  const scale = reach / length(line);
  const [dx, dy] = [(line.b.x - line.a.x) * scale, (line.b.y - line.a.y) * scale];
  return { ...line, a: { x: line.a.x - dx, y: line.a.y - dy }, b: { x: line.b.x + dx, y: line.b.y + dy } };
};

/** Whether a line, as it is, runs under a base plate. */
export const runsUnder = (line: Segment, base: PlacedBase): boolean =>
  sides(base.outline).some((side) => segmentsMeet(side, line)) ||
  polygonDistance([line.a, line.b, line.a], base.outline) === 0;

/** A free edge between a base and a line that ends short of it, square to the shortest way from one to the other. */
export const shortOf = (line: FloorLine, base: PlacedBase, reach: number): FloorLine | undefined => {
  const near = [line.a, line.b].toSorted((p, q) => far(p, base.centre) - far(q, base.centre))[0]!;
  const [dx, dy] = [base.centre.x - near.x, base.centre.y - near.y];
  const d = Math.hypot(dx, dy);
  if (d < 1) return undefined;
  const [tx, ty] = [(-dy / d) * reach, (dx / d) * reach];
  return {
    ...line,
    a: { x: near.x - tx, y: near.y - ty },
    b: { x: near.x + tx, y: near.y + ty },
    crossing: { kind: "open" },
  };
};

const far = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);
