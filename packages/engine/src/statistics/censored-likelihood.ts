import { normalCdf, normalDensity } from "../numerics/index.ts";

export interface Span {
  readonly low: number;
  readonly high: number;
}

/** Value, gradient and second derivatives of a log-likelihood in (g, h) = (mean/spread, 1/spread). */
export interface Curve {
  readonly value: number;
  readonly dg: number;
  readonly dh: number;
  readonly dgg: number;
  readonly dgh: number;
  readonly dhh: number;
}

/**
 * Log-likelihood of one reading of a normal population in g = μ/σ and h = 1/σ, where it is concave
 * (Olsen 1978, Burridge 1981 [burridge]).
 */
export const readingCurve = ({ low, high }: Span, g: number, h: number): Curve => {
  if (low === high) {
    const e = h * low - g;
    return {
      value: Math.log(h) - 0.5 * e * e,
      dg: e,
      dh: 1 / h - e * low,
      dgg: -1,
      dgh: low,
      dhh: -1 / (h * h) - low * low,
    };
  }
  const [a, b] = [h * low - g, h * high - g];
  const inside = a > 0 ? normalCdf(-a) - normalCdf(-b) : normalCdf(b) - normalCdf(a);
  const probability = Math.max(inside, 1e-300);
  const [fa, fb] = [density(a) / probability, density(b) / probability];
  const [xa, xb] = [finite(low), finite(high)];
  const dg = fa - fb;
  const dh = fb * xb - fa * xa;
  const [ga, gb] = [fa * finite(a), fb * finite(b)];
  return {
    value: Math.log(probability),
    dg,
    dh,
    dgg: ga - gb - dg * dg,
    dgh: gb * xb - ga * xa - dg * dh,
    dhh: ga * xa * xa - gb * xb * xb - dh * dh,
  };
};

const density = (z: number): number => (Number.isFinite(z) ? normalDensity(z) : 0);
const finite = (x: number): number => (Number.isFinite(x) ? x : 0);

/** The prior on the spread as a log-likelihood: freedom × (ln h - s0² h²/2). */
export const priorCurve = (prior: { readonly spread: number; readonly freedom: number }, h: number): Curve => ({
  value: prior.freedom * (Math.log(h) - 0.5 * prior.spread ** 2 * h * h),
  dg: 0,
  dh: prior.freedom * (1 / h - prior.spread ** 2 * h),
  dgg: 0,
  dgh: 0,
  dhh: prior.freedom * (-1 / (h * h) - prior.spread ** 2),
});

export const addCurves = (curves: readonly Curve[]): Curve =>
  curves.reduce((s, c) => ({
    value: s.value + c.value,
    dg: s.dg + c.dg,
    dh: s.dh + c.dh,
    dgg: s.dgg + c.dgg,
    dgh: s.dgh + c.dgh,
    dhh: s.dhh + c.dhh,
  }));
