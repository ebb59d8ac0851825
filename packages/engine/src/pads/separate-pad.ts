/**
 * A pad that is not tied into the floor, under one column or (as a strip) under both: overturning, ground pressure,
 * sliding. Statics of a rigid base; the inward moments of two columns on one strip cancel by themselves.
 */
import { distanceToBoundary, distanceToLine, type Polygon, polygonArea, sides, signedArea } from "../geometry/index.ts";
import { type Check, isUnable, shown, type Term } from "../quantities/index.ts";
import type { PresumptiveSoil } from "../slabs/index.ts";
import { type GroundPressure, groundPressure } from "./ground-pressure.ts";
import { type PadAction, type PadResultant, padResultant, type SeparatePad } from "./pad-resultant.ts";

/** What the ground is allowed, and the margins asked. */
export interface PadGround {
  /** allowable pressure under the pad, its own weight included, MPa */
  readonly bearing: number;
  readonly sliding: PresumptiveSoil["sliding"];
  /** factor against overturning, 1.5 by common practice */
  readonly overturningFactor: number;
  /** factor against sliding, 1.5 by common practice */
  readonly slidingFactor: number;
}

const STATICS = "statics of a rigid base";

/** Ground pressure is left out where the pad overturns: the ground cannot answer then, and overturning says why. */
export const separatePadChecks = (
  pad: SeparatePad,
  actions: readonly PadAction[],
  ground: PadGround,
): readonly Check[] => {
  const resultant = padResultant(pad, actions);
  const pressure = groundPressure(pad.outline, resultant.N, resultant.at);
  const tips = overturning(pad, actions, resultant, ground.overturningFactor);
  const slides = sliding(pad.outline, resultant, isUnable(pressure) ? 0 : pressure.share, ground);
  if (isUnable(pressure)) return [{ ...tips, governs: pressure.reason }, slides];
  return [tips, bearing(pad.outline, resultant, pressure, ground.bearing), slides];
};

/**
 * About each side of the outline in turn: what tips the pad over that side (the columns' moments and shears together,
 * and any column that stands outside it) against what holds it down (weights inside).
 */
const overturning = (
  pad: SeparatePad,
  actions: readonly PadAction[],
  { weight, N, at }: PadResultant,
  factor: number,
): Check => {
  const ring = signedArea(pad.outline) < 0 ? pad.outline.toReversed() : pad.outline;
  const My = actions.reduce((s, { reaction: r }) => s + r.My + r.Vx * pad.thickness, 0);
  const Mx = actions.reduce((s, { reaction: r }) => s + r.Mx + r.Vy * pad.thickness, 0);
  const about = sides(ring).map((side) => {
    const length = Math.hypot(side.b.x - side.a.x, side.b.y - side.a.y);
    const moment = (My * (side.b.y - side.a.y) - Mx * (side.b.x - side.a.x)) / length; // over the outward normal
    const outside = actions.reduce((s, { at: p, reaction: r }) => s + Math.max(0, -r.P * distanceToLine(p, side)), 0);
    const tipping = Math.max(0, moment) + outside;
    return { tipping, holding: N * distanceToLine(at, side) + tipping };
  });
  const worst = about.reduce((w, one) => (use(one, factor) > use(w, factor) ? one : w));
  return {
    id: "pad-overturning",
    title: "Overturning of the pad",
    demand: {
      symbol: "SF × Mo",
      words: `overturning moment about the worst side, times ${shown(factor)}`,
      value: factor * worst.tipping,
      unit: "N·mm",
      clause: "factor: common practice, no source",
      worked: `${shown(factor)} × ${shown(worst.tipping)}`,
      from: [momentTerm("Mo", "overturning moment", worst.tipping)],
    },
    capacity: {
      ...momentTerm("Mr", "moment of the weights that hold it down", worst.holding),
      from: [forceTerm("W", "weight of the pad", weight), forceTerm("N", "all weights", N)],
    },
    ratio: use(worst, factor),
    clause: STATICS,
  };
};

const use = ({ tipping, holding }: { tipping: number; holding: number }, factor: number): number =>
  tipping === 0 ? 0 : holding > 0 ? (factor * tipping) / holding : Number.POSITIVE_INFINITY;

const bearing = (outline: Polygon, { N, at }: PadResultant, found: GroundPressure, allowable: number): Check => ({
  id: "pad-ground-pressure",
  title: "Ground pressure under the pad",
  demand: {
    symbol: "qmax",
    words: "largest ground pressure, pad's own weight included",
    value: found.largest,
    unit: "MPa",
    formula: "q = max(0, q0 + qx x + qy y), ∫q = N at (x̄, ȳ)",
    from: [
      forceTerm("N", "columns and pad", N),
      { symbol: "x̄", words: "resultant from the left wall", value: at.x, unit: "mm" },
      { symbol: "ȳ", words: "resultant from the back wall", value: at.y, unit: "mm" },
      {
        symbol: "r",
        words: "resultant to the nearest side of the pad",
        value: distanceToBoundary(at, outline),
        unit: "mm",
      },
      { symbol: "Ac/A", words: "share of the pad in contact", value: found.share, unit: "" },
    ],
  },
  capacity: { symbol: "qa", words: "allowable ground pressure", value: allowable, unit: "MPa" },
  ratio: allowable > 0 ? found.largest / allowable : Number.POSITIVE_INFINITY,
  clause: STATICS,
});

/** Friction μN; cohesion over the area in contact, at most half the weight (IBC 2012, 1806.3.2, from memory). */
const sliding = (
  outline: Polygon,
  { N, Vx, Vy }: PadResultant,
  share: number,
  { sliding: soil, slidingFactor }: PadGround,
): Check => {
  const V = Math.hypot(Vx, Vy);
  const contact = share * polygonArea(outline);
  const held =
    soil.kind === "friction"
      ? soil.coefficient * Math.max(0, N)
      : Math.min(soil.pressure * contact, Math.max(0, N) / 2);
  return {
    id: "pad-sliding",
    title: "Sliding of the pad",
    demand: {
      symbol: "SF × V",
      words: `horizontal force, times ${shown(slidingFactor)}`,
      value: slidingFactor * V,
      unit: "N",
      worked: `${shown(slidingFactor)} × ${shown(V)}`,
    },
    capacity: {
      ...forceTerm("H", "resistance of the ground under the pad", held),
      formula: soil.kind === "friction" ? "μ N" : "c Ac ≤ N/2",
      clause: "IBC 2012, Table 1806.2 and 1806.3.2",
    },
    ratio: V === 0 ? 0 : held > 0 ? (slidingFactor * V) / held : Number.POSITIVE_INFINITY,
    clause: STATICS,
  };
};

const forceTerm = (symbol: string, words: string, value: number): Term => ({ symbol, words, value, unit: "N" });
const momentTerm = (symbol: string, words: string, value: number): Term => ({ symbol, words, value, unit: "N·mm" });
