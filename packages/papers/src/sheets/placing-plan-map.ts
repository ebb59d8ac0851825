import type { MapPoint, MarginMap } from "@floorworthy/assess/place";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Item } from "../drawing/drawing.ts";
import { boundsOf } from "../drawing/hatch.ts";
import { printFeet } from "../print/measure.ts";
import { rule, words } from "./frame.ts";

const CELL = { width: 8.4, height: 4.2 };
const SIDE = 11;
const SIZE = 1.9;

interface Cell {
  readonly column: number;
  readonly row: number;
  readonly worst: MapPoint;
}

/** The worst of every cell of a grid over all positions. */
const cellsOf = (points: readonly MapPoint[], box: Rect, columns: number, rows: number): readonly Cell[] => {
  const found = new Map<number, Cell>();
  for (const worst of points) {
    const column = Math.min(columns - 1, Math.floor(((worst.at.x - box.x0) / (box.x1 - box.x0 || 1)) * columns));
    const row = Math.min(rows - 1, Math.floor(((worst.at.y - box.y0) / (box.y1 - box.y0 || 1)) * rows));
    const before = found.get(row * columns + column);
    if (!before || (worst.ratio ?? 0) > (before.worst.ratio ?? 0))
      found.set(row * columns + column, { column, row, worst });
  }
  return [...found.values()];
};

const ratioText = (ratio: number | undefined): string =>
  ratio === undefined ? "?" : Number.isFinite(ratio) ? ratio.toFixed(2) : "over";

/**
 * The margin at the places where the lift may stand, as a table of numbers laid out as the bay is, back wall at the top:
 * figures only, so that nothing is lost in black and white; over 1 in bold and boxed.
 */
export const marginTable = (
  job: Job,
  map: MarginMap,
  box: Rect,
): { readonly items: readonly Item[]; readonly bottom: number } => {
  const bounds = boundsOf(map.points.map(({ at }) => at));
  const distinct = (values: readonly number[]): number => new Set(values.map((v) => Math.round(v / 10))).size;
  const columns = Math.max(
    1,
    Math.min(Math.floor((box.x1 - box.x0 - SIDE) / CELL.width), distinct(map.points.map((p) => p.at.x))),
  );
  const rows = Math.max(
    1,
    Math.min(Math.floor((box.y1 - box.y0 - 9) / CELL.height), distinct(map.points.map((p) => p.at.y))),
  );
  const whole = job.units === "si" ? 10 : 25.4;
  const left = box.x0 + SIDE;
  const top = box.y0 + 7.5;
  const place = (i: number, n: number, from: number, to: number): string =>
    printFeet(Math.round((from + ((to - from) * (n === 1 ? 0.5 : i)) / Math.max(1, n - 1)) / whole) * whole, job.units);
  const head = Array.from({ length: columns }, (_, i) => i).filter((i) => i % 2 === 0 || columns < 4);
  return {
    items: [
      words(
        "note-map",
        box.x0,
        box.y0 + 2.2,
        "Worst ratio of the margin, by the place of the lift's middle",
        SIZE + 0.2,
        {
          lettering: "bold",
        },
      ),
      ...head.map((i) =>
        words("note-map", left + (i + 0.5) * CELL.width, top - 1, place(i, columns, bounds.x0, bounds.x1), 1.75, {
          align: "middle",
        }),
      ),
      ...Array.from({ length: rows }, (_, i) =>
        words("note-map", left - 1, top + (i + 0.68) * CELL.height, place(i, rows, bounds.y0, bounds.y1), 1.75, {
          align: "end",
        }),
      ),
      rule(left, top, left + columns * CELL.width, top),
      rule(left, top, left, top + rows * CELL.height),
      ...cellsOf(map.points, bounds, columns, rows).flatMap(({ column, row, worst }): Item[] => {
        const [x, y] = [left + column * CELL.width, top + row * CELL.height];
        const over = (worst.ratio ?? 0) > 1;
        return [
          words("note-map", x + CELL.width / 2, y + 0.68 * CELL.height, ratioText(worst.ratio), SIZE, {
            align: "middle",
            lettering: over ? "bold" : "regular",
          }),
          ...(over
            ? [
                {
                  kind: "polygon",
                  tag: "over",
                  points: [
                    { x: x + 0.5, y: y + 0.5 },
                    { x: x + CELL.width - 0.5, y: y + 0.5 },
                    { x: x + CELL.width - 0.5, y: y + CELL.height - 0.5 },
                    { x: x + 0.5, y: y + CELL.height - 0.5 },
                  ],
                  pen: "rule",
                  hatch: "none",
                } as const,
              ]
            : []),
        ];
      }),
    ],
    bottom: top + rows * CELL.height + 1,
  };
};
