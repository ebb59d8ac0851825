import type { Dimension } from "@floorworthy/engine/quantities";
import type { Box } from "../glyphs/index.ts";
import type { FieldName } from "./field-names.ts";

/** How far a value read from a manual may be trusted before a person has looked at it. */
export type Confidence = "sure" | "likely" | "doubtful";

/** A number in base units (N, mm, MPa, d …); `low` to `high` where the manual gives a range. */
export interface NumberFound {
  readonly kind: "number";
  readonly dimension: Dimension;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A word of the lift sheet's list, or a text such as a mains supply. */
export interface WordFound {
  readonly kind: "word";
  readonly value: string;
}

/** Where a value stands in the manual. */
export interface Evidence {
  /** counted from 1 in the file */
  readonly page: number;
  /** the number printed on that page */
  readonly printed?: string;
  /** the line, and the value in it; points from the page's upper left corner */
  readonly box: Box;
  /** as printed */
  readonly line: string;
}

/** A wrong word, or a value that cannot be right, with what to do about it. */
export interface Remark {
  readonly code: RemarkCode;
  /** one sentence */
  readonly message: string;
  /** one sentence */
  readonly hint: string;
}

export type RemarkCode =
  | "tensile-for-compressive"
  | "pounds-of-concrete"
  | "cement-for-concrete"
  | "footing-for-pad"
  | "inch-pounds-of-torque"
  | "cube-strength"
  | "units-disagree"
  | "thinner-than-anchor"
  | "torque-outside-diameter"
  | "unusual-value"
  | "decimal-comma"
  | "no-unit"
  | "recognised"
  | "changed-by-note";

export interface Candidate {
  /** stable within one reading */
  readonly id: string;
  /** path in the lift sheet, such as asks.thickness */
  readonly field: FieldName;
  readonly found: NumberFound | WordFound;
  /** as the lift sheet writes it, with its unit */
  readonly written: string;
  /** the model it holds for; absent when it holds for every model of the manual */
  readonly model?: string;
  readonly evidence: Evidence;
  readonly confidence: Confidence;
  /** why it is not trusted more, or what it rests on; one sentence each */
  readonly reasons: readonly string[];
  readonly remarks: readonly Remark[];
  /** ids of candidates for the same field and model that say something else */
  readonly conflicts: readonly string[];
}
