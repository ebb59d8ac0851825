/** 17.6.2, concrete breakout in tension: lb, in, psi. The projected area A_Nc comes from geometry/unionArea. */

/**
 * `hef`: depth counted where three or more edges lie nearer than 1.5 hef.
 *
 * @clause ACI 318-19, 17.6.2.1.2
 * @param hef - embedment, in
 * @param edges - the edge distances smaller than 1.5 hef, in
 * @param s - greatest spacing between anchors of the group, in; 0 for one anchor
 * @returns max(ca,max/1.5, s/3) with three or more edges, never more than hef; else hef
 */
export const depthBetweenEdges = (hef: number, edges: readonly number[], s: number): number =>
  edges.length < 3 ? hef : Math.min(hef, Math.max(Math.max(...edges) / 1.5, s / 3));

/**
 * `ANco`: projected failure area of one anchor far from edges.
 *
 * @clause ACI 318-19, 17.6.2.1.4
 * @param hef - effective embedment, in
 * @returns ANco, in²
 */
export const projectedAreaOfOne = (hef: number): number => 9 * hef ** 2;

/** Factors of 17.6.2.1; one for each clause that follows. */
export interface BreakoutFactors {
  readonly psiEc?: number;
  readonly psiEd: number;
  readonly psiC: number;
  readonly psiCp: number;
}

/**
 * `Ncb`, `Ncbg`: breakout strength of one anchor or of a group.
 *
 * @clause ACI 318-19, 17.6.2.1 (a), (b)
 * @param areaRatio - A_Nc / A_Nco; at most the number of anchors
 * @param psi - factors; ψec only for groups
 * @param Nb - basic strength, lb
 * @returns Ncb or Ncbg, lb
 */
export const breakoutTension = (areaRatio: number, psi: BreakoutFactors, Nb: number): number =>
  areaRatio * (psi.psiEc ?? 1) * psi.psiEd * psi.psiC * psi.psiCp * Nb;

/**
 * `kc`: 24 cast-in, 17 post-installed; a higher value of the product's qualification (up to 24) is given by the caller.
 *
 * @clause ACI 318-19, 17.6.2.2.1, 17.6.2.2.2
 */
export const breakoutCoefficient = (installation: "cast-in" | "post-installed"): number =>
  installation === "cast-in" ? 24 : 17;

/**
 * `Nb`: basic concrete breakout strength of a single anchor in tension, cracked concrete.
 *
 * @clause ACI 318-19, 17.6.2.2.1
 * @param kc - 17 post-installed, 24 cast-in
 * @param fc - specified compressive strength, psi
 * @param hef - effective embedment, in
 * @param lambdaA - lightweight factor of 17.2.4
 * @returns Nb, lb
 */
export const basicBreakoutTension = (kc: number, fc: number, hef: number, lambdaA = 1): number =>
  kc * lambdaA * Math.sqrt(fc) * hef ** 1.5;

/**
 * `Nb`: alternative for deep cast-in headed studs and bolts.
 *
 * @clause ACI 318-19, 17.6.2.2.3
 * @param fc - psi
 * @param hef - in
 * @param lambdaA - lightweight factor
 * @returns Nb, lb
 * Valid for 11 in ≤ hef ≤ 25 in; the caller keeps to it.
 */
export const basicBreakoutTensionDeep = (fc: number, hef: number, lambdaA = 1): number =>
  16 * lambdaA * Math.sqrt(fc) * hef ** (5 / 3);

/**
 * `ψec,N`: eccentricity of the tension on the group, one direction; two directions multiply.
 *
 * @clause ACI 318-19, 17.6.2.3
 * @param e - distance e'N of the resultant from the centroid of the anchors in tension, in
 * @param hef - effective embedment, in
 * @returns ψec,N ≤ 1
 */
export const psiEccentricityTension = (e: number, hef: number): number =>
  Math.min(1, 1 / (1 + Math.abs(e) / (1.5 * hef)));

/**
 * `ψed,N`: nearness of an edge.
 *
 * @clause ACI 318-19, 17.6.2.4
 * @param caMin - smallest edge distance of the anchors in tension, in; Infinity where there is none
 * @param hef - effective embedment, in
 * @returns ψed,N ≤ 1
 */
export const psiEdgeTension = (caMin: number, hef: number): number => Math.min(1, 0.7 + (0.3 * caMin) / (1.5 * hef));

/**
 * `ψc,N`: concrete shown by analysis not to crack at service loads.
 *
 * @clause ACI 318-19, 17.6.2.5
 * @param state - cracked 1.0
 * @param installation - uncracked: 1.25 cast-in, 1.4 post-installed with kc = 17; 1.0 with the product's own k for
 *   uncracked concrete
 * @returns ψc,N
 */
export const psiCrackingTension = (
  state: "cracked" | "uncracked",
  installation: "cast-in" | "post-installed" | "product-k",
): number => (state === "cracked" ? 1 : { "cast-in": 1.25, "post-installed": 1.4, "product-k": 1 }[installation]);

/**
 * `ψcp,N`: splitting of uncracked concrete by post-installed anchors without supplementary reinforcement.
 *
 * @clause ACI 318-19, 17.6.2.6
 * @param caMin - smallest edge distance, in
 * @param cac - critical edge distance of 17.9.5, in
 * @param hef - effective embedment, in
 * @returns ψcp,N ≤ 1; every other case takes 1 and need not call
 */
export const psiSplitting = (caMin: number, cac: number, hef: number): number =>
  Math.min(1, Math.max(caMin, 1.5 * hef) / cac);
