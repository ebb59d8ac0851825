import type { PlacedBase } from "@floorworthy/assess";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Ground } from "../drawing/drawing.ts";
import { boundsOf } from "../drawing/hatch.ts";

/** Where the whole mark does not fit beside a hole, its number does. mm of paper. */
const NARROW = 24;

/** What the marks of one base have in common: LFP of LFP1 to LFP4. */
const prefixOf = ({ side, anchors: [first] }: PlacedBase, marks: ReadonlyMap<string, string>): string => {
  if (!first) return side;
  const mark = marks.get(first.id) ?? first.id;
  return mark.slice(0, mark.length - first.id.slice(side.length).trim().length);
};

/** Which hole has which name: one base from above, the back wall up, as large as the place allows; not to a named scale. */
export const plateKey = (base: PlacedBase, marks: ReadonlyMap<string, string>, zone: Rect): Ground => {
  const places = [...base.outline, ...base.anchors.map(({ at }) => at)];
  const box = boundsOf(places.length ? places : [base.centre]);
  const letters = 2.1;
  const narrow = zone.x1 - zone.x0 < NARROW && base.anchors.some(({ id }) => (marks.get(id) ?? id).length > 3);
  const free = { width: zone.x1 - zone.x0 - 2, height: zone.y1 - zone.y0 - letters * 2.4 };
  const scale = Math.max((box.x1 - box.x0) / free.width, (box.y1 - box.y0) / free.height, 1);
  const k = 1 / scale;
  const middle = { x: (box.x0 + box.x1) / 2, y: (box.y0 + box.y1) / 2 };
  const origin = {
    x: (zone.x0 + zone.x1) / 2 - middle.x * k,
    y: zone.y0 + letters * 1.6 + free.height / 2 - middle.y * k,
  };
  return {
    kind: "ground",
    tag: "plate-key",
    name: `key-${base.side}`,
    scale,
    written: "",
    origin,
    items: [
      { kind: "polygon", tag: "plate", points: base.outline, pen: "wall", hatch: "none" },
      { kind: "symbol", tag: "centres", name: "centre", at: base.centre, size: 2.4 },
      ...base.anchors.flatMap(({ id, at }) => [
        { kind: "symbol", tag: "anchors", name: "anchor", at, size: 1.8 } as const,
        {
          kind: "text",
          tag: "names",
          at,
          nudge: { x: at.x > middle.x ? -1.5 : 1.5, y: 0.75 },
          words: narrow ? id.slice(base.side.length).trim() : (marks.get(id) ?? id),
          size: letters,
          align: at.x > middle.x ? "end" : "start",
          lettering: "bold",
          reads: "across",
        } as const,
      ]),
      {
        kind: "text",
        tag: "names",
        at: { x: middle.x, y: box.y0 },
        nudge: { x: 0, y: -1.1 },
        words: narrow ? `${prefixOf(base, marks)} ↑` : `${base.side}, back wall ↑`,
        size: 1.9,
        align: "middle",
        lettering: "regular",
        reads: "across",
      },
    ],
  };
};
