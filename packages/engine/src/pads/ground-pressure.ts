/**
 * Pressure under a rigid base on ground that only pushes: q = max(0, q0 + qx x + qy y) over a convex outline, with
 * ∫q = N, ∫q x = N x̄, ∫q y = N ȳ.
 *
 * Method: the three equations are the gradient of a convex function, so Newton's method with halving of the step finds
 * their one solution; forces and their derivatives come from the exact moments of the clipped outline.
 * Needs: outline convex, N > 0. Fails: the resultant stands on or outside the outline (the base overturns).
 * Cost: about 10 clippings.
 */
import { clipByHalfPlane, type Point, type Polygon, pointInPolygon, polygonMoments } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/index.ts";
import { solveDense } from "../slabs/solve-dense.ts";

export interface GroundPressure {
  /** MPa, MPa/mm, MPa/mm: the plane whose positive part is the pressure */
  readonly q0: number;
  readonly qx: number;
  readonly qy: number;
  /** where the ground presses */
  readonly contact: Polygon;
  /** MPa, and the corner it stands at */
  readonly largest: number;
  readonly at: Point;
  /** share of the base in contact, 0..1 */
  readonly share: number;
}

type Plane = readonly [number, number, number];

export const groundPressure = (outline: Polygon, N: number, resultant: Point): GroundPressure | Unable => {
  if (!(N > 0)) return unable("pad", "Nothing presses the pad down.");
  if (pointInPolygon(resultant, outline) !== "inside") {
    return unable("pad", "The resultant falls outside the pad: it overturns before the ground can answer.");
  }
  const whole = polygonMoments(outline);
  const size = Math.sqrt(whole.area);
  // about the centroid, in units of the base's size and mean pressure
  const ring = outline.map((p) => ({ x: (p.x - whole.x) / size, y: (p.y - whole.y) / size }));
  const e = { x: (resultant.x - whole.x) / size, y: (resultant.y - whole.y) / size };
  const plane = newton(ring, e);
  if (!plane) return unable("pad", "The ground pressure did not converge: the resultant stands too near the rim.");
  const [c, a, b] = plane;
  const contact = clipped(ring, plane);
  const values = contact.map((p) => c + a * p.x + b * p.y);
  const top = values.indexOf(Math.max(...values));
  const mean = N / whole.area;
  const back = (p: Point): Point => ({ x: whole.x + size * p.x, y: whole.y + size * p.y });
  return {
    q0: mean * (c - (a * whole.x + b * whole.y) / size),
    qx: (mean * a) / size,
    qy: (mean * b) / size,
    contact: contact.map(back),
    largest: mean * values[top]!,
    at: back(contact[top]!),
    share: polygonMoments(contact).area,
  };
};

const clipped = (ring: Polygon, [c, a, b]: Plane): Polygon => clipByHalfPlane(ring, { nx: -a, ny: -b, c });

/** ∫q, ∫qx, ∫qy less what they must be, and the matrix of their derivatives. */
const balance = (ring: Polygon, plane: Plane, e: Point): { residual: number[]; matrix: number[][] } => {
  const { area, x, y, Ixx, Iyy, Ixy } = polygonMoments(clipped(ring, plane));
  const [Sx, Sy] = [area * x, area * y];
  const matrix = [
    [area, Sx, Sy],
    [Sx, Iyy + area * x * x, Ixy + area * x * y],
    [Sy, Ixy + area * x * y, Ixx + area * y * y],
  ];
  const goal = [1, e.x, e.y];
  const residual = matrix.map((row, i) => row.reduce((s, m, j) => s + m * plane[j]!, 0) - goal[i]!);
  return { residual, matrix };
};

const norm = (v: readonly number[]): number => Math.hypot(...v);

const newton = (ring: Polygon, e: Point): Plane | undefined => {
  const { Ixx, Iyy, Ixy } = polygonMoments(ring);
  const det = Ixx * Iyy - Ixy * Ixy;
  let plane: Plane = [1, (Ixx * e.x - Ixy * e.y) / det, (Iyy * e.y - Ixy * e.x) / det];
  let now = balance(ring, plane, e);
  for (let step = 0; step < 200 && norm(now.residual) > 1e-13; step++) {
    const change = solveDense(now.matrix, now.residual);
    let next: { plane: Plane; state: ReturnType<typeof balance> } | undefined;
    for (let t = 1; t > 1e-12; t /= 2) {
      const trial: Plane = [plane[0] - t * change[0]!, plane[1] - t * change[1]!, plane[2] - t * change[2]!];
      const state = balance(ring, trial, e);
      if (norm(state.residual) < norm(now.residual)) {
        next = { plane: trial, state };
        break;
      }
    }
    if (!next) break;
    [plane, now] = [next.plane, next.state];
  }
  return norm(now.residual) < 1e-9 ? plane : undefined;
};
