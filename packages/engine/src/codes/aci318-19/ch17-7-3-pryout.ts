/**
 * `kcp`: pry-out coefficient.
 *
 * @clause ACI 318-19, 17.7.3.1
 * @param hef - in
 * @returns 1 for hef < 2.5 in, else 2
 */
export const pryoutCoefficient = (hef: number): number => (hef < 2.5 ? 1 : 2);

/**
 * `Vcp`, `Vcpg`: pry-out strength.
 *
 * @clause ACI 318-19, 17.7.3.1
 * @param hef - in
 * @param Ncp - tension breakout strength of the anchors in shear, lb (the lesser of it and bond for adhesive anchors)
 * @returns Vcp or Vcpg, lb
 */
export const pryout = (hef: number, Ncp: number): number => pryoutCoefficient(hef) * Ncp;
