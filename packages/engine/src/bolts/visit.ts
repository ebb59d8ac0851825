import { nutTravel } from "./threads.ts";

/** One look at one anchor. What was not recorded is left out. */
export interface Visit {
  /** days since the anchor was set; visits in order */
  readonly day: number;
  /** turn of the nut that restored the setting torque, rad; left out: the nut was not touched */
  readonly nutTurn?: number;
  /** stud projection now less projection when set, mm */
  readonly rise?: number;
  /** torque at which the nut began to turn, N·mm */
  readonly torqueFound?: number;
}

/** What the visits of one anchor add up to, mm. */
export interface Movement {
  /** travel of the nut over all visits */
  readonly takeUp: number;
  /** latest recorded rise of the stud; undefined when never recorded */
  readonly rise: number | undefined;
}

export const totalMovement = (visits: readonly Visit[], pitch: number): Movement => ({
  takeUp: visits.reduce((sum, visit) => sum + nutTravel(visit.nutTurn ?? 0, pitch), 0),
  rise: visits.findLast((visit) => visit.rise !== undefined)?.rise,
});
