/**
 * Area of a pad's plan grown by s all round, exactly, with the values of s where the formula changes.
 *
 * Two equal shapes side by side: their union is twice the part of one that lies on its own side of the middle.
 */
import { distance, type Point, type Polygon, polygonArea, signedArea } from "../geometry/index.ts";
import type { OffsetCorner, PadPlan } from "./pad.ts";

/** Area in mm² as a function of the growth s ≥ 0, mm. */
export interface PlanArea {
  readonly at: (s: number) => number;
  /** values of s between which `at` is smooth */
  readonly breaks: readonly number[];
}

export const planArea = (plan: PadPlan, corner: OffsetCorner): PlanArea => {
  if (plan.shape === "outline") return outlineArea(plan.outline, corner);
  if (plan.shape === "joined-circles") return joinedCirclesArea(plan.radius, plan.waist / 2, spacing(plan.columns));
  if (plan.shape === "strip") {
    return { at: (s) => grownRectangle(spacing(plan.columns) + 2 * plan.beyond, plan.width, s, corner), breaks: [] };
  }
  if (plan.columns.length !== 2) {
    return { at: (s) => plan.columns.length * grownRectangle(plan.along, plan.across, s, corner), breaks: [] };
  }
  return rectanglePairArea(plan.along, plan.across, spacing([plan.columns[0]!, plan.columns[1]!]), corner);
};

const spacing = ([p, q]: readonly [Point, Point]): number => distance(p, q);

const grownRectangle = (a: number, b: number, s: number, corner: OffsetCorner): number =>
  corner === "mitred" ? (a + 2 * s) * (b + 2 * s) : a * b + 2 * (a + b) * s + Math.PI * s * s;

const rectanglePairArea = (along: number, across: number, L: number, corner: OffsetCorner): PlanArea => {
  const touch = (L - along) / 2;
  return {
    at: (s) => 2 * (grownRectangle(along, across, s, corner) - endBeyond(across, s - touch, s, corner)),
    breaks: [touch],
  };
};

/** Area of the end of a grown rectangle over the last c mm of its length. */
const endBeyond = (across: number, c: number, s: number, corner: OffsetCorner): number => {
  if (c <= 0) return 0;
  if (corner === "mitred") return c * (across + 2 * s);
  const round = Math.min(c, s);
  const arc = halfSegment(s, s) - halfSegment(s, s - round);
  return across * c + 2 * arc + 2 * Math.max(0, c - s) * s;
};

/** ∫₀ᵗ √(R² − u²) du. */
const halfSegment = (R: number, t: number): number =>
  R === 0 ? 0 : (t * Math.sqrt(Math.max(0, R * R - t * t)) + R * R * Math.asin(Math.min(1, t / R))) / 2;

/** Half-plane right of the middle, upper half: a quarter circle beyond the column, and max(band, circle) before it. */
const joinedCirclesArea = (radius: number, band: number, L: number): PlanArea => {
  const half = L / 2;
  return {
    at: (s) => {
      const [R, b] = [radius + s, Math.min(band, radius) + s];
      const meet = Math.min(half, Math.sqrt(R * R - b * b));
      return 4 * ((Math.PI * R * R) / 4 + halfSegment(R, meet) + b * (half - meet));
    },
    // √(R² − b²) = L/2
    breaks: band < radius ? [((half * half) / (radius - band) - radius - band) / 2] : [],
  };
};

/**
 * `A + U s + c s²`, c = Σ tan(θ/2) over the corners' turning angles θ where mitred, θ/2 where rounded (a re-entrant
 * corner is mitred either way). Holds until a side of a notch has shrunk to nothing; the caller keeps s below that.
 */
const outlineArea = (outline: Polygon, corner: OffsetCorner): PlanArea => {
  const ring = signedArea(outline) < 0 ? outline.toReversed() : outline;
  const n = ring.length;
  let [U, c] = [0, 0];
  ring.forEach((p, i) => {
    const [before, after] = [ring[(i + n - 1) % n]!, ring[(i + 1) % n]!];
    U += distance(p, after);
    const turn = turningAngle(before, p, after);
    c += corner === "rounded" && turn > 0 ? turn / 2 : Math.tan(turn / 2);
  });
  const A = polygonArea(ring);
  return { at: (s) => A + U * s + c * s * s, breaks: [] };
};

/** Left turn at p, −π..π. */
export const turningAngle = (before: Point, p: Point, after: Point): number => {
  const [ux, uy, vx, vy] = [p.x - before.x, p.y - before.y, after.x - p.x, after.y - p.y];
  return Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
};

/** Whether every side of an outline is still there after growing by s (a notch closes when one has shrunk to nothing). */
export const sidesSurvive = (outline: Polygon, s: number): boolean => {
  const ring = signedArea(outline) < 0 ? outline.toReversed() : outline;
  const n = ring.length;
  const half = (i: number) => turningAngle(ring[(i + n - 1) % n]!, ring[i % n]!, ring[(i + 1) % n]!) / 2;
  return ring.every((p, i) => {
    const taken = Math.min(0, Math.tan(half(i))) + Math.min(0, Math.tan(half(i + 1)));
    return distance(p, ring[(i + 1) % n]!) + s * taken > 0;
  });
};
