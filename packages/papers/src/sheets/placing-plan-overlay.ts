import type { Placing } from "@floorworthy/assess/place";
import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { diagonalStrokes } from "../drawing/hatch.ts";
import type { Part } from "../plan/part.ts";
import { printFeet, printLength } from "../print/measure.ts";

type PlanItem = Part["items"][number];

/** Outline and holes as one ring, joined by cuts of no width, so that strokes end at every edge. */
const oneRing = (outline: Polygon, holes: readonly Polygon[]): Polygon => {
  const start = outline[0];
  if (!start) return [];
  return [...outline, ...holes.flatMap((hole) => [start, ...hole, hole[0] ?? start]), start];
};

const cross = (p: Point, r: number): PlanItem[] => [
  { kind: "line", tag: "middle", from: { x: p.x - r, y: p.y }, to: { x: p.x + r, y: p.y }, pen: "plate" },
  { kind: "line", tag: "middle", from: { x: p.x, y: p.y - r }, to: { x: p.x, y: p.y + r }, pen: "plate" },
];

/** Where the lift's middle may be (hatched), its wanted bases (dashed), the move, and what is in the way. `ratio`: mm of model per mm of paper. */
export const placingOverlay = (job: Job, placing: Placing, wantedBases: readonly Polygon[], ratio: number): Part => {
  const { proposed, wanted, blockers, answer } = placing;
  const stand = proposed?.stand ?? "as-wanted";
  const regions = placing.ways.find((way) => way.stand === stand)?.regions ?? [];
  const s = ratio;
  const hatched = regions.flatMap((region): PlanItem[] => [
    ...diagonalStrokes(oneRing(region.outline, region.holes), s).map(
      ([from, to]): PlanItem => ({ kind: "line", tag: "may-stand", from, to, pen: "hatch" }),
    ),
    ...[region.outline, ...region.holes].map(
      (points): PlanItem => ({ kind: "polygon", tag: "may-stand", points, pen: "thin", hatch: "none" }),
    ),
  ]);
  const moved = answer === "move" && wanted !== undefined && proposed !== undefined;
  return {
    items: [
      ...hatched,
      ...(moved
        ? wantedBases.map(
            (points): PlanItem => ({ kind: "polygon", tag: "wanted", points, pen: "hidden", hatch: "none" }),
          )
        : []),
      ...(moved
        ? [
            { kind: "line", tag: "move", from: wanted.middle, to: proposed.middle, pen: "plate" } as const,
            {
              kind: "circle",
              tag: "wanted",
              centre: wanted.middle,
              radius: 1.1 * s,
              pen: "thin",
              hatch: "none",
            } as const,
          ]
        : []),
      ...(proposed ? cross(proposed.middle, 2.2 * s) : []),
    ],
    wanted: [
      ...(proposed
        ? [
            {
              tag: "labels",
              words: moved ? `middle of the lift: ${shortMove(job, proposed.dx, proposed.dy)}` : "middle of the lift",
              lettering: "bold" as const,
              at: proposed.middle,
            },
          ]
        : []),
      ...(moved && wantedBases[0]?.[0]
        ? [{ tag: "labels", words: "as wanted", lettering: "regular" as const, at: wantedBases[0][0] }]
        : []),
      ...(placing.ways.find((way) => way.stand === stand)?.closed ?? []).slice(0, 3).map(({ at, blockers: by }) => ({
        tag: "labels",
        words: `closed: ${by[0]?.name ?? ""}`,
        lettering: "regular" as const,
        at,
      })),
      ...blockers.flatMap((b) =>
        b.at
          ? [
              {
                tag: "labels",
                words: `in the way as wanted: ${b.name}, ${printLength(Math.max(0, b.there), job.units)}${b.asked > 0 ? ` of ${printLength(b.asked, job.units)}` : ""}`,
                lettering: "regular" as const,
                at: b.at,
              },
            ]
          : [],
      ),
    ],
  };
};

/** The move as set out with a tape: "+3" y" would mean nothing to anybody; "3" to the door" does. */
const shortMove = ({ units }: Job, dx: number, dy: number): string => {
  const unit = units === "si" ? " mm" : "";
  const part = (d: number, words: string): string[] =>
    Math.abs(d) >= 0.5 ? [`${printFeet(Math.abs(d), units)}${unit} ${words}`] : [];
  const words = [
    ...part(dy, dy > 0 ? "to the door" : "to the back"),
    ...part(dx, dx > 0 ? "to the right" : "to the left"),
  ];
  return words.length > 0 ? `moved ${words.join(", ")}` : "not moved";
};
