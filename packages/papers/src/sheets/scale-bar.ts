import type { Point } from "@floorworthy/engine/geometry";
import type { Item } from "../drawing/drawing.ts";
import type { UnitSystem } from "../print/measure.ts";

/** A bar to measure on a copy of any size. */
export const scaleBar = (at: Point, ratio: number, units: UnitSystem): readonly Item[] => {
  const step = units === "si" ? 1000 : 609.6;
  const count = Math.max(1, Math.min(5, Math.floor((32 * ratio) / step)));
  const x = (i: number) => at.x + (i * step) / ratio;
  return [
    ...Array.from({ length: count }, (_, i): Item => {
      const points = [
        { x: x(i), y: at.y },
        { x: x(i + 1), y: at.y },
        { x: x(i + 1), y: at.y + 1.1 },
        { x: x(i), y: at.y + 1.1 },
      ];
      return { kind: "polygon", tag: "scale-bar", points, pen: "thin", hatch: i % 2 ? "blank" : "ink" };
    }),
    ...[0, count].map(
      (i): Item => ({
        kind: "text",
        tag: "scale-bar",
        at: { x: x(i), y: at.y - 0.6 },
        words: units === "si" ? `${i} m` : `${i * 2} ft`,
        size: 1.9,
        align: i ? "end" : "start",
        lettering: "regular",
        reads: "across",
      }),
    ),
  ];
};
