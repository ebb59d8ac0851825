/**
 * Four pads under one body are one support too many. Equilibrium fixes the share of each column and the fore-aft
 * balance of the whole, and leaves one unknown free: two pads on one diagonal may press harder and the other two
 * less by the same moment. The bounds of that freedom are the three-pad cases, where one pad has just come free.
 */

/** Pressing of the four pads, N. "front" is toward the back wall (the vehicle's nose), "rear" toward the door. */
export interface PadLoads {
  readonly leftFront: number;
  readonly leftRear: number;
  readonly rightFront: number;
  readonly rightRear: number;
}

/** How a weight lies on four pads. */
export interface FourPads {
  /** N */
  readonly weight: number;
  /** share of the left pair, 0 to 1 */
  readonly leftShare: number;
  /** centre of gravity from the line half-way between the pads, mm, positive toward the rear pads */
  readonly foreAft: number;
  /** between front and rear pads, mm */
  readonly padSpacing: number;
}

/**
 * Pad loads when the left pair's share sits `crosswise` mm further to the rear than the whole weight does (see
 * `LiftLoad.crosswise`); 0 is the sharing of a body that twists freely.
 */
export const padLoads = ({ weight, leftShare, foreAft, padSpacing }: FourPads, crosswise: number): PadLoads => {
  const [L, R] = [leftShare * weight, (1 - leftShare) * weight];
  const left = 0.5 + (foreAft + crosswise) / padSpacing;
  const right = 0.5 + (foreAft - (R > 0 ? (crosswise * L) / R : 0)) / padSpacing;
  return { leftFront: L * (1 - left), leftRear: L * left, rightFront: R * (1 - right), rightRear: R * right };
};

/** The crosswise offsets, mm, between which no pad is pulled: at either end one pad (or two at once) carries nothing. */
export const admissibleCrosswise = ({ leftShare, foreAft, padSpacing }: FourPads): readonly [number, number] => {
  const half = padSpacing / 2;
  const ratio = leftShare > 0 ? (1 - leftShare) / leftShare : 0;
  // left pair: |foreAft + c| ≤ half; right pair: |foreAft − c / ratio| ≤ half
  return [Math.max(-half - foreAft, ratio * (foreAft - half)), Math.min(half - foreAft, ratio * (foreAft + half))];
};
