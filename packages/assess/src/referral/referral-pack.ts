import type { Term } from "@floorworthy/engine/quantities";
import type { CaseReactions, Layout } from "../assessment.ts";

/** What a licensed engineer needs to begin: the question, what is known and how, the loads, what nobody has verified. */
export interface Referral {
  readonly format: 1;
  readonly title: string;
  readonly date: string | undefined;
  /** why it is referred, in one sentence */
  readonly sentence: string;
  readonly question: { readonly asked: readonly string[]; readonly notAsked: readonly string[] };
  /** the stops that led here; empty where the pack is made of one's own accord */
  readonly stops: readonly { readonly reason: string; readonly next: string }[];
  /** where no stop stands: the lines of the maker's page that are not met or not shown */
  readonly reasons: readonly string[];
  readonly site: readonly KnownFact[];
  readonly floor: readonly KnownFact[];
  readonly readings: readonly KnownFact[];
  readonly lift: readonly KnownFact[];
  readonly anchors: readonly KnownFact[];
  readonly vehicles: readonly KnownFact[];
  readonly loads: ReferralLoads;
  readonly layout: Layout;
  readonly photographs: readonly string[];
  readonly notVerified: readonly string[];
  /** what the customer was told; to be dated and initialled by hand */
  readonly told: readonly string[];
  /** the parts of an engineer's package, and how far this pack fills them */
  readonly parts: readonly PackPart[];
  readonly cautions: readonly string[];
}

/** A fact ready to print, and how it is known. */
export interface KnownFact {
  readonly what: string;
  readonly value: string;
  readonly basis: string;
}

export interface PackPart {
  readonly part: string;
  readonly filled: "filled" | "in part" | "for the engineer";
}

/** Loads on the floor: demand only, never a check of this floor. N and N·mm in plan axes. */
export interface ReferralLoads {
  /** where they come from */
  readonly from: "computed beside the maker's page" | "the maker's reactions" | "statics of the lift" | "not computed";
  readonly words: string;
  readonly assumed: readonly string[];
  readonly cases: readonly CaseReactions[];
  /** published weights, always given where known */
  readonly weights: readonly Term[];
}
