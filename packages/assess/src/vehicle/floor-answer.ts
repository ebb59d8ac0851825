import type { Unable } from "@floorworthy/engine/quantities";
import type { MarginCheck } from "../assessment.ts";
import type { HeightLoads } from "./by-height.ts";

export type GoverningSide = "left" | "right" | "both";

/** The floor under one vehicle at the worst end of every fact. */
export interface FloorUnder {
  readonly heights: readonly HeightLoads[];
  /** worst first */
  readonly checks: readonly MarginCheck[];
  /** holds: also in cracked concrete; thin: only in uncracked; short: not */
  readonly word: "holds" | "thin" | "short";
  /** the base with the highest ratio; "both" where they are alike */
  readonly side: GoverningSide | undefined;
  readonly unable: readonly Unable[];
}

/** holds: also in cracked concrete; thin: only in uncracked; short: not. */
export const wordOf = (checks: readonly MarginCheck[]): FloorUnder["word"] => {
  const all = (concrete: "cracked" | "uncracked") => checks.every((c) => c.concrete === concrete || c.ratio <= 1);
  return all("uncracked") ? "holds" : all("cracked") ? "thin" : "short";
};
