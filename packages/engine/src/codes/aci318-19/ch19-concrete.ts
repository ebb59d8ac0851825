/**
 * `Ec`: modulus of elasticity of normal-weight concrete.
 *
 * @clause ACI 318-19, 19.2.2.1 (b)
 * @param fc - psi
 * @returns Ec, psi
 */
export const elasticModulus = (fc: number): number => 57_000 * Math.sqrt(fc);

/**
 * `Ec`: modulus of elasticity from unit weight.
 *
 * @clause ACI 318-19, 19.2.2.1 (a)
 * @param fc - psi
 * @param wc - unit weight, pcf
 * @returns Ec, psi
 * Valid for 90 ≤ wc ≤ 160.
 */
export const elasticModulusByWeight = (fc: number, wc: number): number => 33 * wc ** 1.5 * Math.sqrt(fc);

/**
 * `fr`: modulus of rupture.
 *
 * @clause ACI 318-19, 19.2.3.1
 * @param fc - psi
 * @param lambda - lightweight factor, 1 for normal weight
 * @returns fr, psi
 */
export const modulusOfRupture = (fc: number, lambda = 1): number => 7.5 * lambda * Math.sqrt(fc);
