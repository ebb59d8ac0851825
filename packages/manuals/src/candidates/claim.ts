import type { FoundValue } from "../values/index.ts";
import type { Confidence, Remark } from "./candidate.ts";
import type { FieldName } from "./field-names.ts";

/** One line of the lift sheet that a statement fills, before it is compared with the rest of the manual. */
export interface Claim {
  readonly field: FieldName;
  readonly said: FoundValue | string;
  /** place in the statement */
  readonly from: number;
  readonly to: number;
  /** where the words that name it stand, when they stand elsewhere in the statement */
  readonly named?: readonly [from: number, to: number];
  readonly confidence: Confidence;
  readonly reasons: readonly string[];
  readonly remarks: readonly Remark[];
}
