/**
 * Rigid base plate under a biaxial load: concrete that only pushes (elastic bedding), anchors that only pull.
 *
 * Preload law. Torque stretches an anchor to N0 and presses the plate down by w̄ before any load comes. Later moves of
 * the plate change the pull by the anchor's stiffness: N = max(0, N0 + ka (w̄ − w)). So an anchor clamps until the
 * plate has lifted: first the pressure beneath falls and the pull hardly rises, then, the joint open, the anchor
 * takes the whole. Without preload w̄ = 0 and the law is a plain spring that only pulls.
 * Method and convergence: rigid-equilibrium.ts. No-tension bases without anchors are the same problem [teng].
 */
import type { Reaction } from "../frames/index.ts";
import { type Point, type Polygon, polygonArea, polygonMoments } from "../geometry/index.ts";
import { isUnable, type Unable, unable } from "../quantities/index.ts";
import type { BasePlate, ContactResult, PlateMovement } from "./base-plate.ts";
import { positivePieces } from "./contact-zone.ts";
import { depthInHull } from "./depth-in-hull.ts";
import { plateFault } from "./plate-fault.ts";
import { type PullSpring, type Rest, rigidEquilibrium, springPull, type Vector3 } from "./rigid-equilibrium.ts";

const PLACE = "base plate";

/** @returns pulls, pressure field, contact zone and movement; Unable where the plate overturns or cannot be computed */
export const solveContact = (plate: BasePlate, reaction: Reaction): ContactResult | Unable => {
  const wrong = plateFault(plate, reaction);
  if (wrong !== undefined) return unable(PLACE, wrong);
  const scale = scales(plate, reaction);
  const { outline, load } = scale;
  if (plate.anchors.length === 0 && overturns(outline, load)) {
    return unable(PLACE, "The plate overturns: the resultant falls outside it and nothing holds it down.");
  }
  const springs = clampedSprings(plate, scale);
  if (isUnable(springs)) return springs;
  const found = rigidEquilibrium({ outline, springs, load }, [1, 0, 0]);
  if (!found.converged) return unable(PLACE, "No equilibrium: the anchors cannot hold this load where they stand.");
  return report(plate, scale, springs, found);
};

/** The problem without units: lengths about the centroid by √area, forces by all that is applied. */
interface Scale {
  readonly cx: number;
  readonly cy: number;
  /** √area, mm */
  readonly size: number;
  /** load and preloads together, N; 1 where there are none */
  readonly force: number;
  /** settlement, mm, that makes one unit of scaled pressure */
  readonly settlement: number;
  readonly outline: Polygon;
  readonly load: Vector3;
}

/** N; less than this is no load, and its digits are not to be trusted. */
const NOTHING = 1e-100;

const scales = ({ outline, anchors, bedding }: BasePlate, { P, Mx, My }: Reaction): Scale => {
  const { area, x: cx, y: cy } = polygonMoments(outline);
  const size = Math.sqrt(area);
  const [mx, my] = [(My - P * cx) / size, (Mx - P * cy) / size];
  const preloads = anchors.reduce((sum, a) => sum + a.preload, 0);
  const applied = Math.abs(P) + Math.abs(mx) + Math.abs(my) + preloads;
  const force = applied > NOTHING ? applied : 1;
  return {
    cx,
    cy,
    size,
    force,
    settlement: force / (bedding * area),
    outline: outline.map((p) => ({ x: (p.x - cx) / size, y: (p.y - cy) / size })),
    load: applied > NOTHING ? [P / force, mx / force, my / force] : [0, 0, 0],
  };
};

const overturns = (outline: Polygon, [P, My, Mx]: Vector3): boolean =>
  P > 0 ? depthInHull({ x: My / P, y: Mx / P }, outline) < 1e-9 : P < 0 || My !== 0 || Mx !== 0;

/** The anchors as scaled springs, at rest under their preloads alone. */
const clampedSprings = ({ anchors, bedding }: BasePlate, scale: Scale): readonly PullSpring[] | Unable => {
  const { cx, cy, size, force, outline } = scale;
  const loose = anchors.map((a) => ({
    x: (a.x - cx) / size,
    y: (a.y - cy) / size,
    stiffness: a.stiffness / (bedding * size ** 2),
    preload: a.preload / force,
    rest: 0,
  }));
  const sum = (f: (s: PullSpring) => number): number => loose.reduce((total, s) => total + s.preload * f(s), 0);
  const clamp: Vector3 = [sum(() => 1), sum((s) => s.x), sum((s) => s.y)];
  if (clamp[0] < NOTHING) return loose;
  if (overturns(outline, clamp)) return unable(PLACE, "The preloads alone tip the plate off the concrete.");
  const { q, converged } = rigidEquilibrium({ outline, springs: [], load: clamp }, [1, 0, 0]);
  if (!converged) return unable(PLACE, "The clamping of the plate by its preloads did not converge.");
  return loose.map((s) => ({ ...s, rest: q[0] + q[1] * s.x + q[2] * s.y }));
};

const report = (plate: BasePlate, scale: Scale, springs: readonly PullSpring[], found: Rest): ContactResult => {
  const { q, imbalance, iterations } = found;
  const { cx, cy, size } = scale;
  const atCentroid = scale.settlement * q[0];
  const [tiltX, tiltY] = [(scale.settlement * q[1]) / size, (scale.settlement * q[2]) / size];
  const settlement = atCentroid - tiltX * cx - tiltY * cy;
  const k = plate.bedding;
  const w = (p: Point): number => atCentroid + tiltX * (p.x - cx) + tiltY * (p.y - cy);
  const contactZone = positivePieces(plate.outline, w);
  return {
    settlement,
    tiltX,
    tiltY,
    anchorTension: plate.anchors.map(({ id }, i) => ({ id, T: scale.force * springPull(springs[i]!, q) })),
    pressure: { p0: k * settlement, px: k * tiltX, py: k * tiltY },
    contactZone,
    contactArea: contactZone.reduce((sum, piece) => sum + polygonArea(piece), 0),
    maxPressure: k * Math.max(0, ...plate.outline.map(w)),
    residual: { P: imbalance[0], My: imbalance[1], Mx: imbalance[2] },
    iterations,
  };
};

/** Settlement of a point of the plate, mm, downward positive. */
export const settlementAt = ({ settlement, tiltX, tiltY }: PlateMovement, x: number, y: number): number =>
  settlement + tiltX * x + tiltY * y;
