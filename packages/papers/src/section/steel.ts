import { windowMargin } from "@floorworthy/assess/order";
import type { AnchorProductSheet, Bars } from "@floorworthy/job";
import { nothing, type Part } from "../plan/part.ts";
import { printLength, type UnitSystem } from "../print/measure.ts";
import type { Cut } from "./cut.ts";

/** Anchors to their embedment; a stub where the embedment is not known. */
export const anchorsPart = (
  cut: Cut,
  product: AnchorProductSheet,
  concrete: number | undefined,
  plate: number,
  units: UnitSystem,
): Part => {
  const places = cut.base?.anchors ?? [];
  if (!places.length) return nothing;
  const stated = [product.nominalEmbedment, product.effectiveEmbedment].find((q) => q.known);
  const embedment = stated?.known ? stated.value : undefined;
  const tip = embedment ?? 50;
  const last = places.at(-1)!;
  const left = embedment !== undefined && concrete !== undefined ? concrete - embedment : undefined;
  return {
    items: places.flatMap((x) => [
      {
        kind: "line",
        tag: "anchors",
        from: { x, y: -plate - 35 },
        to: { x, y: tip },
        pen: embedment === undefined ? "hidden" : "plate",
      } as const,
      {
        kind: "line",
        tag: "anchors",
        from: { x: x - 14, y: -plate - 12 },
        to: { x: x + 14, y: -plate - 12 },
        pen: "plate",
      } as const,
    ]),
    wanted: [
      {
        tag: "figures",
        words: embedment === undefined ? "embedment not known" : `embedded ${printLength(embedment, units)}`,
        lettering: "regular",
        at: { x: last, y: tip * 0.6 },
      },
      ...(left !== undefined && left > 0
        ? [
            {
              tag: "figures",
              words: `${printLength(left, units)} of concrete below`,
              lettering: "regular",
              at: { x: places[0]!, y: tip },
            } as const,
          ]
        : []),
    ],
  };
};

/** Bars at their depth, left out within the clear window of the base. */
export const barsPart = (
  cut: Cut,
  bars: readonly Bars[],
  shape: {
    readonly side: number;
    readonly end: number;
    readonly pad: number;
    readonly slab: number;
    readonly x0: number;
    readonly x1: number;
  },
  units: UnitSystem,
): Part => {
  const drawn = bars.flatMap(({ size, spacing, depth }) => {
    if (!depth.known || !(depth.value < shape.pad)) return [];
    const inPad = depth.value > shape.slab;
    const [from, to] = inPad ? [shape.x0 + 75, shape.x1 - 75] : [-shape.side, shape.end];
    const m = windowMargin(units);
    const window = cut.base && !inPad ? [cut.base.from - m, cut.base.to + m] : [];
    const stops = [from, ...window, to];
    const pieces = [];
    for (let i = 0; i + 1 < stops.length; i += 2) pieces.push([stops[i]!, stops[i + 1]!] as const);
    return [{ size, spacing, y: depth.value, pieces: pieces.filter(([a, b]) => b > a) }];
  });
  return {
    items: drawn.flatMap(({ y, pieces }) =>
      pieces.map(
        ([a, b]) => ({ kind: "line", tag: "bars", from: { x: a, y }, to: { x: b, y }, pen: "planned" }) as const,
      ),
    ),
    wanted: drawn.map(({ size, spacing, y, pieces }) => ({
      tag: "labels",
      words: `${size}${spacing.known ? ` at ${printLength(spacing.value, units)}` : ""}, ${printLength(y, units)} down`,
      lettering: "regular",
      at: { x: (pieces[0]?.[0] ?? 0) + 60, y },
    })),
  };
};
