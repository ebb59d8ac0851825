/** Drying shrinkage. Strains positive for shortening; V/S = volume over drying surface, mm; ages in days; humidity 0 to 1. */

/** What the shrinkage of ACI 209R depends on besides time. */
export interface ShrinkageMix {
  /** relative humidity around the slab, 0.4 to 1 */
  readonly humidity: number;
  /** volume over drying surface, mm: the thickness for a slab on ground drying from the top only */
  readonly volumeToSurface: number;
  /** slump, mm */
  readonly slump: number;
  /** fine aggregate over all aggregate, percent by weight */
  readonly fines: number;
  /** cement, kg/m³ */
  readonly cement: number;
  /** air, percent by volume */
  readonly air: number;
  /** days of moist curing, 1 to 90 */
  readonly cured: number;
}

/** The seven factors on 780 × 10⁻⁶, as printed in SI. @clause ACI 209.2R-08, Appendix A (ACI 209R-92, 2.5) */
export const shrinkageFactorsAci209 = (mix: ShrinkageMix): Readonly<Record<keyof ShrinkageMix, number>> => ({
  cured: 1.202 - 0.2337 * Math.log10(Math.min(90, Math.max(1, mix.cured))),
  humidity: mix.humidity <= 0.8 ? 1.4 - 1.02 * mix.humidity : Math.max(0, 3 - 3 * mix.humidity),
  volumeToSurface: 1.2 * Math.exp(-0.00472 * mix.volumeToSurface),
  slump: 0.89 + 0.00161 * mix.slump,
  fines: mix.fines <= 50 ? 0.3 + 0.014 * mix.fines : 0.9 + 0.002 * mix.fines,
  cement: 0.75 + 0.00061 * mix.cement,
  air: Math.max(1, 0.95 + 0.008 * mix.air),
});

/** `εshu`: ultimate shrinkage strain. @clause ACI 209.2R-08, Eq. A-3 */
export const ultimateShrinkageAci209 = (mix: ShrinkageMix): number =>
  Object.values(shrinkageFactorsAci209(mix)).reduce((product, factor) => product * factor, 780e-6);

/**
 * Part of the ultimate shrinkage at `age`: (t - tc)/(f + t - tc), f 35 moist, 55 steam cured.
 * @clause ACI 209R-92, Eq. 2-9 and 2-10
 */
export const shrinkageTimeAci209 = (age: number, cured: number, f: 35 | 55 = 35): number =>
  age <= cured ? 0 : (age - cured) / (f + age - cured);

/** `βs`: √{Δt/(350 [(V/S)/50]² + Δt)}. @clause CEB-FIP Model Code 1990, as in ACI 209.2R-08, Eq. A-57 */
export const shrinkageTimeMc90 = (age: number, cured: number, volumeToSurface: number): number =>
  age <= cured ? 0 : Math.sqrt((age - cured) / (350 * (volumeToSurface / 50) ** 2 + (age - cured)));

/**
 * `εcso`: notional shrinkage, [160 + 10 βsc (9 - fcm/10)] × 10⁻⁶ × 1.55 [1 - RH³], below 99 % humidity.
 * @clause CEB-FIP Model Code 1990, Eq. 2.1-76 and following
 * @param fcm - mean 28-day strength, MPa
 */
export const notionalShrinkageMc90 = (fcm: number, humidity: number, cement: "slow" | "normal" | "rapid"): number =>
  shrinkageStrengthMc90(fcm, cement) * -shrinkageHumidityMc90(humidity);

/** `εs(fcm)`. @clause CEB-FIP Model Code 1990, Eq. 2.1-77 */
export const shrinkageStrengthMc90 = (fcm: number, cement: "slow" | "normal" | "rapid"): number =>
  (160 + 10 * { slow: 4, normal: 5, rapid: 8 }[cement] * (9 - fcm / 10)) * 1e-6;

/** `βRH`, negative for drying. @clause CEB-FIP Model Code 1990, Eq. 2.1-78 */
export const shrinkageHumidityMc90 = (humidity: number): number =>
  humidity >= 0.99 ? 0.25 : -1.55 * (1 - humidity ** 3);
