/**
 * `λs`: size effect factor.
 *
 * @clause ACI 318-19, 22.5.5.1.3
 * @param d - effective depth, in
 * @returns √(2/(1 + d/10)), at most 1
 */
export const sizeEffect = (d: number): number => Math.min(1, Math.sqrt(2 / (1 + d / 10)));

/**
 * `Vc`: one-way shear strength without stirrups and without axial load.
 *
 * @clause ACI 318-19, Table 22.5.5.1 (c)
 * @param fc - psi
 * @param section - width and effective depth, in; ρw = As/(bw d)
 * @param lambda - lightweight factor
 * @returns 8 λs λ ρw^(1/3) √f'c bw d, at most 5 λ √f'c bw d (22.5.5.1.1), lb
 */
export const oneWayShear = (
  fc: number,
  { bw, d, rhoW }: { readonly bw: number; readonly d: number; readonly rhoW: number },
  lambda = 1,
): number => Math.min(8 * sizeEffect(d) * Math.cbrt(rhoW), 5) * lambda * Math.sqrt(fc) * bw * d;
