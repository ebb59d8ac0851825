/**
 * A strip under both columns, bent by their loads and inward couples: a free beam on springs (Hetenyi 1946). Its own
 * weight presses evenly and bends nothing.
 */
import { shown, type Term, type Unable, unable } from "../quantities/index.ts";
import { type BeamOnGround, beamLambda, finiteBeam } from "../slabs/index.ts";

/** A strip and its ground, mm and N. */
export interface Strip {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** modulus of elasticity, MPa */
  readonly E: number;
  /** modulus of subgrade reaction, N/mm³ */
  readonly k: number;
  /** N/mm³ */
  readonly unitWeight: number;
}

/** A column on the strip: distance from its left end, load N, couple N·mm pressing the right side when positive. */
export interface StripLoad {
  readonly at: number;
  readonly P: number;
  readonly M: number;
}

/** The worst of the whole length, each over the full width. */
export interface StripBending {
  readonly sagging: Term;
  readonly hogging: Term;
  readonly shear: Term;
  /** MPa, own weight included */
  readonly groundPressure: Term;
}

const STATIONS = 400;

/** Fails: where the strip would lift off the ground, since the springs would pull there. */
export const stripBending = (strip: Strip, loads: readonly StripLoad[]): StripBending | Unable => {
  const beam: BeamOnGround = { EI: (strip.E * strip.width * strip.thickness ** 3) / 12, K: strip.k * strip.width };
  const state = finiteBeam(
    beam,
    strip.length,
    loads.map(({ at, P, M }) => ({ at, force: P, couple: M })),
  );
  const even = Array.from({ length: STATIONS + 1 }, (_, i) => (i * strip.length) / STATIONS);
  const beside = loads.flatMap(({ at }) => [Math.max(0, at - strip.length * 1e-9), at]);
  const states = [...even, ...beside].map((x) => ({ x, ...state(x) }));
  const own = strip.unitWeight * strip.thickness;
  const pick = (of: (s: (typeof states)[number]) => number) => states.reduce((w, s) => (of(s) > of(w) ? s : w));
  const lowest = pick((s) => -s.y);
  if (strip.k * lowest.y + own < 0) {
    return unable(
      "strip",
      "The strip would lift off the ground; its bending needs the plate on ground that only pushes.",
    );
  }
  const [sag, hog, cut, deep] = [pick((s) => s.M), pick((s) => -s.M), pick((s) => Math.abs(s.V)), pick((s) => s.y)];
  const lambda = beamLambda(beam);
  const term = (symbol: string, words: string, value: number, unit: "N·mm" | "N" | "MPa", x: number): Term => ({
    symbol,
    words: `${words}, ${shown(x)} mm from the left end`,
    value,
    unit,
    clause: "Hetenyi 1946, ch. III",
    worked: `λ = (${shown(beam.K)} / 4 × ${shown(beam.EI)})^¼ = ${shown(lambda)} 1/mm, λL = ${shown(lambda * strip.length)}`,
  });
  return {
    sagging: term("M+", "largest sagging moment of the strip", Math.max(0, sag.M), "N·mm", sag.x),
    hogging: term("M−", "largest hogging moment of the strip", Math.max(0, -hog.M), "N·mm", hog.x),
    shear: term("V", "largest shear of the strip", Math.abs(cut.V), "N", cut.x),
    groundPressure: term("q", "largest ground pressure under the strip", strip.k * deep.y + own, "MPa", deep.x),
  };
};
