/** A slab of one thickness on a bed of springs, in base units. */
export interface SlabOnGround {
  /** modulus of elasticity of the concrete, MPa */
  readonly E: number;
  /** Poisson's ratio */
  readonly nu: number;
  /** thickness, mm */
  readonly h: number;
  /** modulus of subgrade reaction, N/mm³ */
  readonly k: number;
}

/** `D = E h³ / 12(1 − ν²)`: bending stiffness of the plate per unit width, N·mm. */
export const plateStiffness = ({ E, nu, h }: SlabOnGround): number => (E * h ** 3) / (12 * (1 - nu * nu));

/**
 * `l = (D / k)^¼`: radius of relative stiffness, mm: how far a concentrated load makes itself felt.
 *
 * Westergaard 1926 [westergaard-1926]; Huang 2nd ed., Eq. 4.10 [huang-2004].
 */
export const stiffnessRadius = (slab: SlabOnGround): number => (plateStiffness(slab) / slab.k) ** 0.25;
