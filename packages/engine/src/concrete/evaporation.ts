/**
 * Water leaving a fresh surface, kg/m²/h. Temperatures in °C, humidity as a fraction, wind in m/s at about 0.5 m above
 * the slab; air temperature and humidity 1.2 to 1.8 m up, in the shade, upwind.
 */
export interface PourAir {
  readonly concrete: number;
  readonly air: number;
  /** relative humidity, 0 to 1 */
  readonly humidity: number;
  /** m/s */
  readonly wind: number;
}

const perMph = 1 / 0.44704;
const customary = 0.45359237 / 0.09290304; // lb/ft² in kg/m²

/** Saturated vapour pressure of water, kPa: 0.61 exp{17.3 T/(237.3 + T)}. Uno 1998 [uno-1998], after Dilley 1968. */
export const vapourPressure = (temperature: number): number =>
  0.61 * Math.exp((17.3 * temperature) / (237.3 + temperature));

/**
 * Menzel 1954, the formula behind the chart of ACI 305R: W = 0.44 (e0 - r ea)(0.253 + 0.096 V), in lb/ft²/h with vapour
 * pressures in psi and V in mph [menzel]. Never below 0 (air warmer than the concrete may wet it).
 */
export const evaporationMenzel = ({ concrete, air, humidity, wind }: PourAir): number => {
  const psi = (vapourPressure(concrete) - humidity * vapourPressure(air)) / 6.894757293168361;
  return Math.max(0, 0.44 * psi * (0.253 + 0.096 * wind * perMph)) * customary;
};

/** Uno 1998, metric form: E = 5 ([Tc + 18]^2.5 - r [Ta + 18]^2.5)(V + 4) × 10⁻⁶, V in km/h [uno-1998]. */
export const evaporationUnoMetric = ({ concrete, air, humidity, wind }: PourAir): number =>
  Math.max(0, 5e-6 * ((concrete + 18) ** 2.5 - humidity * (air + 18) ** 2.5) * (wind * 3.6 + 4));

/** Uno 1998, inch-pound form: E = (Tc^2.5 - r Ta^2.5)(1 + 0.4 V) × 10⁻⁶ lb/ft²/h, °F, mph [uno-1998]; 4 to 5 % from the metric one. */
export const evaporationUnoCustomary = ({ concrete, air, humidity, wind }: PourAir): number => {
  const [Tc, Ta] = [concrete * 1.8 + 32, air * 1.8 + 32];
  return Math.max(0, 1e-6 * (Tc ** 2.5 - humidity * Ta ** 2.5) * (1 + 0.4 * wind * perMph)) * customary;
};

/** Act from 1.0 kg/m²/h (0.2 lb/ft²/h), take care from 0.5. UFGS 03 30 00, FHWA-HRT-05-038 [fhwa-hrt-05-038]. */
export const evaporationLimits = { care: 0.5, act: 1 } as const;

/** What the rate asks for: nothing special, care, or wind breaks, fog and covers before the pour. */
export type Drying = "slow" | "care" | "act";

/**
 * The rate by the three formulas, with the span that ±40 % of measured against charted evaporation leaves (Hover 2020
 * [hover-2020]), and what it asks for: by the upper end, since a mix that bleeds little cracks below the limits too.
 */
export const judgeEvaporation = (
  pour: PourAir,
): { readonly rate: number; readonly low: number; readonly high: number; readonly drying: Drying } => {
  const rate = Math.max(evaporationMenzel(pour), evaporationUnoMetric(pour), evaporationUnoCustomary(pour));
  const drying = rate >= evaporationLimits.act ? "act" : 1.4 * rate >= evaporationLimits.care ? "care" : "slow";
  return { rate, low: 0.6 * rate, high: 1.4 * rate, drying };
};
