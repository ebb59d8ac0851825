/**
 * Tension and shear together: what is asked of the anchors against what is allowed.
 *
 * @clause ACI 318-19, 17.8.1, 17.8.2, 17.8.3
 * @param tension - Nua / φNn of the governing tension mode
 * @param shear - Vua / φVn of the governing shear mode
 * @returns asked and allowed: where one ratio is at most 0.2 the other alone against 1; else their sum against 1.2
 */
export const interaction = (tension: number, shear: number): { readonly asked: number; readonly allowed: number } => {
  if (shear <= 0.2 || tension <= 0.2) return { asked: Math.max(tension, shear), allowed: 1 };
  return { asked: tension + shear, allowed: 1.2 };
};

/**
 * The alternative of the commentary: powers of 5/3.
 *
 * @clause ACI 318-19, R17.8
 * @param tension - Nua / φNn
 * @param shear - Vua / φVn
 * @returns the sum of the powers, at most 1 where the anchors hold
 */
export const interactionByPowers = (tension: number, shear: number): number => tension ** (5 / 3) + shear ** (5 / 3);
