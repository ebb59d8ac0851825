import { baseName, type Column, columnsOf, type PlacedBase } from "@floorworthy/assess";
import { distance, nearestOnSegment, type Point } from "@floorworthy/engine/geometry";
import type { Job, Zone } from "@floorworthy/job";
import { printFeet, printLength, type UnitSystem } from "../print/measure.ts";
import { corners } from "./extents.ts";
import { jointDistance, keepClearOutline, windowOf } from "./keep-clear.ts";
import { nothing, type Part, together } from "./part.ts";

interface Reach {
  readonly from: Point;
  readonly to: Point;
  readonly distance: number;
  readonly what: "joint" | "crack" | "pad edge";
}

/** Sides of pads that are not one with their slab: a cold joint all round. */
const coldSides = (zones: readonly Zone[]) =>
  zones
    .filter(({ kind, tied }) => (kind === "pad" || kind === "strip") && tied.known && tied.value !== "cast-with")
    .flatMap(({ outline }) =>
      outline.map((a, i) => ({ a, b: outline[(i + 1) % outline.length]!, what: "pad edge" as const })),
    );

/** From the base's anchors (its corners when they are not known) to the nearest joint or crack. */
export const nearestLine = (base: PlacedBase, { joints, cracks, zones }: Job["floor"]): Reach | undefined => {
  const places = base.anchors.length ? base.anchors.map((anchor) => anchor.at) : base.outline;
  const lines = [
    ...joints.map(({ from, to }) => ({ a: from, b: to, what: "joint" as const })),
    ...coldSides(zones),
    ...cracks.flatMap(({ line }) => line.slice(1).map((b, i) => ({ a: line[i]!, b, what: "crack" as const }))),
  ];
  let best: Reach | undefined;
  for (const from of places)
    for (const { a, b, what } of lines) {
      const to = nearestOnSegment(from, { a, b });
      const d = distance(from, to);
      if (!best || d < best.distance) best = { from, to, distance: d, what };
    }
  return best;
};

/** Short distances in inches, long ones in feet and inches. */
const distanceWords = (mm: number, units: UnitSystem): string =>
  units === "si" || mm < 610 ? printLength(mm, units) : printFeet(mm, units);

/** Of one column only the foot that stands nearest to a line. */
const reachPart = (bases: readonly PlacedBase[], job: Job): Part => {
  const reach = bases
    .flatMap((base) => nearestLine(base, job.floor) ?? [])
    .toSorted((a, b) => a.distance - b.distance)[0];
  if (!reach || !(reach.distance > 1) || reach.distance > 2500) return nothing;
  const words = `${distanceWords(reach.distance, job.units)} to ${reach.what}`;
  const at = { x: (reach.from.x + reach.to.x) / 2, y: (reach.from.y + reach.to.y) / 2 };
  return {
    items: [
      {
        kind: "dimension",
        tag: "distances",
        axis: "aligned",
        from: reach.from,
        to: reach.to,
        base: 0,
        offsetPaper: 0,
        words,
        row: 0,
        size: 2,
      },
    ],
    wanted: [{ tag: "figures", words, lettering: "regular", at }],
  };
};

/** Signs shrink with the plan where it is small, so that a base stays readable. */
const signSize = (ratio: number, largest: number): number => largest * Math.min(1, Math.max(0.45, 64 / ratio));

const columnName = ({ name, bases }: Column): string =>
  name === undefined ? baseName(bases[0]!.side) : `${name} column`;

const namePart = (name: string, [first]: readonly PlacedBase[]): Part =>
  first
    ? {
        items: [],
        wanted: [{ tag: "labels", words: name, lettering: "bold", at: first.outline[0] ?? first.centre }],
      }
    : nothing;

const basePart = (base: PlacedBase, distanceToJoints: number, ratio: number, units: UnitSystem): Part => ({
  items: [
    {
      kind: "polygon",
      tag: "keep-clear",
      points: keepClearOutline(base, distanceToJoints),
      pen: "keep-clear",
      hatch: "none",
    },
    { kind: "polygon", tag: "windows", points: corners(windowOf(base, units)), pen: "window", hatch: "none" },
    { kind: "polygon", tag: "bases", points: base.outline, pen: ratio > 80 ? "wall" : "plate", hatch: "blank" },
    ...base.anchors.map(
      ({ at }) => ({ kind: "symbol", tag: "anchors", name: "anchor", at, size: signSize(ratio, 1.7) }) as const,
    ),
    { kind: "symbol", tag: "centres", name: "centre", at: base.centre, size: signSize(ratio, 3) },
  ],
  wanted: [],
});

export const basesPart = (bases: readonly PlacedBase[], job: Job, ratio: number): Part => {
  const { distance: toJoints } = jointDistance(job.lift, job.units);
  const [a, b] = [bases[0], bases[1]];
  const line =
    a && b ? [{ kind: "line", tag: "centres", from: a.centre, to: b.centre, pen: "centre-line" } as const] : [];
  const made = together([
    ...bases.map((base) => basePart(base, toJoints, ratio, job.units)),
    ...columnsOf(bases, job.lift).flatMap((column) => [
      namePart(columnName(column), column.bases),
      reachPart(column.bases, job),
    ]),
  ]);
  return { items: [...made.items, ...line], wanted: made.wanted };
};
