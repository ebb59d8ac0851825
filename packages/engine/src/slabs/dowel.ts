/** One dowel across a joint: the bar as a beam on springs of concrete in both sides (Timoshenko & Lessels 1925, Friberg 1940). */
import { toBase } from "../quantities/index.ts";

/** ratio of shear area to area of a round bar (Timoshenko's 9/10; Cowper 1966 has 0.886 at ν = 0.3) */
const SHEAR_SHAPE = 0.9;

/** A round bar in both sides of a joint. mm, MPa, N/mm³. */
export interface Dowel {
  readonly diameter: number;
  /** between the concrete faces */
  readonly opening: number;
  /** modulus of dowel support, concrete on steel */
  readonly support: number;
  readonly E: number;
}

/**
 * Modulus of dowel support, N/mm³: 300 to 1500 ksi/in in use, 1500 the common choice (Friberg 1940 as quoted in lecture
 * notes on rigid pavements). Sockets wear: the low end is the worst end.
 */
export const dowelSupport = { low: toBase(300_000, "pci"), high: toBase(1_500_000, "pci") } as const;

/**
 * Force that one dowel passes per mm of step between the sides, N/mm. Each side a half-endless beam on springs (Friberg
 * 1940; Hetényi 1946) with the moment zero at mid gap, and the bare length bent and sheared:
 *
 *   step / V = 2 (2+βz)/4β³EI + z (1+βz)/2β²EI + z³/12EI + z/(0.9 GA),   β = (K d / 4EI)^¼
 */
export const dowelStiffness = ({ diameter: d, opening: z, support, E }: Dowel): number => {
  const { beta, EI } = dowelBeam(d, support, E);
  const face = (2 + beta * z) / (4 * beta ** 3 * EI);
  const slope = (1 + beta * z) / (2 * beta ** 2 * EI);
  const G = E / 2.6;
  return 1 / (2 * face + z * slope + z ** 3 / (12 * EI) + z / (SHEAR_SHAPE * G * (Math.PI / 4) * d * d));
};

const dowelBeam = (d: number, support: number, E: number): { beta: number; EI: number } => {
  const EI = (E * Math.PI * d ** 4) / 64;
  return { beta: ((support * d) / (4 * EI)) ** 0.25, EI };
};

/** Deflection of a dowel at the face of the concrete under V, mm: `V (2+βz)/4β³EI` (Friberg 1940). */
export const dowelAtFace = ({ diameter, opening, support, E }: Dowel, V: number): number => {
  const { beta, EI } = dowelBeam(diameter, support, E);
  return (V * (2 + beta * opening)) / (4 * beta ** 3 * EI);
};
