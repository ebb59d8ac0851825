import type { Term } from "@floorworthy/engine/quantities";
import type { CoreTest } from "@floorworthy/job";

/** Compressive strength of the concrete under a base, MPa: what is shown for the page, what the margin may use. */
export interface StrengthFinding {
  /** undefined where nothing shows it */
  readonly shown: number | undefined;
  /** what the margin counts with at each end */
  readonly worst: number;
  readonly best: number;
  readonly why: string;
  /** where it comes from */
  readonly from: "ordered" | "cylinders" | "cores" | "papers" | "zone" | "nothing";
  /** the evidence cannot be stretched to more than this, MPa: a core far too weak */
  readonly atMost: number | undefined;
  /** the number that counts, unfolding to what was tested */
  readonly workings: Term;
  /** other readings of the same evidence, for information */
  readonly beside: readonly Term[];
  /** what is to be said with it: rebound hammer, few cores, misnamed figures */
  readonly notes: readonly string[];
  readonly tensileNote: string | undefined;
}

/** What one kind of evidence comes to; the notes on the whole floor are added by `strengthUnder`. */
export type Evidence = Omit<StrengthFinding, "tensileNote" | "notes"> & { readonly notes?: readonly string[] };

/** A core with its strength; sizes and moisture may still be unknown. */
export interface TestedCore extends CoreTest {
  readonly strength: Extract<CoreTest["strength"], { known: true }>;
}
