/**
 * `φ`: strength reduction factors of Table 21.2.1 that a floor needs; anchors have their own in 17.5.
 *
 * @clause ACI 318-19, Table 21.2.1
 * shear 0.75; bearing 0.65; plain concrete (flexure, shear and bearing of chapter 14) 0.60
 */
export const phi = { shear: 0.75, bearing: 0.65, plain: 0.6 } as const;

/**
 * `φ`: flexure of a tension-controlled reinforced section.
 *
 * @clause ACI 318-19, Table 21.2.2
 */
export const phiTensionControlled = 0.9;
