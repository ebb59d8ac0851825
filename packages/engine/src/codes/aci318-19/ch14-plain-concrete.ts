/** Chapter 14, plain concrete: lb, in, psi. The strength reduction factor is in chapter 21 (0.60). */

/**
 * `h`: thickness counted in strength when the member is cast against soil.
 *
 * @clause ACI 318-19, 14.5.1.7
 * @param h - specified thickness, in
 * @returns h − 2, in; never below 0
 */
export const thicknessAgainstSoil = (h: number): number => Math.max(0, h - 2);

/**
 * `Mn`: flexural strength governed by the tension face.
 *
 * @clause ACI 318-19, 14.5.2.1 (a)
 * @param fc - specified compressive strength, psi
 * @param Sm - elastic section modulus, in³
 * @param lambda - lightweight factor, 1 for normal weight
 * @returns Mn, lb-in
 */
export const flexuralStrengthTension = (fc: number, Sm: number, lambda = 1): number => 5 * lambda * Math.sqrt(fc) * Sm;

/**
 * `Mn`: flexural strength governed by the compression face.
 *
 * @clause ACI 318-19, 14.5.2.1 (b)
 * @param fc - specified compressive strength, psi
 * @param Sm - elastic section modulus, in³
 * @returns Mn, lb-in
 */
export const flexuralStrengthCompression = (fc: number, Sm: number): number => 0.85 * fc * Sm;

/**
 * `Vn`: one-way shear strength.
 *
 * @clause ACI 318-19, Table 14.5.5.1 (a)
 * @param fc - specified compressive strength, psi
 * @param bw - width, in
 * @param h - thickness counted, in (14.5.1.7 when cast against soil)
 * @param lambda - lightweight factor
 * @returns Vn, lb
 */
export const plainOneWayShear = (fc: number, bw: number, h: number, lambda = 1): number =>
  (4 / 3) * lambda * Math.sqrt(fc) * bw * h;

/**
 * `Vn`: two-way shear strength, with the cap of 2.66 √f'c.
 *
 * @clause ACI 318-19, Table 14.5.5.1 (b), (c)
 * @param fc - specified compressive strength, psi
 * @param bo - perimeter of the critical section at h/2 from the loaded area, in
 * @param h - thickness counted, in
 * @param beta - long side over short side of the loaded area, at least 1
 * @param lambda - lightweight factor
 * @returns Vn, lb
 */
export const plainTwoWayShear = (fc: number, bo: number, h: number, beta: number, lambda = 1): number =>
  Math.min((1 + 2 / beta) * (4 / 3), 2.66) * lambda * Math.sqrt(fc) * bo * h;

/**
 * `Bn`: bearing strength of plain concrete, raised where the support is wider than the load on all sides.
 *
 * @clause ACI 318-19, Table 14.5.6.1
 * @param fc - specified compressive strength, psi
 * @param A1 - loaded area, in²
 * @param A2 - area of the lower base of the largest frustum within the support, in²; at least A1
 * @returns Bn, lb
 */
export const plainBearing = (fc: number, A1: number, A2: number = A1): number =>
  Math.min(Math.sqrt(A2 / A1), 2) * 0.85 * fc * A1;
