/**
 * `γMc`: partial factor of concrete cone, edge, splitting and pull-out failure.
 *
 * @clause EN 1992-4:2018, Table 4.1 and 4.4.3
 * @param installation - sensitivity to installation: γinst 1.0 high, 1.2 normal, 1.4 low safety
 * @returns 1.5 γinst
 */
export const partialFactorConcrete = (installation: "high" | "normal" | "low"): number =>
  1.5 * { high: 1, normal: 1.2, low: 1.4 }[installation];

/**
 * `γMs`: partial factor of steel failure in tension.
 *
 * @clause EN 1992-4:2018, Table 4.1
 * @param fyk - MPa
 * @param fuk - MPa
 * @returns 1.2/(fyk/fuk), at least 1.4
 */
export const partialFactorSteelTension = (fyk: number, fuk: number): number => Math.max(1.4, 1.2 / (fyk / fuk));

/**
 * `γMs`: partial factor of steel failure in shear.
 *
 * @clause EN 1992-4:2018, Table 4.1
 * @param fyk - MPa
 * @param fuk - MPa
 * @returns 1/(fyk/fuk), at least 1.25, for fuk ≤ 800 MPa and fyk/fuk ≤ 0.8; else 1.5
 */
export const partialFactorSteelShear = (fyk: number, fuk: number): number =>
  fuk <= 800 && fyk / fuk <= 0.8 ? Math.max(1.25, 1 / (fyk / fuk)) : 1.5;
