import { distanceToLine, distanceToSegment, type Point } from "../geometry/index.ts";
import { units } from "../quantities/index.ts";
import type { Anchor, Barrier } from "./anchor-group.ts";

/** Anchors nearer to the edge than the nearest plus this belong to its row, mm. */
const SAME_ROW = 5;

/** The row of anchors nearest to an edge and what is asked of it: in, N. */
export interface EdgeRow {
  readonly barrier: Barrier;
  readonly anchors: readonly Anchor[];
  readonly ca1: number;
  /** from the outer anchors to the side edges, in; Infinity where there is none */
  readonly ca2: readonly [number, number];
  /** spacings along the edge, in */
  readonly gaps: readonly number[];
  /** of the shear toward the edge, along the edge, from the row's middle, in */
  readonly eccentricity: number;
  /** shear of the whole base toward the edge and along it, N; toward < 0 is away */
  readonly toward: number;
  readonly along: number;
}

/**
 * The row that meets an edge first, on one side of it. The shear of all anchors on that side counts on this row, because
 * holes in a base plate are wider than the anchors and the front row may meet its edge alone (ACI 318-19 Fig.
 * R17.7.2.1b, case 3).
 */
export const edgeRow = (anchors: readonly Anchor[], barrier: Barrier, barriers: readonly Barrier[]): EdgeRow => {
  const length = Math.hypot(barrier.b.x - barrier.a.x, barrier.b.y - barrier.a.y);
  const t = { x: (barrier.b.x - barrier.a.x) / length, y: (barrier.b.y - barrier.a.y) / length };
  const side = Math.sign(distanceToLine(anchors[0]!, barrier)) || 1;
  const n = { x: side * t.y, y: -side * t.x };
  const ca = (p: Point): number => Math.abs(distanceToLine(p, barrier));
  const ca1 = Math.min(...anchors.map(ca));
  const u = (p: Point): number => p.x * t.x + p.y * t.y;
  const row = anchors.filter((a) => ca(a) <= ca1 + SAME_ROW).toSorted((a, b) => u(a) - u(b));
  const shear = (a: Anchor, d: Point): number => a.shearX * d.x + a.shearY * d.y;
  const toward = anchors.reduce((sum, a) => sum + shear(a, n), 0);
  const middle = row.reduce((sum, a) => sum + u(a), 0) / row.length;
  const moment = anchors.reduce((sum, a) => sum + shear(a, n) * (u(a) - middle), 0);
  return {
    barrier,
    anchors: row,
    ca1: ca1 / units.in.size,
    ca2: sideDistances(row, barrier, barriers, { ca1, t }),
    gaps: row.slice(1).map((a, i) => (u(a) - u(row[i]!)) / units.in.size),
    eccentricity: toward > 0 ? Math.abs(moment / toward) / units.in.size : 0,
    toward,
    along: Math.abs(anchors.reduce((sum, a) => sum + shear(a, t), 0)),
  };
};

/** Side edges: barriers steeper than 45° to this one, in reach of the body; their distance square to their own line. */
const sideDistances = (
  row: readonly Anchor[],
  barrier: Barrier,
  barriers: readonly Barrier[],
  { ca1, t }: { readonly ca1: number; readonly t: Point },
): readonly [number, number] => {
  const sides: [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const other of barriers) {
    const [dx, dy] = [other.b.x - other.a.x, other.b.y - other.a.y];
    const steep = Math.abs(dx * t.x + dy * t.y) < Math.SQRT1_2 * Math.hypot(dx, dy);
    if (other === barrier || !steep) continue;
    for (const anchor of row) {
      if (distanceToSegment(anchor, other) >= Math.SQRT2 * 1.5 * ca1) continue;
      const end = whichEnd(anchor, other, t);
      sides[end] = Math.min(sides[end], Math.abs(distanceToLine(anchor, other)) / units.in.size);
    }
  }
  return sides;
};

/** 0 where the barrier's line is met going back along t, 1 going forward. */
const whichEnd = (anchor: Point, { a, b }: Barrier, t: Point): 0 | 1 => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const s = ((a.x - anchor.x) * dy - (a.y - anchor.y) * dx) / (t.x * dy - t.y * dx);
  return s < 0 ? 0 : 1;
};
