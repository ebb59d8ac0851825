/**
 * Pull and shear together: what is asked against 1.
 *
 * @clause EN 1992-4:2018, Table 7.3
 * @param failure - steel: squares; concrete: powers of 1.5
 * @param tension - NEd/NRd of that failure
 * @param shear - VEd/VRd of that failure
 */
export const interaction = (failure: "steel" | "concrete", tension: number, shear: number): number =>
  failure === "steel" ? tension ** 2 + shear ** 2 : tension ** 1.5 + shear ** 1.5;
