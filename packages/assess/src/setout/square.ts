import { distance, type Point } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { term } from "../facts/print.ts";
import { datums } from "./marks.ts";

/** Two diagonals that are compared: equal lengths mean square. */
export interface SquareCheck {
  readonly id: "base-line" | "outer-holes";
  readonly title: string;
  readonly diagonals: readonly [Diagonal, Diagonal];
  /** true lengths differ by this where the pattern itself is not symmetric, mm */
  readonly apart: number;
}

export interface Diagonal {
  readonly from: { readonly id: string; readonly at: Point };
  readonly to: { readonly id: string; readonly at: Point };
  readonly length: Term;
}

type Named = Diagonal["from"];

const diagonal = (job: Job, from: Named, to: Named): Diagonal => {
  const [dx, dy] = [to.at.x - from.at.x, to.at.y - from.at.y];
  return {
    from,
    to,
    length: term("d", `${from.id} to ${to.id}`, distance(from.at, to.at), "length", job.units, {
      formula: "√(Δx² + Δy²)",
      worked: `√(${dx.toFixed(1)}² + ${dy.toFixed(1)}²) mm`,
    }),
  };
};

const pair = (job: Job, id: SquareCheck["id"], title: string, a: [Named, Named], b: [Named, Named]): SquareCheck => ({
  id,
  title,
  diagonals: [diagonal(job, ...a), diagonal(job, ...b)],
  apart: Math.abs(distance(a[0].at, a[1].at) - distance(b[0].at, b[1].at)),
});

/** Column centres to their feet on the back wall, and the rectangle of the outermost holes of both bases. */
export const squareChecks = (job: Job, bases: readonly PlacedBase[]): SquareCheck[] => {
  const [left, right] = bases;
  if (!left || !right) return [];
  const centre = (base: PlacedBase): Named => ({ id: `${base.side} column`, at: base.centre });
  const foot = (base: PlacedBase): Named => ({
    id: `mark on the ${datums(job).y.words} opposite the ${base.side} column`,
    at: { x: base.centre.x, y: 0 },
  });
  const checks = [
    pair(
      job,
      "base-line",
      "Column centres and their marks on the back wall",
      [centre(left), foot(right)],
      [centre(right), foot(left)],
    ),
  ];
  const [l, r] = [outermost(left, right), outermost(right, left)];
  return l && r
    ? [...checks, pair(job, "outer-holes", "Outermost holes of both bases", [l.back, r.front], [l.front, r.back])]
    : checks;
};

/** Of one base the holes farthest from the other column, toward the back and toward the front. */
const outermost = (base: PlacedBase, other: PlacedBase): { back: Named; front: Named } | undefined => {
  const span = distance(base.centre, other.centre) || 1;
  const e = { x: (base.centre.x - other.centre.x) / span, y: (base.centre.y - other.centre.y) / span };
  const v = base.side === "left" ? { x: e.y, y: -e.x } : { x: -e.y, y: e.x };
  const most = (way: 1 | -1): Named | undefined => {
    const score = ({ x, y }: Point): number => x * (e.x + way * v.x) + y * (e.y + way * v.y);
    return base.anchors.toSorted((a, b) => score(b.at) - score(a.at))[0];
  };
  const [back, front] = [most(-1), most(1)];
  return back && front ? { back, front } : undefined;
};
