import { gaussRule } from "../numerics/index.ts";
import { type Axis, spanLength, tabulate } from "./axis.ts";

/** Four Gauss points integrate products of two cubics exactly. */
export const spanRule = gaussRule(4);

/** 4 × 4 integrals of every span, function a against function b at 16 s + 4 a + b. */
export interface SpanIntegrals {
  /** ∫ N N */
  readonly mass: Float64Array;
  /** ∫ N′ N′ */
  readonly slope: Float64Array;
  /** ∫ N″ N″ */
  readonly curvature: Float64Array;
  /** ∫ N″ N, the differentiated function first */
  readonly mixed: Float64Array;
}

export const spanIntegrals = (axis: Axis): SpanIntegrals => {
  const [n0, n1, n2] = [
    tabulate(axis, spanRule.points, 0),
    tabulate(axis, spanRule.points, 1),
    tabulate(axis, spanRule.points, 2),
  ];
  const integrate = (left: Float64Array, right: Float64Array): Float64Array => {
    const out = new Float64Array(16 * axis.spans);
    for (let s = 0; s < axis.spans; s++)
      for (let g = 0; g < 4; g++) {
        const weight = spanRule.weights[g]! * spanLength(axis, s);
        const at = (4 * s + g) * 4;
        for (let a = 0; a < 4; a++)
          for (let b = 0; b < 4; b++) out[16 * s + 4 * a + b]! += weight * left[at + a]! * right[at + b]!;
      }
    return out;
  };
  return { mass: integrate(n0, n0), slope: integrate(n1, n1), curvature: integrate(n2, n2), mixed: integrate(n2, n0) };
};
