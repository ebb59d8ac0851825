import type { Term } from "../quantities/index.ts";

/** What one column puts on the floor, in the column's own axes: u inward (toward the vehicle), v toward the door. */
export interface BaseLoad {
  /** N, downward positive */
  readonly P: number;
  /** N·mm; positive tips the column toward the vehicle, so it presses the inner edge and pulls the outer anchors */
  readonly inwardMoment: number;
  /** N·mm; positive presses the edge toward the door */
  readonly foreAftMoment: number;
  /** N, shear on the floor toward the vehicle */
  readonly inwardShear: number;
  /** N, shear on the floor toward the door */
  readonly foreAftShear: number;
  /** N·mm about the column's own axis, from u toward v */
  readonly twist: number;
}

/** Each quantity of a base load, unfolded. */
export type BaseTerms = { readonly [quantity in keyof BaseLoad]: Term };

/** Both columns and the force in the overhead beam. */
export interface BaseReactions {
  readonly left: BaseLoad;
  readonly right: BaseLoad;
  /** N, compression positive; 0 where nothing ties the heads */
  readonly strutForce: number;
  readonly terms: { readonly left: BaseTerms; readonly right: BaseTerms; readonly strutForce: Term };
}
