/** 7.2.2, resistance to shear: N, mm, MPa. */
import type { ConcreteState } from "./ch07-2-1-tension.ts";

/**
 * `V0Rk,s`: steel in shear without lever arm.
 *
 * @clause EN 1992-4:2018, 7.2.2.3.1
 * @param As - mm²
 * @param fuk - MPa; k6 0.6 up to 500 MPa, 0.5 up to 1000 MPa
 * @returns N
 */
export const steelShear = (As: number, fuk: number): number => (fuk <= 500 ? 0.6 : 0.5) * As * fuk;

/**
 * `VRk,cp`: pry-out.
 *
 * @clause EN 1992-4:2018, 7.2.2.4
 * @param k8 - from the product assessment (1 or 2)
 * @param cone - NRk,c of the fasteners in shear, N
 * @returns N
 */
export const pryout = (k8: number, cone: number): number => k8 * cone;

/** A fastener's dimensions that matter at an edge, mm. */
export interface EdgeFastener {
  readonly dnom: number;
  readonly lf: number;
  readonly c1: number;
}

/**
 * `lf`: length counted in shear.
 *
 * @clause EN 1992-4:2018, 7.2.2.5 (6)
 * @param hef - mm
 * @param dnom - mm
 * @returns hef, at most 12 dnom up to 24 mm, at most max(8 dnom, 300) above
 */
export const loadedLength = (hef: number, dnom: number): number =>
  Math.min(hef, dnom <= 24 ? 12 * dnom : Math.max(8 * dnom, 300));

/**
 * `V0Rk,c`: characteristic edge resistance of one fastener in a deep member.
 *
 * @clause EN 1992-4:2018, 7.2.2.5 (6)
 * @param fastener - dnom, lf, c1, mm
 * @param fck - MPa
 * @param state - k9 1.7 cracked, 2.4 uncracked
 * @returns k9 dnom^α lf^β √fck c1^1.5 with α = 0.1 (lf/c1)^0.5, β = 0.1 (dnom/c1)^0.2, N
 */
export const basicEdge = ({ dnom, lf, c1 }: EdgeFastener, fck: number, state: ConcreteState): number => {
  const alpha = 0.1 * (lf / c1) ** 0.5;
  const beta = 0.1 * (dnom / c1) ** 0.2;
  return (state === "cracked" ? 1.7 : 2.4) * dnom ** alpha * lf ** beta * Math.sqrt(fck) * c1 ** 1.5;
};

/**
 * `ψh,V`: thin member.
 *
 * @clause EN 1992-4:2018, 7.2.2.5 (9)
 * @param c1 - mm
 * @param h - thickness, mm
 * @returns √(1.5 c1/h), at least 1
 */
export const psiThickness = (c1: number, h: number): number => Math.max(1, Math.sqrt((1.5 * c1) / h));

/**
 * `ψα,V`: load at an angle to the edge.
 *
 * @clause EN 1992-4:2018, 7.2.2.5 (11)
 * @param alpha - angle from the square to the edge, radians, 0 to π/2
 * @returns √(1/(cos² α + (0.5 sin α)²))
 */
export const psiAngle = (alpha: number): number => Math.sqrt(1 / (Math.cos(alpha) ** 2 + (0.5 * Math.sin(alpha)) ** 2));
