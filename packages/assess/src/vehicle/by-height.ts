import { type BaseReactions, boundReactions } from "@floorworthy/engine/frames";
import { isUnable, type Term, type Unable } from "@floorworthy/engine/quantities";
import type { MarginInputs } from "../margin/inputs.ts";

/** What comes down on both bases with the carriages at one height. mm, N, N·mm; lift axes. */
export interface HeightLoads {
  readonly height: number;
  readonly pads: "car" | "frame-truck";
  readonly left: Pick<BaseReactions["left"], "P" | "inwardMoment" | "foreAftMoment">;
  readonly right: Pick<BaseReactions["right"], "P" | "inwardMoment" | "foreAftMoment">;
  /** compression in the overhead beam, N */
  readonly strutForce: number;
  readonly terms: readonly Term[];
}

const STEPS = 4;

/** From pick-up to full rise in equal steps, weight shared evenly, the centre of gravity as far off the line as it may be. */
export const loadsByHeight = ({ frame, duty, soft }: MarginInputs, foreAft: number): HeightLoads[] | Unable => {
  const rows: HeightLoads[] = [];
  for (const pads of duty.pads)
    for (let step = 0; step <= STEPS; step++) {
      const height = duty.pickUpHeight + ((duty.fullRise - duty.pickUpHeight) * step) / STEPS;
      const reactions = boundReactions(
        { ...frame, reach: pads.reach },
        { weight: duty.weight, dynamicFactor: duty.dynamicFactor, leftShare: 0.5, foreAft, carriageHeight: height },
        soft,
      );
      if (isUnable(reactions)) return reactions;
      const { left, right, strutForce, terms } = reactions;
      rows.push({
        height,
        pads: pads.kind,
        left,
        right,
        strutForce,
        terms: [terms.left.P, terms.left.inwardMoment, terms.left.foreAftMoment],
      });
    }
  return rows;
};
