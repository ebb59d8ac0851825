import type { Candidate } from "./candidates/candidate.ts";
import type { PageSource, Trouble } from "./glyphs/index.ts";

export interface PageFound {
  readonly number: number;
  readonly printed?: string;
  readonly width: number;
  readonly height: number;
  readonly source: PageSource;
}

/** A manual, read: every value with where it stands; nothing is taken yet. */
export type ManualReading =
  | {
      readonly ok: true;
      readonly pages: readonly PageFound[];
      /** pages that could not be read at all */
      readonly unread: readonly number[];
      /** names of the models the manual speaks of */
      readonly models: readonly string[];
      readonly candidates: readonly Candidate[];
    }
  | { readonly ok: false; readonly trouble: Trouble };
