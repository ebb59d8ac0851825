/** 17.9, edge distances, spacings and thicknesses to preclude splitting: in. */
import type { AnchorKind } from "./ch17-2-general.ts";

/** How an expansion anchor is set; the others have one way each. */
export type Setting = "torque-controlled" | "displacement-controlled";

/**
 * Minimum centre-to-centre spacing.
 *
 * @clause ACI 318-19, Table 17.9.2(a)
 * @param kind - kind of anchor
 * @param da - diameter, in
 * @param hef - in; counts for screws only
 * @param torqued - whether a cast-in anchor is torqued
 * @returns 6 da; cast-in 4 da unless torqued; screws at least 0.6 hef, in
 */
export const minimumSpacing = (
  kind: AnchorKind,
  da: number,
  hef: number,
  torqued: "torqued" | "not-torqued" = "torqued",
): number => {
  if (kind === "cast-in") return (torqued === "torqued" ? 6 : 4) * da;
  return kind === "screw" ? Math.max(0.6 * hef, 6 * da) : 6 * da;
};

/**
 * Minimum edge distance where the product gives none. A cast-in anchor takes the cover of its reinforcement when not
 * torqued, which the caller knows.
 *
 * @clause ACI 318-19, Table 17.9.2(b)
 * @param kind - torque-controlled expansion 8 da, displacement-controlled 10 da, others 6 da
 * @param da - diameter, in
 * @param setting - of expansion anchors
 * @returns in
 */
export const minimumEdge = (kind: AnchorKind, da: number, setting: Setting = "torque-controlled"): number => {
  if (kind !== "expansion") return 6 * da;
  return (setting === "torque-controlled" ? 8 : 10) * da;
};

/**
 * `hef`: the most that may be counted in a thin member, unless tests of the product show otherwise.
 *
 * @clause ACI 318-19, 17.9.4
 * @param kind - expansion, screw and undercut are limited; cast-in and adhesive are not
 * @param ha - thickness of the member, in
 * @returns max(2/3 ha, ha − 4), in; Infinity where there is no limit
 */
export const depthLimitInThinMember = (kind: AnchorKind, ha: number): number =>
  kind === "cast-in" || kind === "adhesive" ? Number.POSITIVE_INFINITY : Math.max((2 / 3) * ha, ha - 4);

/**
 * `cac`: critical edge distance where tension tests of the product give none.
 *
 * @clause ACI 318-19, Table 17.9.5
 * @param kind - 4 hef expansion and screw, 2.5 hef undercut, 2 hef adhesive; cast-in needs none (1.5 hef)
 * @param hef - in
 * @returns cac, in
 */
export const criticalEdge = (kind: AnchorKind, hef: number): number =>
  ({ expansion: 4, screw: 4, undercut: 2.5, adhesive: 2, "cast-in": 1.5 })[kind] * hef;
