/** 17.7.2, concrete breakout in shear toward an edge: lb, in, psi. */

/**
 * `ca1`: edge distance counted where both side edges and the thickness are smaller than 1.5 ca1.
 *
 * @clause ACI 318-19, 17.7.2.1.2
 * @param ca1 - in
 * @param ca2 - the two side distances, in; Infinity where there is none
 * @param ha - thickness of the member, in
 * @param s - greatest spacing of the anchors along the edge, in
 * @returns max(ca2,max/1.5, ha/1.5, s/3), never more than ca1; else ca1
 */
export const edgeDistanceInNarrowMember = (
  ca1: number,
  ca2: readonly [number, number],
  ha: number,
  s: number,
): number =>
  Math.max(...ca2) < 1.5 * ca1 && ha < 1.5 * ca1
    ? Math.min(ca1, Math.max(Math.max(...ca2) / 1.5, ha / 1.5, s / 3))
    : ca1;

/**
 * `AVco`: projected area of one anchor in a deep member, far from corners.
 *
 * @clause ACI 318-19, 17.7.2.1.3
 * @param ca1 - in
 * @returns AVco, in²
 */
export const projectedShearAreaOfOne = (ca1: number): number => 4.5 * ca1 ** 2;

/**
 * `AVc`: projected area on the edge face of a row parallel to the edge.
 *
 * @clause ACI 318-19, 17.7.2.1.1 and Fig. R17.7.2.1b
 * @param ca1 - in
 * @param width - along the edge: 1.5 ca1 (or the side distance, if smaller) at each end, and the spacings between, in
 * @param ha - thickness of the member, in
 * @returns AVc, in²
 */
export const projectedShearArea = (ca1: number, width: number, ha: number): number => width * Math.min(1.5 * ca1, ha);

/** Factors of 17.7.2.1. */
export interface ShearBreakoutFactors {
  readonly psiEc?: number;
  readonly psiEd: number;
  readonly psiC: number;
  readonly psiH: number;
}

/**
 * `Vcb`, `Vcbg`: breakout strength for shear at right angles to the edge. Shear along the edge takes twice this with
 * ψed = 1 (17.7.2.1 (c)).
 *
 * @clause ACI 318-19, 17.7.2.1 (a), (b)
 * @param areaRatio - AVc / AVco; at most the number of anchors
 * @param psi - factors; ψec only for groups
 * @param Vb - basic strength, lb
 * @returns Vcb or Vcbg, lb
 */
export const breakoutShear = (areaRatio: number, psi: ShearBreakoutFactors, Vb: number): number =>
  areaRatio * (psi.psiEc ?? 1) * psi.psiEd * psi.psiC * psi.psiH * Vb;

/**
 * `le`: load-bearing length of the anchor in shear.
 *
 * @clause ACI 318-19, 17.7.2.2.1
 * @param hef - in
 * @param da - outside diameter, in
 * @returns min(hef, 8 da), in (2 da for anchors with a distance sleeve is given by the caller)
 */
export const loadBearingLength = (hef: number, da: number): number => Math.min(hef, 8 * da);

/** One anchor's dimensions that matter in shear breakout, in. */
export interface ShearAnchor {
  readonly da: number;
  readonly le: number;
  readonly ca1: number;
}

/**
 * `Vb`: basic breakout strength in shear, cracked concrete: the smaller of two.
 *
 * @clause ACI 318-19, 17.7.2.2.1 (a), (b)
 * @param anchor - da, le, ca1, in
 * @param fc - psi
 * @param lambdaA - lightweight factor
 * @returns Vb, lb
 */
export const basicBreakoutShear = ({ da, le, ca1 }: ShearAnchor, fc: number, lambdaA = 1): number =>
  Math.min(7 * (le / da) ** 0.2 * Math.sqrt(da), 9) * lambdaA * Math.sqrt(fc) * ca1 ** 1.5;

/**
 * `Vb`: as above for headed studs, bolts or hooked bolts welded to a plate at least 3/8 in and half da thick.
 *
 * @clause ACI 318-19, 17.7.2.2.2
 * @param anchor - da, le, ca1, in
 * @param fc - psi
 * @param lambdaA - lightweight factor
 * @returns Vb, lb
 */
export const basicBreakoutShearWelded = ({ da, le, ca1 }: ShearAnchor, fc: number, lambdaA = 1): number =>
  Math.min(8 * (le / da) ** 0.2 * Math.sqrt(da), 9) * lambdaA * Math.sqrt(fc) * ca1 ** 1.5;

/**
 * `ψec,V`: eccentricity of the shear on the group.
 *
 * @clause ACI 318-19, 17.7.2.3
 * @param e - distance e'V along the edge, in
 * @param ca1 - in
 * @returns ψec,V ≤ 1
 */
export const psiEccentricityShear = (e: number, ca1: number): number =>
  Math.min(1, 1 / (1 + Math.abs(e) / (1.5 * ca1)));

/**
 * `ψed,V`: nearness of a side edge.
 *
 * @clause ACI 318-19, 17.7.2.4
 * @param ca2 - the smaller side distance, in
 * @param ca1 - in
 * @returns ψed,V ≤ 1
 */
export const psiEdgeShear = (ca2: number, ca1: number): number => Math.min(1, 0.7 + (0.3 * ca2) / (1.5 * ca1));

/**
 * `ψc,V`: cracking and edge reinforcement.
 *
 * @clause ACI 318-19, 17.7.2.5
 * @param state - uncracked 1.4
 * @param edgeSteel - cracked: 1.0 none or smaller than No. 4; 1.2 No. 4 or larger between anchor and edge; 1.4 the same
 *   enclosed in stirrups at 4 in or closer
 * @returns ψc,V
 */
export const psiCrackingShear = (
  state: "cracked" | "uncracked",
  edgeSteel: "none" | "no-4-bar" | "no-4-bar-in-stirrups" = "none",
): number => (state === "uncracked" ? 1.4 : { none: 1, "no-4-bar": 1.2, "no-4-bar-in-stirrups": 1.4 }[edgeSteel]);

/**
 * `ψh,V`: thin member.
 *
 * @clause ACI 318-19, 17.7.2.6
 * @param ca1 - in
 * @param ha - thickness of the member, in
 * @returns √(1.5 ca1/ha), at least 1
 */
export const psiThickness = (ca1: number, ha: number): number => Math.max(1, Math.sqrt((1.5 * ca1) / ha));
