/**
 * What a joint or crack hands across, as springs along it: N per mm of step between its sides, per mm of length.
 *
 * A long joint between two half-planes with springs g = spring/(k l): an edge load P gives, by Fourier transform along the
 * joint with C(α) the deflection of a free edge (exact-edge.ts),  f = g C P / (1 + 2 g C)  passed at each wave number; the
 * whole force passed is that at α = 0, where C = √2:   share = √2 g / (1 + 2√2 g), half at the most.
 */
import { findRoot, gaussRule } from "../numerics/index.ts";
import { shown, type Term, type Unable, unable } from "../quantities/index.ts";
import { type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

/** Spring that passes `share` of an edge load to the other side, N/mm². @param share - 0 to below 0.5 */
export const springForShare = (slab: SlabOnGround, share: number): number =>
  (slab.k * stiffnessRadius(slab) * share) / (Math.SQRT2 * (1 - 2 * share));

/** Share of an edge load passed by a spring, N/mm². */
export const shareOfSpring = (slab: SlabOnGround, spring: number): number => {
  const g = spring / (slab.k * stiffnessRadius(slab));
  return (Math.SQRT2 * g) / (1 + 2 * Math.SQRT2 * g);
};

const PIECE = gaussRule(12);

/** Deflection ratio du/dl under a point load at the joint. */
export const ratioOfSpring = (slab: SlabOnGround, spring: number): number => {
  const g = spring / (slab.k * stiffnessRadius(slab));
  let [loaded, unloaded] = [0, 0];
  let from = 0;
  for (let width = 0.05; from < 1e4; width *= 1.25) {
    for (let i = 0; i < PIECE.points.length; i++) {
      const alpha2 = (from + width * PIECE.points[i]!) ** 2;
      const p = Math.sqrt((Math.sqrt(alpha2 * alpha2 + 1) + alpha2) / 2);
      const q = 1 / (2 * p);
      const C = 1 / (2 * (1 - slab.nu) * p * alpha2 + q * (1 - (1 - slab.nu) ** 2 * alpha2 * alpha2));
      const passed = (g * C) / (1 + 2 * g * C);
      loaded += width * PIECE.weights[i]! * C * (1 - passed);
      unloaded += width * PIECE.weights[i]! * C * passed;
    }
    from += width;
  }
  return unloaded / loaded;
};

/** The spring at which du/dl is `ratio`, N/mm². */
export const springForRatio = (slab: SlabOnGround, ratio: number): number | Unable => {
  if (!(ratio > 0 && ratio < 0.995)) return unable("joint", "A deflection ratio is asked between 0 and 0.995.");
  const unit = slab.k * stiffnessRadius(slab);
  return unit * 10 ** findRoot((x) => ratioOfSpring(slab, unit * 10 ** x) - ratio, -6, 6, 1e-9);
};

/** mm: aggregate holds across a crack no wider than this; wider ones are to be filled (Concrete Society TR34). */
export const interlockWidth = 0.9;

/** Share of an edge load that TR34 lets interlock carry, up to 1.5 mm; here only up to `interlockWidth`, nothing beyond. */
export const interlockShare = 0.15;

/** Spring of a crack or induced joint by its width, mm; nothing where it is too wide. */
export const interlockSpring = (slab: SlabOnGround, width: number): number =>
  width <= interlockWidth ? springForShare(slab, interlockShare) : 0;

/** The share that crosses, unfolded. */
export const shareTerm = (slab: SlabOnGround, name: string, spring: number, from: readonly Term[]): Term => ({
  symbol: "s",
  words: `share of an edge load that ${name} hands across`,
  value: shareOfSpring(slab, spring),
  unit: "",
  clause: "two half-planes on springs (docs/theory/plates.md)",
  formula: "√2 g/(1 + 2√2 g), g = spring/(k l)",
  worked: `spring ${shown(spring)} N/mm², k l ${shown(slab.k * stiffnessRadius(slab))} N/mm²`,
  from,
});
