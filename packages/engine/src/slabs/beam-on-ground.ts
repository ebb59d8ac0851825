/**
 * Beams on springs: thickened strips, wall lines, rails. E I y'''' + K y = p.
 *
 * Closed forms of Hetenyi 1946, ch. II [hetenyi-1946]. Distances mm from the load, positive to the right. y downward,
 * slope y', M sagging positive (−EI y''), V = dM/dx.
 */
import { hetenyiA, hetenyiB, hetenyiC, hetenyiD } from "./hetenyi-functions.ts";

/** A beam on a bed of springs. */
export interface BeamOnGround {
  /** bending stiffness, N·mm² */
  readonly EI: number;
  /** stiffness of the bed per length of beam, N/mm² (subgrade modulus times width) */
  readonly K: number;
}

/** Deflection mm, slope, moment N·mm, shear N at one place. */
export interface BeamState {
  readonly y: number;
  readonly slope: number;
  readonly M: number;
  readonly V: number;
}

/** `λ = (K / 4EI)^¼`, 1/mm. */
export const beamLambda = ({ EI, K }: BeamOnGround): number => (K / (4 * EI)) ** 0.25;

/** Infinite beam, point load P (N, down), at signed distance x. At x = 0 the shear of the right-hand side. */
export const infiniteUnderLoad = (beam: BeamOnGround, P: number, x: number): BeamState => {
  const lambda = beamLambda(beam);
  const [s, z] = [x < 0 ? -1 : 1, lambda * Math.abs(x)];
  return {
    y: ((P * lambda) / (2 * beam.K)) * hetenyiA(z),
    slope: (-s * P * lambda ** 2 * hetenyiB(z)) / beam.K,
    M: (P / (4 * lambda)) * hetenyiC(z),
    V: (-s * P * hetenyiD(z)) / 2,
  };
};

/** Infinite beam, clockwise couple M0 (N·mm: presses the right side down), at signed distance x; at 0 the right side. */
export const infiniteUnderCouple = (beam: BeamOnGround, M0: number, x: number): BeamState => {
  const lambda = beamLambda(beam);
  const [s, z] = [x < 0 ? -1 : 1, lambda * Math.abs(x)];
  return {
    y: (s * M0 * lambda ** 2 * hetenyiB(z)) / beam.K,
    slope: (M0 * lambda ** 3 * hetenyiC(z)) / beam.K,
    M: (s * M0 * hetenyiD(z)) / 2,
    V: (-lambda * M0 * hetenyiA(z)) / 2,
  };
};

/** Semi-infinite beam with a free end at 0, end load P (down) and clockwise end couple M0, at x ≥ 0. */
export const semiInfinite = (beam: BeamOnGround, P: number, M0: number, x: number): BeamState => {
  const lambda = beamLambda(beam);
  const z = lambda * x;
  return {
    y: (2 * P * lambda * hetenyiD(z) - 2 * M0 * lambda ** 2 * hetenyiC(z)) / beam.K,
    slope: (-2 * P * lambda ** 2 * hetenyiA(z) + 4 * M0 * lambda ** 3 * hetenyiD(z)) / beam.K,
    M: -(P / lambda) * hetenyiB(z) + M0 * hetenyiA(z),
    V: -P * hetenyiC(z) - 2 * M0 * lambda * hetenyiB(z),
  };
};
