import type { Point, Segment } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { baseName } from "../columns.ts";
import { term } from "../facts/print.ts";

/** A place to mark, measured square from the two walls. */
export interface Mark {
  readonly id: string;
  readonly side: string;
  readonly at: Point;
  readonly x: Term;
  readonly y: Term;
}

/** Where the tape starts: a wall's inner face, or a line to be struck where no wall stands there. */
export interface Datum {
  readonly words: string;
  readonly line: Segment | undefined;
}

const ON = 1;

/** The walls on the plan's two axes. */
export const datums = ({ bay }: Job): { readonly x: Datum; readonly y: Datum } => {
  const left = bay.walls.find(({ from, to }) => Math.abs(from.x) < ON && Math.abs(to.x) < ON);
  const back = bay.walls.find(({ from, to }) => Math.abs(from.y) < ON && Math.abs(to.y) < ON);
  return {
    x: { words: left?.name ?? "left zero line of the plan", line: left && { a: left.from, b: left.to } },
    y: { words: back?.name ?? "back zero line of the plan", line: back && { a: back.from, b: back.to } },
  };
};

export const markAt = (job: Job, id: string, side: string, at: Point): Mark => {
  const { x, y } = datums(job);
  return {
    id,
    side,
    at,
    x: term("x", `${id} from the ${x.words}`, at.x, "length", job.units, { basis: "plan of the job" }),
    y: term("y", `${id} from the ${y.words}`, at.y, "length", job.units, { basis: "plan of the job" }),
  };
};

export const columnMarks = (job: Job, bases: readonly PlacedBase[]): Mark[] =>
  bases.map((base) => markAt(job, baseName(base.side), base.side, base.centre));

export const holeMarks = (job: Job, bases: readonly PlacedBase[]): Mark[] =>
  bases.flatMap((base) => base.anchors.map(({ id, at }) => markAt(job, id, base.side, at)));
