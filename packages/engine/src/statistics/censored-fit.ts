import { type Unable, unable } from "../quantities/index.ts";
import { addCurves, type Curve, priorCurve, readingCurve, type Span } from "./censored-likelihood.ts";
import { type Reading, spanOf } from "./reading.ts";
import { noSpreadPrior, type SpreadPrior } from "./spread-prior.ts";

/** A normal population fitted to readings some of which only bound their value; in the unit of the readings. */
export interface CensoredFit {
  readonly mean: number;
  /** on n - 1 degrees, so that it is the sample's own spread when every reading is exact and no prior is used */
  readonly spread: number;
  /** full readings that the set is worth: each exact one 1, each open one what it tells of the mean (Fisher) */
  readonly worth: number;
  readonly prior: SpreadPrior;
  readonly spans: readonly Span[];
  /** the maximum of the log-likelihood and where it is, for bounds */
  readonly peak: { readonly g: number; readonly h: number; readonly value: number };
}

/**
 * Maximum likelihood fit of a normal population to exact, left-, right- and interval-censored readings.
 *
 * Method: Newton with step halving in (mean/spread, 1/spread), where the log-likelihood is concave [burridge].
 * Fails: readings that show no spread (all can share one value) without a prior; only lower, or only upper bounds.
 */
export const fitCensored = (readings: readonly Reading[], prior: SpreadPrior = noSpreadPrior): CensoredFit | Unable => {
  const spans = readings.map(spanOf);
  const below = Math.max(...spans.map((s) => s.low));
  const above = Math.min(...spans.map((s) => s.high));
  if (above === Number.POSITIVE_INFINITY)
    return unable("thickness statistics", "every reading says only at least; none shows where the concrete ends");
  if (below === Number.NEGATIVE_INFINITY)
    return unable("thickness statistics", "every reading says only at most; none shows how much there is");
  if (prior.freedom === 0 && below <= above)
    return unable("thickness statistics", "the readings show no spread: one value would satisfy them all");
  const curve = (g: number, h: number): Curve =>
    addCurves([priorCurve(prior, h), ...spans.map((span) => readingCurve(span, g, h))]);
  const scale = Math.max(Math.abs(below - above), prior.spread, 1e-9 * (Math.abs(below) + Math.abs(above)));
  const peak = climb(curve, (below + above) / 2 / scale, 1 / scale);
  if (peak === undefined)
    return unable("thickness statistics", "the open readings contradict each other too much to fit a spread");
  const worth = spans.reduce((sum, span) => sum - readingCurve(span, peak.g, peak.h).dgg, 0);
  const weight = worth + prior.freedom;
  if (weight <= 1) return unable("thickness statistics", "the readings are worth no more than one full reading");
  return { mean: peak.g / peak.h, spread: Math.sqrt(weight / (weight - 1)) / peak.h, worth, prior, spans, peak };
};

const climb = (
  curve: (g: number, h: number) => Curve,
  g0: number,
  h0: number,
): { g: number; h: number; value: number } | undefined => {
  let [g, h] = [g0, h0];
  let here = curve(g, h);
  for (let step = 0; step < 100; step++) {
    const det = here.dgg * here.dhh - here.dgh ** 2;
    if (!(det > 0)) return undefined;
    const dg = (here.dgh * here.dh - here.dhh * here.dg) / det;
    const dh = (here.dgh * here.dg - here.dgg * here.dh) / det;
    const gain = here.dg * dg + here.dh * dh;
    if (gain < 1e-13) return { g: g + dg, h: h + dh, value: here.value + gain / 2 };
    let size = 1;
    while (h + size * dh <= 0) size /= 2;
    let next = curve(g + size * dg, h + size * dh);
    while (next.value < here.value && size > 1e-12) {
      size /= 2;
      next = curve(g + size * dg, h + size * dh);
    }
    if (size <= 1e-12) return { g, h, value: here.value };
    [g, h, here] = [g + size * dg, h + size * dh, next];
  }
  return undefined;
};
