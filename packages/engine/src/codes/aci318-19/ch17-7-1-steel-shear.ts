/**
 * `Vsa`: steel strength of one anchor in shear.
 *
 * @clause ACI 318-19, 17.7.1.2
 * @param kind - a headed stud has its full strength; bolts and post-installed anchors 0.6 of it
 * @param Ase - effective cross-sectional area in shear, in²
 * @param futa - as limited by `countedSteelStrength`, psi
 * @returns Vsa, lb
 */
export const steelShear = (kind: "headed-stud" | "bolt" | "post-installed", Ase: number, futa: number): number =>
  (kind === "headed-stud" ? 1 : 0.6) * Ase * futa;

/**
 * Reduction of the steel shear strength where anchors stand in a built-up grout pad.
 *
 * @clause ACI 318-19, 17.7.1.2.1
 */
export const groutPadFactor = 0.8;
