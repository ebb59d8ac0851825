/**
 * `Bn`: bearing strength.
 *
 * @clause ACI 318-19, Table 22.8.3.2
 * @param fc - psi
 * @param A1 - loaded area, in²
 * @param A2 - lower base of the largest frustum within the support, sides sloped 1 vertical to 2 horizontal, in²
 * @returns min(√(A2/A1), 2) × 0.85 f'c A1, lb
 */
export const bearing = (fc: number, A1: number, A2: number = A1): number =>
  Math.min(Math.sqrt(A2 / A1), 2) * 0.85 * fc * A1;
