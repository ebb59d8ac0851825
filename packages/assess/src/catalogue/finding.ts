import type { Term } from "@floorworthy/engine/quantities";
import type { Lift } from "@floorworthy/job";
import type { MarginAnswer, Outcome, PageAnswer } from "../assessment.ts";

/** What it would take for this lift to stand here. */
export interface NextStep {
  readonly kind: "nothing" | "show" | "move" | "wait" | "pour" | "engineer" | "another-bay";
  readonly words: string;
  /** concrete to order for the smallest remedy */
  readonly volume?: Term;
  /** money only where the job has quotes of its own */
  readonly cost?: Money;
}

/** Money at the job's own quotes. */
export interface Money {
  readonly value: number;
  readonly currency: string;
  readonly words: string;
  readonly worked: string;
}

/** One lift against one floor, at its full rated load: both answers, never merged, and what the next step would take. */
export interface LiftFinding {
  readonly name: string;
  readonly kind: Lift["kind"];
  readonly rated: Lift["rated"];
  readonly anchoring: "anchored" | "loose";
  readonly page: PageAnswer["verdict"];
  readonly margin: MarginAnswer["verdict"];
  readonly outcome: Outcome;
  /** may-stand: accept or accept-if where it is wanted; after-move: once moved as said */
  readonly standing: "may-stand" | "after-move" | "not-yet" | "no";
  readonly sentence: string;
  readonly reasons: readonly string[];
  readonly conditions: readonly string[];
  readonly next: NextStep;
  /** vehicles of the job that weigh more than it may lift */
  readonly tooHeavy: readonly string[];
}
