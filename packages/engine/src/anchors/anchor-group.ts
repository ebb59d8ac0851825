import type { AnchorCategory, AnchorKind, Setting, SupplementaryReinforcement } from "../codes/aci318-19/index.ts";
import type { Polygon, Segment } from "../geometry/index.ts";
import type { Check, Term } from "../quantities/index.ts";

/** One anchor of the base, where it stands in plan and what it carries (factored or service, as the mode says). */
export interface Anchor {
  readonly id: string;
  /** mm, plan */
  readonly x: number;
  readonly y: number;
  /** N, pulling up positive; pushes (≤ 0) count as none */
  readonly tension: number;
  /** N, on the anchor along +x and +y */
  readonly shearX: number;
  readonly shearY: number;
}

/** What is known of the anchor as a product: mm, mm², MPa, N. A fact that is not known is absent, never guessed. */
export interface AnchorProduct {
  readonly kind: AnchorKind;
  /** how an expansion anchor is set; torque-controlled unless said otherwise */
  readonly setting?: Setting;
  /** outside diameter, mm */
  readonly da: number;
  /** effective embedment, mm */
  readonly hef: number;
  /** depth of the hole or nominal embedment, mm */
  readonly hnom?: number;
  /** thickness from which the product's own sheet qualifies hef, mm; without it ACI 318 17.9.4 limits hef */
  readonly hefQualifiedFrom?: number;
  readonly category?: AnchorCategory;
  /** effective steel area, mm² */
  readonly Ase?: number;
  /** tensile and yield strength of the steel, MPa */
  readonly futa?: number;
  readonly fya?: number;
  readonly ductile?: "ductile" | "brittle";
  /** pull-out strength, 5 % fractile, N */
  readonly NpCracked?: number;
  readonly NpUncracked?: number;
  /** breakout coefficients of the product's qualification, in lb, in, psi as in ACI 318 */
  readonly kCracked?: number;
  readonly kUncracked?: number;
  /** minimum edge distance, spacing and member thickness, mm */
  readonly cmin?: number;
  readonly smin?: number;
  readonly hmin?: number;
  /** critical edge distance for splitting, mm */
  readonly cac?: number;
  /** net bearing area of a cast-in head, mm² */
  readonly Abrg?: number;
}

/** The concrete the anchors stand in. */
export interface AnchorConcrete {
  /** MPa */
  readonly fc: number;
  /** mm */
  readonly thickness: number;
  /** lightweight factor; 1 for normal weight */
  readonly lambda?: number;
  readonly state: "cracked" | "uncracked";
  readonly supplementary: SupplementaryReinforcement;
}

/** Whatever ends the concrete for an anchor: a slab edge, an open joint, a saw cut, a crack, a cold joint. */
export interface Barrier extends Segment {
  /** as a person would call it: "saw cut", "slab edge", ... */
  readonly kind: string;
}

export interface SlabPiece {
  readonly barriers: readonly Barrier[];
}

/**
 * strength-design: factored loads against φRn of ACI 318-19. service-allowance: service loads against 0.65 × the 5 %
 * fractile / 1.6.
 */
export type AnchorMode = "strength-design" | "service-allowance";

/** What the anchors are worth against what is asked of them. */
export interface AnchorAssessment {
  readonly checks: readonly Check[];
  /** the embedment counted, with the reason in its basis */
  readonly hef: Term;
  /** outlines of the breakout bodies at the surface, mm in plan, for drawing; holes run clockwise */
  readonly areas: readonly Polygon[];
  readonly notes: readonly string[];
  /** the facts that are absent, and which check each keeps from being made or makes cautious */
  readonly missing: readonly string[];
}
