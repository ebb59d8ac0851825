export type { Bill, BillLine } from "./bill.ts";
export { type CheapestPad, cheapestPad, type SearchOptions } from "./cheapest-pad.ts";
export { checkPad, type PadAnswer } from "./check-pad.ts";
export {
  designWords,
  noReinforcement,
  type PadDesign,
  type PadJoin,
  type PadShape,
  type PadSize,
  padStrength,
  type Reinforcement,
  usualBars,
  usualFibre,
} from "./design.ts";
export type { PadFigures } from "./figures.ts";
export { type GridFound, type GridTask, type Judged, searchGrid } from "./grid-search.ts";
export { checkHabit, type DepthRow, depthRows, habitDesign } from "./habit.ts";
export { type PadPart, padParts } from "./outlines.ts";
