import type { Check } from "@floorworthy/engine/quantities";

export interface HoleCheck extends Check {
  /** limit: over it nothing is drilled; advice: beside the anchor's own sheet */
  readonly weight: "limit" | "advice";
}

/** What a hole in section is made of, mm; undefined where nobody knows. */
export interface StackValues {
  readonly h1: number | undefined;
  readonly hnom: number | undefined;
  readonly d0: number | undefined;
  readonly h: number | undefined;
  readonly cover: number | undefined;
  readonly length: number | undefined;
  /** plate, washer, nut and threads */
  readonly above: number | undefined;
  readonly planned: number | undefined;
  readonly room: number | undefined;
}
