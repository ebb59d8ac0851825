/** What stopped the drill. */
export type Met = "bar" | "tendon" | "conduit" | "tube" | "metal" | "void";

export const metWords: Readonly<Record<Met, string>> = {
  bar: "a reinforcing bar, shown by a cover meter or the drawings",
  tendon: "a tendon or its sheath",
  conduit: "a conduit or cable",
  tube: "a tube or pipe",
  metal: "metal of unknown kind",
  void: "a hollow",
};

/** One hole that did not reach its depth. */
export interface Hit {
  /** as on the set-out, e.g. "R4" */
  readonly hole: string;
  /** mm */
  readonly depth: number;
  readonly met: Met;
  /** has the slab's owner agreed to cut one bar */
  readonly owner: "agrees" | "refuses" | "not-asked";
}
