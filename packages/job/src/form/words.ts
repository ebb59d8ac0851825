/** Word lists used by more than one part of the form. */
export const reinforcementWords = {
  none: "plain concrete",
  mesh: "welded wire",
  bars: "reinforcing bars",
  fibre: "fibres in the mix",
} as const;

export const existenceWords = {
  standing: "is there",
  proposed: "is planned",
} as const;

export const findingWords = {
  none: "there are none",
  located: "there are some, and their lines are known and marked",
  "not-located": "there are some, or may be, and nobody knows where",
} as const;
