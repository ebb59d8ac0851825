import type { Term, Unable } from "@floorworthy/engine/quantities";
import type { StrengthFinding } from "./strength-finding.ts";

/** What the survey of the floor comes to, beside the lines of the maker's page. */
export interface Survey {
  readonly thickness: ThicknessStudy;
  /** one entry where both bases stand on the same concrete */
  readonly strength: readonly (StrengthFinding & { readonly under: string })[];
  readonly distances: readonly NearestDistance[];
  readonly cracks: readonly CrackFinding[];
}

/** The readings as statistics, beside the lowest reading that decides. */
export interface ThicknessStudy {
  readonly groups: readonly ThicknessGroup[];
  /** readings left out, with the reason */
  readonly refused: readonly string[];
  /** the builder's tolerance against the thickness named for the slab; says nothing on the maker's minimum */
  readonly order: readonly Term[];
}

/** One set of readings taken together: those at one base, or all that count for the slab. */
export interface ThicknessGroup {
  readonly name: string;
  readonly count: number;
  /** of these, readings that say only "at least" or "at most" */
  readonly open: number;
  /** mean, spread and lower bound; empty where they must not be formed */
  readonly terms: readonly Term[];
  readonly bound: Term | undefined;
  readonly unable: Unable | undefined;
  /** whether the bound reaches the maker's thickness, or how many more holes would do it, in one sentence */
  readonly more: string | undefined;
  /** two levels that must not be averaged */
  readonly levels: LevelChange | undefined;
}

/** Two levels among readings that a mean would hide, mm. */
export interface LevelChange {
  /** "step": a straight line in plan parts the two; "mixed": it is not known where the one ends */
  readonly kind: "step" | "mixed";
  readonly low: number;
  readonly high: number;
  readonly words: string;
}

export type NearKind = "edge" | "joint" | "crack" | "pipe" | "wall";

/** The nearest line of one kind to one base: from its anchors and from its plate. */
export interface NearestDistance {
  readonly side: string;
  readonly kind: NearKind;
  /** e.g. "saw cut J2" */
  readonly to: string;
  /** undefined without a hole pattern */
  readonly anchor: { readonly id: string; readonly distance: Term } | undefined;
  /** 0 where the line runs under the plate; undefined without a plate outline */
  readonly plate: Term | undefined;
}

/** A crack as it bears on the lift: how it looks, whether it grows, and how near it comes to a base plate. */
export interface CrackFinding {
  readonly name: string;
  /** hairline: no wider than tests of anchors in cracked concrete open it; wide: ask why; unknown: nobody measured */
  readonly look: "hairline" | "open" | "wide" | "stepped" | "unknown";
  readonly growth: "grows" | "still" | "not-watched";
  /** nearest base plate, mm; undefined without a plan of the bases */
  readonly nearest: { readonly side: string; readonly distance: number } | undefined;
  readonly words: string;
}
