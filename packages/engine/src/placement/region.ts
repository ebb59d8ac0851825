import { Clipper, ClipType, FillRule, type PolyPath64, PolyTree64 } from "clipper2-ts";
import { clipByHalfPlane, type Polygon } from "../geometry/index.ts";

/** A part of the plan in one piece: outline counter-clockwise, holes clockwise. */
export interface Region {
  readonly outline: Polygon;
  readonly holes: readonly Polygon[];
}

/** What is left of grid polygons when others are taken out, piece by piece. All counter-clockwise. */
export const takeOut = (from: readonly Polygon[], out: readonly Polygon[]): readonly Region[] => {
  if (from.length === 0) return [];
  const near = nearby(from, out).map((p) => p.map(({ x, y }) => ({ x: Math.round(x), y: Math.round(y) })));
  const tree = new PolyTree64();
  const subject = from.map((p) => [...p]);
  Clipper.booleanOpWithPolyTree(ClipType.Difference, subject, near, tree, FillRule.NonZero);
  return pieces(tree);
};

/** Whether two sets of grid polygons have area in common. */
export const overlap = (p: readonly Polygon[], q: readonly Polygon[]): boolean =>
  Clipper.intersect(
    p.map((r) => [...r]),
    q.map((r) => [...r]),
    FillRule.EvenOdd,
  ).length > 0;

const pieces = (node: PolyPath64): readonly Region[] =>
  children(node).flatMap((outer) => {
    const holes = children(outer);
    return [{ outline: outer.poly ?? [], holes: holes.map((hole) => hole.poly ?? []) }, ...holes.flatMap(pieces)];
  });

const children = (node: PolyPath64): readonly PolyPath64[] =>
  Array.from({ length: node.count }, (_, i) => node.child(i));

/** The polygons that reach the others' box, cut to a little more than it: saves rounds that nobody would see. */
const nearby = (from: readonly Polygon[], out: readonly Polygon[]): readonly Polygon[] => {
  const box = bounds(from.flat());
  const margin = 1000;
  const cuts = [
    { nx: 1, ny: 0, c: box.x1 + margin },
    { nx: -1, ny: 0, c: margin - box.x0 },
    { nx: 0, ny: 1, c: box.y1 + margin },
    { nx: 0, ny: -1, c: margin - box.y0 },
  ];
  return out.map((p) => cuts.reduce(clipByHalfPlane, p)).filter((p) => p.length >= 3);
};

const bounds = (points: Polygon): { x0: number; y0: number; x1: number; y1: number } => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points)
    [x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x), Math.max(y1, y)];
  return { x0, y0, x1, y1 };
};
