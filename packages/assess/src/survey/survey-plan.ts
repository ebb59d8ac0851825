import type { Point } from "@floorworthy/engine/geometry";
import type { Term, Unable } from "@floorworthy/engine/quantities";

/** Where to drill, how deep, what to write down, and what stops it. Plain data; places are mm in the plan. */
export interface SurveyPlan {
  readonly format: 1;
  readonly title: string;
  /**
   * `holes`: those listed; `no-holes-needed`: the file answers already; `nothing-to-drill`: the floor is still to be
   * poured; `forbidden`: a stop stands, and no place for a hole is named
   */
  readonly drilling: "holes" | "no-holes-needed" | "nothing-to-drill" | "forbidden";
  /** the answer in one sentence */
  readonly sentence: string;
  /** holes around the bases, or a grid over the middle of the bay while the lift has no place */
  readonly by: "bases" | "grid";
  readonly holes: readonly SurveyHole[];
  /** places that need no hole, and what answers there */
  readonly answered: readonly { readonly where: string; readonly by: string }[];
  /** places where no lawful hole was found, and why */
  readonly dropped: readonly { readonly where: string; readonly why: string }[];
  /** how a hole moves when its first place is not lawful */
  readonly rule: string;
  /** the bit's mark from its tip; Unable where the maker's least thickness is not known */
  readonly mark: Term | Unable;
  readonly bit: Term;
  /** what stands in the way of drilling, and what to do instead */
  readonly instead: readonly string[];
  /** looked at before the first hole: with one of these open there is no hole */
  readonly first: readonly Look[];
  /** what to write down for each hole */
  readonly record: readonly string[];
  /** what ends the drilling at once */
  readonly stops: readonly string[];
  readonly edgeReading: string;
  readonly cautions: readonly string[];
  /** other facts to bring home from the same visit */
  readonly others: readonly Look[];
}

/** Something to look at, and how. */
export interface Look {
  readonly what: string;
  readonly how: string;
}

export interface SurveyHole {
  readonly number: number;
  readonly at: Point;
  /** in words: "left base, back left corner" */
  readonly where: string;
  /** the base it speaks for; undefined in mid-bay and in a grid */
  readonly side: string | undefined;
  readonly reason: string;
  /** how it moved from its first place, and what was in the way */
  readonly moved: string | undefined;
  readonly fromLeftWall: Term;
  readonly fromBackWall: Term;
  /** everything it keeps clear of, the tightest first */
  readonly keeps: readonly Kept[];
}

/** One distance kept: asked and found. */
export interface Kept {
  readonly what: string;
  readonly asked: Term;
  readonly found: Term;
}
