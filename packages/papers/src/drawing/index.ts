export type {
  Circle,
  Dimension,
  Drawing,
  Ground,
  Item,
  Label,
  Line,
  Polyline,
  Region,
  Sign,
  Words,
} from "./drawing.ts";
export { type Mark, marksOf, onPaper, type Placing } from "./marks.ts";
export { type Pen, type PenName, pens } from "./pens.ts";
export { type Obstacles, placeLabels, type Wanted } from "./place-labels.ts";
export { boxOfText, type Lettering, widthOfText } from "./text-width.ts";
export { wrapText } from "./wrap-text.ts";
