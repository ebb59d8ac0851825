const IN = 25.4;

/** Common practice, no source, unless said otherwise; the lift's manual and the anchor's sheet come first. mm. */
export const practice = {
  diagonals: 0.25 * IN,
  spacing: 0.125 * IN,
  holes: IN / 16,
  /** full threads beyond the nut */
  threads: 2,
  shimLimit: 0.5 * IN,
  /** concrete left under a hole: 2 hole diameters and at least this. From memory: European assessments of bonded anchors */
  coverLeast: 30,
} as const;
