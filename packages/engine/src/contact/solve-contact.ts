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
import { pointInPolygon, polygonMoments } from "../geometry/index.ts";
import { isUnable, type Unable, unable } from "../quantities/index.ts";
import type { BasePlate, ContactResult, PlateAnchor, PlateMovement } from "./base-plate.ts";
import { positivePieces } from "./contact-zone.ts";
import { depthInHull } from "./convex-hull.ts";
import { type PullSpring, type RigidProblem, rigidEquilibrium, springPull, type Vector3 } from "./rigid-equilibrium.ts";

const PLACE = "base plate";

/** @returns pulls, pressure field, contact zone and movement; Unable where the plate overturns or cannot be computed */
export const solveContact = (plate: BasePlate, reaction: Reaction): ContactResult | Unable => {
  const wrong = fault(plate, reaction);
  if (wrong !== undefined) return unable(PLACE, wrong);
  const axes = scaledAxes(plate);
  const load = scaledLoad(axes, reaction.P, reaction.Mx, reaction.My);
  const base = { outline: axes.outline, bedding: plate.bedding * axes.size ** 2 };
  if (plate.anchors.length === 0 && overturns(axes.outline, load)) {
    return unable(PLACE, "The plate overturns: the resultant falls outside it and nothing holds it down.");
  }
  const springs = clampedSprings(plate, axes, base);
  if (isUnable(springs)) return springs;
  const found = rigidEquilibrium({ ...base, springs, load }, fullContact(base, load));
  if (!found.converged) return unable(PLACE, "No equilibrium: the anchors cannot hold this load where they stand.");
  return report(plate, axes, springs, found);
};

interface Axes {
  readonly cx: number;
  readonly cy: number;
  /** √area, mm */
  readonly size: number;
  readonly outline: RigidProblem["outline"];
}

const scaledAxes = ({ outline }: BasePlate): Axes => {
  const { area, x: cx, y: cy } = polygonMoments(outline);
  const size = Math.sqrt(area);
  return { cx, cy, size, outline: outline.map((p) => ({ x: (p.x - cx) / size, y: (p.y - cy) / size })) };
};

const scaledLoad = ({ cx, cy, size }: Axes, P: number, Mx: number, My: number): Vector3 => [
  P,
  (My - P * cx) / size,
  (Mx - P * cy) / size,
];

const overturns = (outline: RigidProblem["outline"], [P, My, Mx]: Vector3): boolean =>
  P > 0 ? depthInHull({ x: My / P, y: Mx / P }, outline) < 1e-9 : P < 0 || My !== 0 || Mx !== 0;

const fullContact = ({ bedding }: { bedding: number }, load: Vector3): Vector3 => [
  Math.max(Math.abs(load[0]), Math.abs(load[1]), Math.abs(load[2])) / bedding,
  0,
  0,
];

/** The anchors as springs at rest under their preload alone. */
const clampedSprings = (
  { anchors }: BasePlate,
  { cx, cy, size }: Axes,
  base: { outline: RigidProblem["outline"]; bedding: number },
): readonly PullSpring[] | Unable => {
  const place = (a: PlateAnchor) => ({ x: (a.x - cx) / size, y: (a.y - cy) / size });
  const loose = anchors.map((a) => ({ ...place(a), stiffness: a.stiffness, preload: a.preload, rest: 0 }));
  const sum = (f: (s: PullSpring) => number): number => loose.reduce((total, s) => total + s.preload * f(s), 0);
  const clamp: Vector3 = [sum(() => 1), sum((s) => s.x), sum((s) => s.y)];
  if (clamp[0] === 0) return loose;
  if (overturns(base.outline, clamp)) return unable(PLACE, "The preloads alone tip the plate off the concrete.");
  const { q, converged } = rigidEquilibrium({ ...base, springs: [], load: clamp }, fullContact(base, clamp));
  if (!converged) return unable(PLACE, "The clamping of the plate by its preloads did not converge.");
  return loose.map((s) => ({ ...s, rest: q[0] + q[1] * s.x + q[2] * s.y }));
};

const report = (
  plate: BasePlate,
  { cx, cy, size }: Axes,
  springs: readonly PullSpring[],
  { q, imbalance, forces, iterations }: ReturnType<typeof rigidEquilibrium>,
): ContactResult => {
  const [tiltX, tiltY] = [q[1] / size, q[2] / size];
  const settlement = q[0] - tiltX * cx - tiltY * cy;
  const k = plate.bedding;
  const w = (p: { x: number; y: number }): number => q[0] + tiltX * (p.x - cx) + tiltY * (p.y - cy);
  const contactZone = positivePieces(plate.outline, w);
  const relative = (value: number): number => (forces === 0 ? 0 : value / forces);
  return {
    settlement,
    tiltX,
    tiltY,
    anchorTension: plate.anchors.map(({ id }, i) => ({ id, T: springPull(springs[i]!, q) })),
    pressure: { p0: k * settlement, px: k * tiltX, py: k * tiltY },
    contactZone,
    contactArea: contactZone.reduce((sum, piece) => sum + polygonMoments(piece).area, 0),
    maxPressure: k * Math.max(0, ...plate.outline.map(w)),
    residual: { P: relative(imbalance[0]), My: relative(imbalance[1]), Mx: relative(imbalance[2]) },
    iterations,
  };
};

const fault = ({ outline, anchors, bedding }: BasePlate, reaction: Reaction): string | undefined => {
  const numbers = [bedding, reaction.P, reaction.Mx, reaction.My, ...outline.flatMap((p) => [p.x, p.y])];
  numbers.push(...anchors.flatMap((a) => [a.x, a.y, a.stiffness, a.preload]));
  if (!numbers.every(Number.isFinite)) return "A coordinate, stiffness or load is not a number.";
  if (!(polygonMoments(outline).area > 0)) return "The outline of the plate has no area.";
  if (!(bedding > 0)) return "The bedding must be stiffer than nothing.";
  for (const a of anchors) {
    if (!(a.stiffness > 0)) return `Anchor ${a.id} has no stiffness.`;
    if (a.preload < 0) return `Anchor ${a.id} is preloaded in compression.`;
    if (pointInPolygon(a, outline) === "outside") return `Anchor ${a.id} stands outside the plate.`;
  }
  return undefined;
};

/** Settlement of a point of the plate, mm, downward positive. */
export const settlementAt = ({ settlement, tiltX, tiltY }: PlateMovement, x: number, y: number): number =>
  settlement + tiltX * x + tiltY * y;
