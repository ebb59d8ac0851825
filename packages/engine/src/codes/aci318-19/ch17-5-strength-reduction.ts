/** 17.5, strength reduction factors of anchors, and the spacing within which anchors act together. */

export type Action = "tension" | "shear";
/** Sensitivity to installation found by ACI 355.2 / 355.4; 1 is the least sensitive. */
export type AnchorCategory = 1 | 2 | 3;
export type SupplementaryReinforcement = "none" | "present";

/**
 * Critical spacing: anchors closer than this act as a group in breakout.
 *
 * @clause ACI 318-19, Table 17.5.1.3.1
 * @param reach - hef in tension, ca1 in shear, any length unit
 * @returns 3 × reach, same unit
 */
export const criticalSpacing = (reach: number): number => 3 * reach;

/**
 * `φ`: anchor strength governed by steel.
 *
 * @clause ACI 318-19, Table 17.5.3(a)
 * @param action - tension or shear
 * @param steel - ductile as defined in 2.3 (14 % elongation, 30 % reduction of area), else brittle
 * @returns φ
 */
export const phiSteel = (action: Action, steel: "ductile" | "brittle"): number => {
  if (steel === "ductile") return action === "tension" ? 0.75 : 0.65;
  return action === "tension" ? 0.65 : 0.6;
};

/**
 * `φ`: anchor strength governed by concrete breakout, bond or side-face blowout.
 *
 * @clause ACI 318-19, Table 17.5.3(b)
 * @param action - tension or shear
 * @param installation - cast-in, or the category of the post-installed anchor
 * @param supplementary - reinforcement that ties the breakout body to the member
 * @returns φ
 */
export const phiBreakout = (
  action: Action,
  installation: "cast-in" | AnchorCategory,
  supplementary: SupplementaryReinforcement,
): number => {
  const tied = supplementary === "present";
  if (action === "shear" || installation === "cast-in") return tied ? 0.75 : 0.7;
  return { 1: tied ? 0.75 : 0.65, 2: tied ? 0.65 : 0.55, 3: tied ? 0.55 : 0.45 }[installation];
};

/**
 * `φ`: anchor strength governed by pull-out (tension) or pry-out (shear).
 *
 * @clause ACI 318-19, Table 17.5.3(c)
 * @param action - tension for pull-out, shear for pry-out
 * @param installation - cast-in, or the category of the post-installed anchor
 * @returns φ
 */
export const phiPullout = (action: Action, installation: "cast-in" | AnchorCategory): number => {
  if (action === "shear" || installation === "cast-in") return 0.7;
  return { 1: 0.65, 2: 0.55, 3: 0.45 }[installation];
};

/**
 * Category by reliability: characteristic strength in the reliability tests over that in the reference tests.
 *
 * @clause ACI 355.2-04, Table on anchor categories (as printed in an ACI presentation on Appendix D)
 * @param percent - least ratio of the reliability tests, %
 * @returns 1 at 80 % or more, 2 at 70 %, 3 at 60 %, else "unqualified"
 */
export const categoryFromReliability = (percent: number): AnchorCategory | "unqualified" => {
  if (percent >= 80) return 1;
  if (percent >= 70) return 2;
  return percent >= 60 ? 3 : "unqualified";
};
