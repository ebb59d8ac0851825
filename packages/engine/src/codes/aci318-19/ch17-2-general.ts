/** 17.2 to 17.4, general: what the rest of the chapter assumes. */

export type AnchorKind = "expansion" | "screw" | "undercut" | "adhesive" | "cast-in";

/**
 * `λa`: lightweight factor for concrete failure of anchors.
 *
 * @clause ACI 318-19, 17.2.4.1
 * @param kind - cast-in and undercut take λ; expansion, screw and adhesive 0.8 λ
 * @param lambda - factor of 19.2.4; 1 for normal weight, where λa is 1 too
 * @returns λa
 */
export const lightweightFactorForAnchors = (kind: AnchorKind, lambda: number): number => {
  if (lambda >= 1) return 1;
  return kind === "cast-in" || kind === "undercut" ? lambda : 0.8 * lambda;
};

/**
 * `f'c`: the most that may be counted.
 *
 * @clause ACI 318-19, 17.3.1
 * @param kind - 10,000 psi cast-in, 8,000 psi post-installed
 * @param fc - psi
 * @returns min(fc, limit), psi
 */
export const countedStrength = (kind: AnchorKind, fc: number): number =>
  Math.min(fc, kind === "cast-in" ? 10_000 : 8_000);
