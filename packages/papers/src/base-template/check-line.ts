import type { Point } from "@floorworthy/engine/geometry";
import type { Item } from "../drawing/drawing.ts";

const LENGTH = 100;

/** A line of exactly 100 mm that shows whether the printer has scaled the page. */
export const checkLine = ({ x, y }: Point): readonly Item[] => [
  { kind: "line", tag: "check-line", from: { x, y }, to: { x: x + LENGTH, y }, pen: "wall" },
  ...[0, 50, LENGTH].map(
    (d): Item => ({
      kind: "line",
      tag: "check-line",
      from: { x: x + d, y: y - 1.5 },
      to: { x: x + d, y: y + 1.5 },
      pen: "wall",
    }),
  ),
  {
    kind: "text",
    tag: "note-check-line",
    at: { x, y: y - 2.6 },
    words: "This line is 100 mm. If a rule says otherwise, print again at 100 %.",
    size: 2.3,
    align: "start",
    lettering: "regular",
    reads: "across",
  },
];
