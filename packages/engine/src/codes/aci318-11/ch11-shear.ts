/** Clauses of the 2011 edition that differ from 2019: no size effect factor; one-way shear without the steel ratio. */

/**
 * `Vc`: one-way shear strength of concrete.
 *
 * @clause ACI 318-11, 11.2.1.1 (Eq. 11-3)
 * @param fc - psi
 * @param bw - width, in
 * @param d - effective depth, in
 * @param lambda - lightweight factor
 * @returns Vc, lb
 */
export const oneWayShear = (fc: number, bw: number, d: number, lambda = 1): number =>
  2 * lambda * Math.sqrt(fc) * bw * d;

/**
 * `Vc`: two-way shear strength of concrete, the least of three.
 *
 * @clause ACI 318-11, 11.11.2.1 (Eq. 11-31, 11-32, 11-33)
 * @param fc - psi
 * @param section - perimeter and effective depth, in; sides ratio of the column; αs 40 interior, 30 edge, 20 corner
 * @param lambda - lightweight factor
 * @returns Vc, lb
 */
export const twoWayShear = (
  fc: number,
  { bo, d, beta, alphaS }: { readonly bo: number; readonly d: number; readonly beta: number; readonly alphaS: number },
  lambda = 1,
): number => Math.min(4, 2 + 4 / beta, 2 + (alphaS * d) / bo) * lambda * Math.sqrt(fc) * bo * d;
