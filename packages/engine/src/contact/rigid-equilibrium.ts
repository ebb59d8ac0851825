/**
 * Rest of a rigid plate on concrete that only pushes, held by anchors that only pull.
 *
 *   minimise  E(q) = ½ ∫ ⟨w⟩² dA + Σ ⟨Ni + ki(w̄i − wi)⟩² / 2ki − F·q,   w = q0 + q1 x + q2 y,  ⟨v⟩ = max(0, v)
 *
 * E is convex and once smoothly differentiable, quadratic between changes of the contact zone and of the anchors at
 * work. Its gradient is the equilibrium: concrete pressure − anchor pulls = load.
 * Method: Newton with a line search on the slope, which rises along every line, so each step reaches less energy;
 * semismooth Newton after Qi & Sun, Math. Programming 58 (1993) 353-367 [qi-sun]. Integrals exact: the outline clipped
 * by the line w = 0, moments by Green's theorem.
 * Needs: lengths scaled about the plate's centroid by √area, forces by the load and the preloads together, settlements so
 * that the bedding is 1; the imbalance is then relative as it stands. Leaves: nothing.
 * Fails: where no equilibrium exists q runs away; "converged" is then false.
 * Cost: bench/contact.ts.
 */
import { clipByHalfPlane, type Polygon, polygonMoments } from "../geometry/index.ts";

export type Vector3 = readonly [number, number, number];
type Matrix3 = readonly [Vector3, Vector3, Vector3];

/** An anchor in scaled axes: force law N = max(0, preload + stiffness·(rest − w)). */
export interface PullSpring {
  readonly x: number;
  readonly y: number;
  readonly stiffness: number;
  readonly preload: number;
  /** settlement at which the pull equals the preload */
  readonly rest: number;
}

export interface RigidProblem {
  readonly outline: Polygon;
  readonly springs: readonly PullSpring[];
  /** F: force, moment pressing +x, moment pressing +y (scaled) */
  readonly load: Vector3;
}

export interface Rest {
  readonly q: Vector3;
  /** E'(q): concrete − anchors − load */
  readonly imbalance: Vector3;
  readonly iterations: number;
  readonly converged: boolean;
}

export const springPull = ({ x, y, stiffness, preload, rest }: PullSpring, q: Vector3): number =>
  Math.max(0, preload + stiffness * (rest - (q[0] + q[1] * x + q[2] * y)));

const TOLERANCE = 1e-13;
const ACCEPTABLE = 1e-9;
const STEPS = 200;

/** @param q - where to start; any value will do */
export const rigidEquilibrium = (problem: RigidProblem, q: Vector3): Rest => {
  let here = state(problem, q);
  let best = here;
  let iterations = 0;
  for (; iterations < STEPS && size(here) > TOLERANCE; iterations++) {
    const d = newtonStep(here.slope, here.imbalance);
    here = lineSearch(problem, here, d);
    if (size(here) < size(best)) best = here;
    else if (size(best) < ACCEPTABLE) break;
  }
  return { q: best.q, imbalance: best.imbalance, iterations, converged: size(best) <= ACCEPTABLE };
};

interface State {
  readonly q: Vector3;
  readonly imbalance: Vector3;
  readonly slope: Matrix3;
}

const size = ({ imbalance }: State): number => Math.hypot(...imbalance);

const state = ({ outline, springs, load }: RigidProblem, q: Vector3): State => {
  const part = clipByHalfPlane(outline, { nx: -q[1], ny: -q[2], c: q[0] });
  const { area: A, x, y, Ixx, Iyy, Ixy } = polygonMoments(part);
  let [h00, h01, h02] = [A, A * x, A * y];
  let [h11, h12, h22] = [Iyy + A * x * x, Ixy + A * x * y, Ixx + A * y * y];
  // ∫w, ∫wx, ∫wy by the settlement at the centroid, so that a small contact zone keeps its digits
  const wc = q[0] + q[1] * x + q[2] * y;
  const push = A * wc;
  let g0 = push - load[0];
  let g1 = push * x + (q[1] * Iyy + q[2] * Ixy) - load[1];
  let g2 = push * y + (q[1] * Ixy + q[2] * Ixx) - load[2];
  for (const spring of springs) {
    const N = springPull(spring, q);
    if (N === 0) continue;
    const { x: sx, y: sy, stiffness: s } = spring;
    g0 -= N;
    g1 -= N * sx;
    g2 -= N * sy;
    h00 += s;
    h01 += s * sx;
    h02 += s * sy;
    h11 += s * sx * sx;
    h12 += s * sx * sy;
    h22 += s * sy * sy;
  }
  return {
    q,
    imbalance: [g0, g1, g2],
    slope: [
      [h00, h01, h02],
      [h01, h11, h12],
      [h02, h12, h22],
    ],
  };
};

/** Below this share of the trace a pivot counts as nothing to stand on. */
const SINGULAR = 1e-13;

/**
 * −(H + r)⁻¹ g by Cholesky. r = 0 wherever H is sound; where too little is at work to hold the plate (no contact, one
 * anchor), r grows with the imbalance, which keeps the step downhill and of a sensible length.
 */
const newtonStep = (H: Matrix3, g: Vector3): Vector3 => {
  const trace = H[0][0] + H[1][1] + H[2][2];
  const damped = 0.01 * Math.hypot(...g) + SINGULAR * trace;
  for (let r = 0; ; r = r === 0 ? damped : 10 * r) {
    const least = SINGULAR * (trace + r);
    const d0 = H[0][0] + r;
    const [l10, l20] = [H[1][0] / d0, H[2][0] / d0];
    const d1 = H[1][1] + r - l10 * H[1][0];
    const c21 = H[2][1] - l20 * H[1][0];
    const l21 = c21 / d1;
    const d2 = H[2][2] + r - l20 * H[2][0] - l21 * c21;
    if (!(d0 > least && d1 > least && d2 > least)) continue;
    const y1 = -g[1] + l10 * g[0];
    const z2 = (-g[2] + l20 * g[0] - l21 * y1) / d2;
    const z1 = y1 / d1 - l21 * z2;
    return [-g[0] / d0 - l10 * z1 - l20 * z2, z1, z2];
  }
};

/** Moves along d until the slope of E along d has fallen to half: the whole step nearly always does. */
const lineSearch = (problem: RigidProblem, from: State, d: Vector3): State => {
  const start = dot(from.imbalance, d);
  const enough = 0.5 * Math.abs(start);
  let [low, high] = [0, Number.POSITIVE_INFINITY];
  let t = 1;
  let there = from;
  for (let i = 0; i < 60; i++) {
    there = state(problem, [from.q[0] + t * d[0], from.q[1] + t * d[1], from.q[2] + t * d[2]]);
    const slope = dot(there.imbalance, d);
    if (Math.abs(slope) <= enough) return there;
    if (slope < 0) low = t;
    else high = t;
    t = high === Number.POSITIVE_INFINITY ? 2 * t : (low + high) / 2;
  }
  return there;
};

const dot = (a: Vector3, b: Vector3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
