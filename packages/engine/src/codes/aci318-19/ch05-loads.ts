/**
 * `U`: required strength for dead and live load.
 *
 * @clause ACI 318-19, 5.3.1 (a), (b)
 * @param D - dead load effect
 * @param L - live load effect, same unit
 * @returns max(1.4 D, 1.2 D + 1.6 L), same unit
 * Valid for effects that add; where dead load relieves, check 0.9 D by the caller.
 */
export const requiredStrength = (D: number, L: number): number => Math.max(1.4 * D, 1.2 * D + 1.6 * L);
