import { distance, type Point } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { baseName } from "../columns.ts";
import { term } from "../facts/print.ts";
import { datums } from "./marks.ts";

/** Two diagonals that are compared: equal lengths mean square. */
export interface SquareCheck {
  readonly id: "base-line" | "posts" | "outer-holes";
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

/** Two columns against the back wall, or four posts against each other; then the rectangle of the outermost holes. */
export const squareChecks = (job: Job, bases: readonly PlacedBase[]): SquareCheck[] => {
  if (bases.length === 4) return fourPosts(job, bases);
  const [left, right] = bases;
  if (!left || !right || bases.length > 2) return [];
  const foot = (base: PlacedBase): Named => ({
    id: `mark on the ${datums(job).y.words} opposite the ${baseName(base.side)}`,
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

const centre = (base: PlacedBase): Named => ({ id: baseName(base.side), at: base.centre });

/** Both diagonals of four posts, and of the hole of each that lies farthest out. */
const fourPosts = (job: Job, bases: readonly PlacedBase[]): SquareCheck[] => {
  const [first, ...others] = bases as [PlacedBase, ...PlacedBase[]];
  const across = others.reduce((far, base) =>
    distance(base.centre, first.centre) > distance(far.centre, first.centre) ? base : far,
  );
  const [second, fourth] = others.filter((base) => base !== across) as [PlacedBase, PlacedBase];
  const outer = (base: PlacedBase, from: PlacedBase): Named | undefined =>
    base.anchors.toSorted((a, b) => distance(b.at, from.centre) - distance(a.at, from.centre))[0];
  const holes = [outer(first, across), outer(across, first), outer(second, fourth), outer(fourth, second)];
  const [a, b, c, d] = holes;
  return [
    pair(job, "posts", "Centres of the posts", [centre(first), centre(across)], [centre(second), centre(fourth)]),
    ...(a && b && c && d ? [pair(job, "outer-holes", "Outermost holes of the posts", [a, b], [c, d])] : []),
  ];
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
