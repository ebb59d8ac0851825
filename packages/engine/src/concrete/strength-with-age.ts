/** Compressive strength against age at standard temperature. Ages in days, strengths in MPa. */

/** Portland cement by ASTM C150: I general use, III high early strength. */
export type Cement = "type-I" | "type-III";

/** How the concrete was cured: kept moist, or by steam. */
export type Cure = "moist" | "steam";

/** Strength development class of a cement in EN 1992-1-1: rapid, normal, slow. */
export type CementClass = "R" | "N" | "S";

const aci209: Record<Cement, Record<Cure, { readonly a: number; readonly b: number }>> = {
  "type-I": { moist: { a: 4, b: 0.85 }, steam: { a: 1, b: 0.95 } },
  "type-III": { moist: { a: 2.3, b: 0.92 }, steam: { a: 0.7, b: 0.98 } },
};

/** The constants a (days) and b of the hyperbola. @clause ACI 209R-92, Table 2.2.1 */
export const aci209Constants = (cement: Cement, cure: Cure): { readonly a: number; readonly b: number } =>
  aci209[cement][cure];

/**
 * `f't/f'28` = t/(a + b t): strength at `age` over the 28-day strength. At exactly 28 days the formula gives 1.007
 * (type I, moist) where the table prints 1.0.
 * @clause ACI 209R-92, Eq. 2-1
 */
export const strengthRatioAci209 = (age: number, cement: Cement, cure: Cure): number => {
  const { a, b } = aci209[cement][cure];
  return age <= 0 ? 0 : age === Number.POSITIVE_INFINITY ? 1 / b : age / (a + b * age);
};

/** The age at which the ratio is reached; Infinity from 1/b up. @clause ACI 209R-92, Eq. 2-1, solved for t */
export const ageForRatioAci209 = (ratio: number, cement: Cement, cure: Cure): number => {
  const { a, b } = aci209[cement][cure];
  return ratio >= 1 / b ? Number.POSITIVE_INFINITY : (a * ratio) / (1 - b * ratio);
};

const en1992S: Record<CementClass, number> = { R: 0.2, N: 0.25, S: 0.38 };

/**
 * `βcc` = exp{s[1 - √(28/t)]}: mean strength at `age` over the mean strength at 28 days, moist at 20 °C.
 * @clause EN 1992-1-1:2004, 3.1.2 (6), Eq. 3.2
 */
export const strengthRatioEn1992 = (age: number, cement: CementClass): number =>
  age <= 0 ? 0 : Math.exp(en1992S[cement] * (1 - Math.sqrt(28 / age)));

/** The age at which βcc is reached; Infinity from exp(s) up. @clause EN 1992-1-1:2004, Eq. 3.2, solved for t */
export const ageForRatioEn1992 = (ratio: number, cement: CementClass): number => {
  const root = 1 - Math.log(ratio) / en1992S[cement];
  return root <= 0 ? Number.POSITIVE_INFINITY : 28 / root ** 2;
};

/**
 * `fck(t)`: characteristic cylinder strength at `age`, MPa: βcc fcm - 8 for 3 <= t < 28 days, fck from then on;
 * below 3 days the standard asks for tests, and 0 is returned.
 * @clause EN 1992-1-1:2004, 3.1.2 (5)
 */
export const characteristicStrengthEn1992 = (fck: number, age: number, cement: CementClass): number => {
  if (age < 3) return 0;
  return age >= 28 ? fck : Math.max(0, strengthRatioEn1992(age, cement) * (fck + 8) - 8);
};

/** How strength grows, as a choice that can be handed on. */
export type Gain =
  | { readonly rule: "aci-209"; readonly cement: Cement; readonly cure: Cure }
  | { readonly rule: "en-1992"; readonly cement: CementClass };

/** Strength at an age at standard temperature over 28-day strength, by either rule. */
export const strengthRatio = (age: number, gain: Gain): number =>
  gain.rule === "aci-209" ? strengthRatioAci209(age, gain.cement, gain.cure) : strengthRatioEn1992(age, gain.cement);

/** Age in days at standard temperature at which a part of the 28-day strength is reached; Infinity when never. */
export const ageForRatio = (ratio: number, gain: Gain): number =>
  ratio <= 0
    ? 0
    : gain.rule === "aci-209"
      ? ageForRatioAci209(ratio, gain.cement, gain.cure)
      : ageForRatioEn1992(ratio, gain.cement);
