/** Lines tell apart by width and rhythm; the one accent only repeats what the rhythm already says. */
export interface Pen {
  /** mm of paper */
  readonly width: number;
  /** lengths of dash and gap in turn, mm of paper; empty = continuous */
  readonly dashes: readonly number[];
  readonly ink: "ink" | "accent";
}

const pen = (width: number, dashes: readonly number[] = [], ink: Pen["ink"] = "ink"): Pen => ({ width, dashes, ink });

export const pens = {
  edge: pen(0.5),
  wall: pen(0.35),
  pad: pen(0.45),
  plate: pen(0.6),
  anchor: pen(0.3),
  thin: pen(0.13),
  hatch: pen(0.1),
  dimension: pen(0.13),
  tick: pen(0.35),
  frame: pen(0.3),
  rule: pen(0.15),
  "centre-line": pen(0.13, [6, 0.8, 0.8, 0.8]),
  hidden: pen(0.25, [1.6, 0.9]),
  "saw-cut": pen(0.3, [4, 0.9, 0.5, 0.9]),
  construction: pen(0.5, [4, 0.9, 0.5, 0.9]),
  isolation: pen(0.6, [1.2, 1.2]),
  planned: pen(0.3, [2.4, 1.2]),
  crack: pen(0.35),
  pipe: pen(0.35, [3, 0.8]),
  window: pen(0.25, [1.2, 0.8]),
  "keep-clear": pen(0.35, [0.2, 0.9], "accent"),
  warning: pen(0.45, [], "accent"),
} as const satisfies Record<string, Pen>;

export type PenName = keyof typeof pens;

/** Ink colours: sRGB, dark enough on white for small print. */
export const inks = { ink: "#111111", accent: "#9a2f14", paper: "#ffffff" } as const;
