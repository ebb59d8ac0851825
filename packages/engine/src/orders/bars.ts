/**
 * Deformed bars by their inch-pound number: nominal diameter, area and weight of ASTM A615 as tabulated in Concrete
 * Construction, "Rebar size and weights" [astm-a615]. The table holds in, in², lb/ft; the functions give base units.
 */
import { toBase } from "../quantities/index.ts";

export type BarSize = "#3" | "#4" | "#5" | "#6" | "#7" | "#8" | "#9" | "#10" | "#11";

const TABLE: Readonly<Record<BarSize, readonly [number, number, number]>> = {
  "#3": [0.375, 0.11, 0.376],
  "#4": [0.5, 0.2, 0.668],
  "#5": [0.625, 0.31, 1.043],
  "#6": [0.75, 0.44, 1.502],
  "#7": [0.875, 0.6, 2.044],
  "#8": [1, 0.79, 2.67],
  "#9": [1.128, 1, 3.4],
  "#10": [1.27, 1.27, 4.303],
  "#11": [1.41, 1.56, 5.313],
};

export const barSizes = Object.keys(TABLE) as readonly BarSize[];

/** mm */
export const barDiameter = (size: BarSize): number => toBase(TABLE[size][0], "in");

/** mm² */
export const barArea = (size: BarSize): number => toBase(TABLE[size][1], "in²");

/** N per mm of bar */
export const barWeight = (size: BarSize): number => toBase(TABLE[size][2], "lb/ft");

/** mm, π d */
export const barPerimeter = (size: BarSize): number => Math.PI * barDiameter(size);

/** Steel per width of bars at a spacing, mm²/mm. */
export const barsPerWidth = (size: BarSize, spacing: number): number => barArea(size) / spacing;
