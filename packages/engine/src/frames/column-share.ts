import type { ColumnFrame, LiftLoad } from "./column-frame.ts";
import type { ColumnAction } from "./strut-force.ts";
import type { Side } from "./to-plan.ts";

/** What one column takes of a lift load. */
export interface ColumnShare extends ColumnAction {
  readonly r: number;
  /** φ r W, N */
  readonly lifted: number;
  /** N, vertical couple of a lateral work force */
  readonly shifted: number;
  /** fore-aft offset of this column's share, mm */
  readonly y: number;
  /** fore-aft work force on this column, N, and its height, mm */
  readonly foreAftForce: number;
  readonly workHeight: number;
}

/** @param side - the right column sees a lateral work force from behind, and a crosswise offset reversed */
export const columnShare = (frame: ColumnFrame, load: LiftLoad, side: Side): ColumnShare => {
  const r = side === "left" ? load.leftShare : 1 - load.leftShare;
  const sign = side === "left" ? 1 : -1;
  const work = load.workForce;
  const workHeight = work?.height ?? load.carriageHeight;
  const lateral = work?.direction === "lateral" ? work.force : 0;
  const foreAftForce = work?.direction === "fore-aft" ? r * work.force : 0;
  const shifted = (-sign * lateral * (workHeight - load.carriageHeight)) / (frame.spacing - 2 * frame.reach);
  const lifted = load.dynamicFactor * r * load.weight;
  const crosswise = load.crosswise ?? 0;
  const across = side === "left" ? crosswise : r > 0 ? (-crosswise * load.leftShare) / r : 0;
  return {
    r,
    lifted,
    shifted,
    y: load.foreAft + across,
    foreAftForce,
    workHeight,
    couple: (lifted + shifted) * frame.reach,
    force: sign * r * lateral,
  };
};
