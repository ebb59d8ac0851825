/**
 * What earlier surveys say of the spread, as if a spread `spread` had been found with `freedom` degrees of freedom.
 * freedom 0 says nothing.
 */
export interface SpreadPrior {
  readonly spread: number;
  readonly freedom: number;
}

export const noSpreadPrior: SpreadPrior = { spread: 0, freedom: 0 };

/**
 * Thickness of slabs on ground, mm. Seven projects with more than 2,000 cores had standard deviations of 0.47 to 0.90 in
 * (Gustaferro 1989, in ASCC Position Statement 9 [gustaferro]). Middle: their geometric mean, 0.65 in. Weight: the extremes
 * of seven normal values lie ±1.352 deviations out, so ln spread has a deviation of ln(0.90/0.65)/1.352 = 0.24, which is
 * that of a spread found with 1/(2 × 0.24²) = 8.6 degrees of freedom.
 */
export const slabSurveys: SpreadPrior = { spread: Math.sqrt(0.47 * 0.9) * 25.4, freedom: 8.6 };
