/** Poisson's ratio of concrete, as in the closed forms. */
export const NU = 0.15;

/** Modulus of rupture over stress: the low end of the practice of ACI 360R, from memory. */
export const FIRST_CRACK = 1.4;

/** Loads of a lift are taken as live load: ACI 318-19 5.3.1. A service allowance is φ times the strength over this. */
export const LOAD_FACTOR = 1.6;
