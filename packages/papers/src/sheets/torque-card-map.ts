import { baseName, type PlacedBase } from "@floorworthy/assess";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Item } from "../drawing/drawing.ts";
import { boundsOf } from "../drawing/hatch.ts";
import { words } from "./frame.ts";

/** Both base plates from above, not to scale with each other's distance, each anchor with its name and its place in the order. */
export const anchorMap = (
  bases: readonly PlacedBase[],
  order: readonly string[],
  marks: ReadonlyMap<string, string>,
  box: Rect,
): readonly Item[] => {
  const width = (box.x1 - box.x0) / Math.max(1, bases.length);
  return bases.flatMap((base, i) =>
    oneBase(base, order, marks, { ...box, x0: box.x0 + i * width, x1: box.x0 + (i + 1) * width }),
  );
};

const oneBase = (
  base: PlacedBase,
  order: readonly string[],
  marks: ReadonlyMap<string, string>,
  box: Rect,
): readonly Item[] => {
  const points = base.outline.length > 0 ? base.outline : base.anchors.map(({ at }) => at);
  if (points.length === 0) return [];
  const { x0, y0, x1, y1 } = boundsOf(points);
  const k = Math.min((box.x1 - box.x0 - 34) / (x1 - x0 || 1), (box.y1 - box.y0 - 11) / (y1 - y0 || 1));
  const middle = { x: (box.x0 + box.x1) / 2, y: (box.y0 + 5 + box.y1 - 5) / 2 };
  const place = (p: { x: number; y: number }) => ({
    x: middle.x + (p.x - (x0 + x1) / 2) * k,
    y: middle.y + (p.y - (y0 + y1) / 2) * k,
  });
  return [
    words("note-map", middle.x, box.y0 + 3, `${baseName(base.side)}; back wall this way up`, 2, { align: "middle" }),
    ...(base.outline.length > 0
      ? [
          {
            kind: "polygon" as const,
            tag: "bases",
            points: base.outline.map(place),
            pen: "plate" as const,
            hatch: "none" as const,
          },
        ]
      : []),
    ...base.anchors.flatMap(({ id, at }): Item[] => {
      const p = place(at);
      return [
        { kind: "symbol", tag: "anchors", name: "anchor", at: p, size: 2 },
        words("map", p.x, p.y - 1.7, `${order.indexOf(id) + 1}. ${marks.get(id) ?? id}`, 2.2, {
          align: "middle",
          lettering: "bold",
        }),
      ];
    }),
    words("note-map", middle.x, box.y1 - 1.5, "door", 2, { align: "middle" }),
  ];
};
