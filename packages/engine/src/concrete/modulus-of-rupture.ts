const psi = 0.006894757293168361;

/**
 * Modulus of rupture as slab charts take it, MPa: 9 √f'c with f'c in psi (the wheel and post charts of PCA and of
 * UFC 3-320-06A). Higher than the 7.5 √f'c of ACI 318; a design that leans on it says so.
 */
export const chartModulusOfRupture = (fc: number): number => 9 * Math.sqrt(fc / psi) * psi;
