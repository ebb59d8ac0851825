/** A pad as axis-parallel rectangles of full thickness, for a plate solver whose grid runs with the walls. */
import type { Point, Rect } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/index.ts";
import type { Pad } from "./pad.ts";

/** Rectangles and, where they are less than the pad, why that is on the safe side. */
export interface PadRects {
  readonly rects: readonly Rect[];
  readonly reason?: string;
}

const SLOPE = "Sloped sides count as thin slab: only the part at full thickness stiffens the plate.";
const ROUND =
  "A round outline is replaced by rectangles drawn inside it: less thick concrete than is poured, so the stress is not flattered.";

/** @param steps - rectangles drawn into each circle: 2 cover 78 % of it, 3 cover 85 % */
export const padRects = (pad: Pad, steps = 3): PadRects | Unable => {
  const reasons = pad.sides.kind === "sloped" ? [SLOPE] : [];
  const { plan } = pad;
  if (plan.shape === "outline") {
    const rect = asRect(plan.outline);
    return rect
      ? withReasons([rect], reasons)
      : unable("pad", "The pad's outline is not one rectangle along the walls.");
  }
  const axis = columnAxis(plan.columns);
  if (axis === "skew")
    return unable(
      "pad",
      "The columns do not stand in line with a wall, so the pad cannot be laid on the plate's grid.",
    );
  const box = (at: Point, along: number, across: number): Rect =>
    axis === "x"
      ? { x0: at.x - along / 2, y0: at.y - across / 2, x1: at.x + along / 2, y1: at.y + across / 2 }
      : { x0: at.x - across / 2, y0: at.y - along / 2, x1: at.x + across / 2, y1: at.y + along / 2 };
  if (plan.shape === "rectangles")
    return withReasons(
      plan.columns.map((at) => box(at, plan.along, plan.across)),
      reasons,
    );
  const [p, q] = plan.columns;
  const middle = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
  const length = Math.hypot(q.x - p.x, q.y - p.y);
  if (plan.shape === "strip") return withReasons([box(middle, length + 2 * plan.beyond, plan.width)], reasons);
  const band = box(middle, length, Math.min(plan.waist, 2 * plan.radius));
  const angles = Array.from({ length: steps }, (_, i) => ((i + 1) * Math.PI) / (2 * (steps + 1)));
  const discs = plan.columns.flatMap((at) =>
    angles.map((angle) => box(at, 2 * plan.radius * Math.cos(angle), 2 * plan.radius * Math.sin(angle))),
  );
  return withReasons([band, ...discs], [ROUND, ...reasons]);
};

const withReasons = (rects: readonly Rect[], reasons: readonly string[]): PadRects =>
  reasons.length > 0 ? { rects, reason: reasons.join(" ") } : { rects };

const columnAxis = (columns: readonly Point[]): "x" | "y" | "skew" => {
  const [p, q] = columns;
  if (!p || !q || Math.abs(p.y - q.y) < 1e-6) return "x";
  return Math.abs(p.x - q.x) < 1e-6 ? "y" : "skew";
};

const asRect = (ring: readonly Point[]): Rect | undefined => {
  const [xs, ys] = [[...new Set(ring.map((p) => p.x))], [...new Set(ring.map((p) => p.y))]];
  if (ring.length !== 4 || xs.length !== 2 || ys.length !== 2) return undefined;
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
};
