/** How far apart and how deep the trade cuts its joints. Lengths mm. */
import { fromBase, shown, type Term, toBase } from "../quantities/index.ts";

/**
 * Joint spacing as a multiple of the thickness: 24 for slump 3-5 in with stone under 3/4 in, 30 with stone of 3/4 in and
 * more, 36 for slump under 4 in. Portland Cement Association rule, in Beall, Masonry and Concrete for Residential
 * Construction, Fig. 2-15 [beall].
 */
export type SpacingMultiple = 24 | 30 | 36;

/** Cap on the spacing whatever the thickness: 15 ft (NRMCA CIP 6, ACI 360R), 18 ft (ACI 302.1R) [cip-6, aci-302]. */
export const SPACING_CAP = toBase(15, "ft");

/** Longest over shortest side of a panel: 1.5 at most, 1.25 better. ACI 302.1R-80, 2.3.2; Basham [aci-302, basham]. */
export const ASPECT_LIMIT = 1.5;

/** `min(n h, cap)`: largest side of a panel. */
export const jointSpacing = (h: number, multiple: number, cap = SPACING_CAP): Term => ({
  symbol: "s",
  words: "largest distance between joints",
  value: Math.min(multiple * h, cap),
  unit: "mm",
  clause: "ACI 302.1R, ACI 360R: 24 to 36 times the thickness, capped",
  formula: "min(n h, cap)",
  worked: `min(${multiple} × ${shown(h)}, ${shown(cap)})`,
});

/** How the cut is made: "wet" after hardening; "early" with a dry early-entry saw, 1 in whatever the thickness up to 9 in. */
export type SawKind = "wet" | "early";

/** Depth of the cut: h/4 and at least 1 in (to h/3), or 1 in early. NRMCA CIP 6, ACI 302.1R [cip-6, aci-302]. */
export const sawDepth = (h: number, kind: SawKind): Term => {
  const inch = toBase(1, "in");
  const early = kind === "early" && h <= 9 * inch;
  return {
    symbol: "ds",
    words: early ? "depth of the early-entry cut" : "depth of the saw cut, not deeper than a third of the slab",
    value: early ? inch : Math.max(h / 4, inch),
    unit: "mm",
    clause: "NRMCA CIP 6, ACI 302.1R",
    formula: early ? "1 in" : "max(h/4, 1 in)",
    worked: early ? "1 in" : `max(${shown(fromBase(h, "in"))}/4, 1) in`,
  };
};
