/** The closed forms for one slab and one patch, unfolded: what stands beside the plate solver. */
import type { Term } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";
import { cornerDeflection, cornerStress } from "./corner.ts";
import { edgeDeflection, edgeStress } from "./edge.ts";
import { specialRadius } from "./equivalent-radius.ts";
import { edgeExact } from "./exact-edge.ts";
import { interiorDeflection, interiorStress } from "./interior.ts";
import { type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";

/** Stress and deflection at one place. */
export interface PlaceTerms {
  readonly stress: Term;
  readonly deflection: Term;
}

export interface ClosedForms {
  readonly interior: PlaceTerms;
  /** the circle touching the edge; exact half-plate beyond a = 0.25 l, Westergaard 1948 below */
  readonly edge: PlaceTerms;
  readonly corner: PlaceTerms;
}

/** Beyond this share of l the 1948 deflection formulas drift by more than 1.3 %. */
const WIDE = 0.25;

/** @param P - N @param a - radius of the loaded circle, mm */
export const closedForms = (slab: SlabOnGround, P: number, a: number): ClosedForms => {
  const l = stiffnessRadius(slab);
  const inputs = inputTerms(slab, P, a, l);
  const stress = (words: string, clause: string, formula: string, value: number): Term => ({
    symbol: "σ",
    words,
    value,
    unit: "MPa",
    clause,
    formula,
    from: inputs,
  });
  const deflection = (words: string, clause: string, formula: string, value: number): Term => ({
    ...stress(words, clause, formula, value),
    symbol: "δ",
    unit: "mm",
  });
  const exact = a / l > WIDE ? edgeExact(slab, P, a, "circle") : undefined;
  const edgeSource = exact ? "half-plate by Fourier integral (our derivation)" : "Westergaard 1948";
  return {
    interior: {
      stress: stress(
        "bending stress under a patch far from edges",
        "Westergaard 1926, special theory",
        "3(1+ν)P/2πh² [ln(2l/b) + ½ − γ]",
        interiorStress(slab, P, a),
      ),
      deflection: deflection(
        "deflection under a patch far from edges",
        "Westergaard 1939",
        "P/8kl² {1 + (1/2π)[ln(a/2l) + γ − 5/4](a/l)²}",
        interiorDeflection(slab, P, a),
      ),
    },
    edge: {
      stress: stress(
        "bending stress along a free edge under a patch that touches it",
        edgeSource,
        exact ? "6M/h²" : "3(1+ν)P/π(3+ν)h² [ln(Eh³/100ka⁴) + 1.84 − 4ν/3 + (1−ν)/2 + 1.18(1+2ν)a/l]",
        exact ? exact.stress : edgeStress(slab, P, a, "1948-circle"),
      ),
      deflection: deflection(
        "deflection of a free edge under a patch that touches it",
        edgeSource,
        exact ? "∫∫ w dA" : "√(2+1.2ν) P/√(Eh³k) [1 − (0.76+0.4ν)a/l]",
        exact ? exact.deflection : edgeDeflection(slab, P, a, "1948-circle"),
      ),
    },
    corner: {
      stress: stress(
        "bending stress at the top, across the bisector of a free corner",
        "Ioannides, Thompson & Barenberg 1985",
        "3P/h² [1 − (1.772a/l)^0.72]",
        cornerStress(slab, P, a),
      ),
      deflection: deflection(
        "deflection of a free corner",
        "Ioannides, Thompson & Barenberg 1985",
        "P/kl² (1.205 − 0.69 · 1.772a/l)",
        cornerDeflection(slab, P, a),
      ),
    },
  };
};

const inputTerms = (slab: SlabOnGround, P: number, a: number, l: number): readonly Term[] => [
  { symbol: "P", words: "load", value: P, unit: "N" },
  { symbol: "a", words: "radius of the loaded circle", value: a, unit: "mm" },
  { symbol: "h", words: "slab thickness", value: slab.h, unit: "mm" },
  {
    symbol: "l",
    words: "radius of relative stiffness",
    value: l,
    unit: "mm",
    clause: "Westergaard 1926",
    formula: "(E h³ / 12(1−ν²)k)^¼",
    worked: `(${shown(slab.E)} × ${shown(slab.h)}³ / (12 × (1 − ${shown(slab.nu)}²) × ${shown(slab.k)}))^0.25`,
    from: [
      { symbol: "E", words: "modulus of elasticity of the concrete", value: slab.E, unit: "MPa" },
      { symbol: "ν", words: "Poisson's ratio", value: slab.nu, unit: "" },
      { symbol: "k", words: "modulus of subgrade reaction", value: slab.k, unit: "N/mm³" },
    ],
  },
  {
    symbol: "b",
    words: "radius that allows for the slab's depth (interior stress only)",
    value: specialRadius(a, slab.h),
    unit: "mm",
    clause: "Westergaard 1926",
    formula: "√(1.6a² + h²) − 0.675h if a < 1.724h, else a",
  },
];
