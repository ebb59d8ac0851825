/**
 * The half-plate on springs with a free edge y = 0 (lengths in l, D = k = 1), loaded near the edge; response at the edge.
 *
 *   edge point load:  ŵ(α, y) = C e^{−py} [cos qy + (1−ν)α² sin qy],   (p + iq)² = α² + i
 *   1/C = 2(1−ν)pα² + q[1 − (1−ν)²α⁴]          from My = 0 and Kirchhoff shear = P at the edge
 *   w(0,0) of any load = ∫∫ load · w(edge point load)   by Betti's theorem;  M = (1−ν²)α² times as much in α-space
 *
 * Method: Fourier transform along the edge, Gauss quadrature in y and α. Our own derivation; it agrees with
 * Westergaard's 1948 formulas where they hold. Fails: never. Cost: about 5 ms.
 */
import { gaussRule } from "../numerics/index.ts";
import type { PlateResponse } from "./exact-interior.ts";
import { plateStiffness, type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

/** "circle" touches the edge; "semicircle" has its straight side on it. */
export type EdgePatch = "circle" | "semicircle";

const ACROSS = gaussRule(48);
const PIECE = gaussRule(12);

/** Ends of the pieces of α: even over the plate's own scale, growing up to the patch's, even through its oscillation. */
const pieces = (a: number): readonly number[] => {
  const far = Math.max(10 / a, 12);
  const own = Array.from({ length: 13 }, (_, i) => i / 2);
  const growing = Array.from({ length: 40 }, (_, i) => 6 * (far / 6) ** ((i + 1) / 40));
  const oscillating = Array.from({ length: 130 }, (_, i) => far + (3 * (i + 1)) / a);
  return [...own, ...growing, ...oscillating];
};

/** @param P - N @param a - radius, mm */
export const edgeExact = (slab: SlabOnGround, P: number, a: number, patch: EdgePatch): PlateResponse => {
  const l = stiffnessRadius(slab);
  const { w, M } = integrate(slab.nu, a / l, patch);
  const moment = M * P;
  return { deflection: (w * P * l * l) / plateStiffness(slab), moment, stress: (6 * moment) / slab.h ** 2 };
};

/** w k l²/P and M/P at the edge. */
const integrate = (nu: number, a: number, patch: EdgePatch): { w: number; M: number } => {
  const ends = pieces(a);
  let [w, M] = [0, 0];
  for (let i = 0; i + 1 < ends.length; i++) {
    const from = ends[i]!;
    const width = ends[i + 1]! - from;
    for (let g = 0; g < PIECE.points.length; g++) {
      const alpha = from + width * PIECE.points[g]!;
      const part = width * PIECE.weights[g]! * across(nu, alpha, a, patch);
      w += part;
      M += (1 - nu * nu) * alpha * alpha * part;
    }
  }
  return { w: w / Math.PI, M: M / Math.PI };
};

/** The loaded area's transform against the edge load's, at one wave number. */
const across = (nu: number, alpha: number, a: number, patch: EdgePatch): number => {
  const alpha2 = alpha * alpha;
  const p = Math.sqrt((Math.sqrt(alpha2 * alpha2 + 1) + alpha2) / 2);
  const q = 1 / (2 * p);
  const C = 1 / (2 * (1 - nu) * p * alpha2 + q * (1 - (1 - nu) ** 2 * alpha2 * alpha2));
  const [area, depth] = patch === "circle" ? [Math.PI * a * a, 2 * a] : [(Math.PI * a * a) / 2, a];
  const reach = Math.min(depth, 40 / p);
  let total = 0;
  for (let g = 0; g < ACROSS.points.length; g++) {
    const t = ACROSS.points[g]!;
    const y = reach * t * t; // denser toward the edge, where the chord of a circle opens like √y
    const X = Math.sqrt(Math.max(0, patch === "circle" ? y * (2 * a - y) : a * a - y * y));
    const chord = alpha * X < 1e-4 ? 2 * X : (2 * Math.sin(alpha * X)) / alpha;
    const edge = Math.exp(-p * y) * (Math.cos(q * y) + (1 - nu) * alpha2 * Math.sin(q * y));
    total += ACROSS.weights[g]! * 2 * t * reach * chord * edge;
  }
  return (C * total) / area;
};
