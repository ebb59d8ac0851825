import type { Term } from "../quantities/index.ts";
import type { Reaction } from "./reaction.ts";

/** One foot, post or frame end of a lift and what it puts on the floor. */
export interface SupportLoad {
  /** stable within the lift, e.g. "left-front" */
  readonly id: string;
  /** from the middle of the lift in plan axes of an unturned lift, mm */
  readonly x: number;
  readonly y: number;
  readonly reaction: Reaction;
}

/** One named case of a lift of any kind: the loads of all its supports at once. */
export interface SupportCase {
  /** stable, e.g. "diagonal-left-front" */
  readonly id: string;
  readonly name: string;
  /** "design" cases are judged; "information" is printed beside them and decides nothing by itself */
  readonly standing: "design" | "information";
  readonly supports: readonly SupportLoad[];
  /** what the case rests on, to be unfolded */
  readonly terms: readonly Term[];
}

/** A support that carries P only. */
export const resting = (P: number): Reaction => ({ P, Mx: 0, My: 0, Vx: 0, Vy: 0 });
