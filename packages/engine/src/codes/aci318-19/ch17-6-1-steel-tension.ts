/**
 * `futa`: steel strength that may be counted.
 *
 * @clause ACI 318-19, 17.6.1.2
 * @param futa - specified tensile strength of the anchor steel, psi
 * @param fya - specified yield strength, psi, where known
 * @returns min(futa, 1.9 fya, 125,000), psi
 */
export const countedSteelStrength = (futa: number, fya?: number): number =>
  Math.min(futa, 125_000, fya === undefined ? Number.POSITIVE_INFINITY : 1.9 * fya);

/**
 * `Nsa`: steel strength of one anchor in tension.
 *
 * @clause ACI 318-19, 17.6.1.2
 * @param Ase - effective cross-sectional area in tension, in²
 * @param futa - as limited by `countedSteelStrength`, psi
 * @returns Nsa, lb
 */
export const steelTension = (Ase: number, futa: number): number => Ase * futa;

/**
 * `Ase`: effective area of a threaded rod from its diameter and thread.
 *
 * @clause ACI 318-19, R17.6.1.2 (after ASME B1.1)
 * @param da - nominal diameter, in
 * @param nt - threads per inch
 * @returns Ase, in²
 */
export const threadedArea = (da: number, nt: number): number => (Math.PI / 4) * (da - 0.9743 / nt) ** 2;
