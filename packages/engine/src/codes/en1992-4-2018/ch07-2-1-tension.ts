/** 7.2.1, resistance to tension: N, mm, MPa; fck on cylinders. The projected area Ac,N comes from geometry/unionArea. */

export type ConcreteState = "cracked" | "uncracked";
export type Fastener = "headed" | "post-installed";

/**
 * `k1`: kcr,N or kucr,N.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (2)
 * @param fastener - headed 8.9 cracked, 12.7 uncracked; post-installed 7.7, 11.0 (a product assessment may give its own)
 * @param state - cracked or uncracked
 */
export const coneCoefficient = (fastener: Fastener, state: ConcreteState): number =>
  ({ headed: { cracked: 8.9, uncracked: 12.7 }, "post-installed": { cracked: 7.7, uncracked: 11 } })[fastener][state];

/**
 * `N0Rk,c`: characteristic resistance of one fastener far from edges and others.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (2)
 * @param k1 - `coneCoefficient`
 * @param fck - characteristic cylinder strength, MPa
 * @param hef - effective embedment, mm
 * @returns N0Rk,c, N
 */
export const basicCone = (k1: number, fck: number, hef: number): number => k1 * Math.sqrt(fck) * hef ** 1.5;

/**
 * `A0c,N`: reference projected area, with scr,N = 3 hef.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (3)
 * @param hef - mm
 * @returns mm²
 */
export const referenceConeArea = (hef: number): number => (3 * hef) ** 2;

/**
 * `ψs,N`: disturbance by an edge, with ccr,N = 1.5 hef.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (4)
 * @param c - smallest edge distance, mm
 * @param hef - mm
 * @returns ψs,N ≤ 1
 */
export const psiEdge = (c: number, hef: number): number => Math.min(1, 0.7 + (0.3 * c) / (1.5 * hef));

/**
 * `ψre,N`: shell spalling where reinforcement is dense.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (5)
 * @param hef - mm
 * @param bars - "open": at 150 mm or wider, or 10 mm bars at 100 mm or wider, or none; else "dense"
 * @returns 1 where open; 0.5 + hef/200, at most 1, where dense
 */
export const psiShellSpalling = (hef: number, bars: "open" | "dense"): number =>
  bars === "open" ? 1 : Math.min(1, 0.5 + hef / 200);

/**
 * `ψec,N`: eccentricity, one direction; two directions multiply.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (6)
 * @param e - eN of the resultant on the fasteners in tension, mm
 * @param hef - mm
 * @returns 1/(1 + 2 eN/scr,N) ≤ 1
 */
export const psiEccentricity = (e: number, hef: number): number => 1 / (1 + (2 * Math.abs(e)) / (3 * hef));

/**
 * `ψM,N`: pressure of the base plate on the cone.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (7)
 * @param z - lever arm of pull and push, mm
 * @param hef - mm
 * @returns 2 − z/(1.5 hef), at least 1; the caller takes 1 for edges nearer than 1.5 hef, z ≥ 1.5 hef, or little push
 */
export const psiPressure = (z: number, hef: number): number => Math.max(1, 2 - z / (1.5 * hef));

/**
 * `h'ef`: depth counted with three or more edges nearer than 1.5 hef.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (8)
 * @param hef - mm
 * @param edges - the edge distances smaller than 1.5 hef, mm
 * @param smax - greatest spacing, mm
 * @returns max(cmax/(1.5 hef), smax/(3 hef)) × hef, never more than hef
 */
export const depthBetweenEdges = (hef: number, edges: readonly number[], smax: number): number =>
  edges.length < 3 ? hef : Math.min(hef, Math.max(Math.max(...edges) / 1.5, smax / 3));

/** Factors of `cone`. */
export interface ConeFactors {
  readonly psiS: number;
  readonly psiRe: number;
  readonly psiEc: number;
  readonly psiM: number;
}

/**
 * `NRk,c`: characteristic resistance of the concrete cone.
 *
 * @clause EN 1992-4:2018, 7.2.1.4 (1)
 * @param N0 - `basicCone`, N
 * @param areaRatio - Ac,N/A0c,N
 * @param psi - factors
 * @returns NRk,c, N
 */
export const cone = (N0: number, areaRatio: number, psi: ConeFactors): number =>
  N0 * areaRatio * psi.psiS * psi.psiRe * psi.psiEc * psi.psiM;

/**
 * `NRk,p`: pull-out of a headed fastener.
 *
 * @clause EN 1992-4:2018, 7.2.1.5
 * @param Ah - bearing area of the head, mm²
 * @param fck - MPa
 * @param state - k2 7.5 cracked, 10.5 uncracked
 * @returns NRk,p, N
 */
export const pulloutOfHead = (Ah: number, fck: number, state: ConcreteState): number =>
  (state === "cracked" ? 7.5 : 10.5) * Ah * fck;

/**
 * `ψh,sp`: splitting resistance in a member thicker than the least.
 *
 * @clause EN 1992-4:2018, 7.2.1.7 (2)
 * @param h - thickness, mm
 * @param hmin - least thickness of the product, mm
 * @param hef - mm
 * @param c1 - edge distance, mm
 * @returns (h/hmin)^(2/3), at most max(1, ((hef + 1.5 c1)/hmin)^(2/3)) and at most 2
 */
export const psiSplittingThickness = (h: number, hmin: number, hef: number, c1: number): number =>
  Math.min((h / hmin) ** (2 / 3), Math.max(1, ((hef + 1.5 * c1) / hmin) ** (2 / 3)), 2);

/**
 * `NRk,s`: steel in tension.
 *
 * @clause EN 1992-4:2018, 7.2.1.3
 * @param As - mm²
 * @param fuk - MPa
 * @returns N
 */
export const steelTension = (As: number, fuk: number): number => As * fuk;
