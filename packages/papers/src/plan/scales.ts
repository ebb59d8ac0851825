/** The scales a rule in the trade's pocket has, largest first. */
import type { UnitSystem } from "../print/measure.ts";

export interface Scale {
  /** mm of the model per mm of paper */
  readonly ratio: number;
  readonly written: string;
}

const foot = (ratio: number, inches: string): Scale => ({ ratio, written: `${inches} in = 1 ft` });
const metric = (ratio: number): Scale => ({ ratio, written: `1:${ratio}` });

export const scales: Readonly<Record<UnitSystem, readonly Scale[]>> = {
  "inch-pound": [
    foot(8, "1 1/2"),
    foot(12, "1"),
    foot(16, "3/4"),
    foot(24, "1/2"),
    foot(32, "3/8"),
    foot(48, "1/4"),
    foot(64, "3/16"),
    foot(96, "1/8"),
    foot(128, "3/32"),
    foot(192, "1/16"),
    foot(384, "1/32"),
    foot(768, "1/64"),
  ],
  si: [10, 15, 20, 25, 50, 75, 100, 200, 500, 1000].map(metric),
};

/** The largest standard scale at which width × height mm of the model fit the paper; the smallest one when none does. */
export const scaleToFit = (
  width: number,
  height: number,
  paper: { width: number; height: number },
  units: UnitSystem,
): Scale =>
  scales[units].find(({ ratio }) => width / ratio <= paper.width && height / ratio <= paper.height) ??
  scales[units].at(-1)!;
