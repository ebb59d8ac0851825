import type { Assessment } from "@floorworthy/assess";
import type { Point, Polygon, Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { boundsOf } from "../drawing/hatch.ts";

/** Walls are drawn this thick, outward from the floor, mm. */
export const WALL = 140;

const finite = (p: Point) => Number.isFinite(p.x) && Number.isFinite(p.y);

/** The slab's edge, or where it is not known a metre around what is known; undefined when nothing is. */
export const floorOutline = (
  job: Job,
  { layout }: Assessment,
): { outline: Polygon; known: "known" | "not-known" } | undefined => {
  const outline = layout.outline ?? job.bay.outline;
  if (outline && outline.length > 2 && outline.every(finite)) return { outline, known: "known" };
  const points = [...layout.bases.flatMap((b) => b.outline), ...layout.zones.flatMap((z) => z.outline)].filter(finite);
  if (!points.length) return undefined;
  const { x0, y0, x1, y1 } = boundsOf(points);
  const r = { x0: x0 - 1000, y0: y0 - 1000, x1: x1 + 1000, y1: y1 + 1000 };
  return { outline: corners(r), known: "not-known" };
};

export const corners = ({ x0, y0, x1, y1 }: Rect): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** Everything that must be on the plan. */
export const planExtents = (job: Job, assessment: Assessment, outline: Polygon): Rect => {
  const around = (p: Point) => [
    { x: p.x - WALL, y: p.y - WALL },
    { x: p.x + WALL, y: p.y + WALL },
  ];
  return boundsOf(
    [
      ...outline,
      ...job.bay.walls.flatMap((wall) => [...around(wall.from), ...around(wall.to)]),
      ...assessment.layout.bases.flatMap((base) => base.outline),
      ...assessment.layout.zones.flatMap((zone) => zone.outline),
      ...job.bay.doors.flatMap((door) => [...around(door.from), ...around(door.to)]),
      ...[...job.bay.posts, ...job.bay.obstacles].flatMap((thing) => thing.outline),
      ...job.floor.joints.flatMap((joint) => [joint.from, joint.to]),
      ...[...job.floor.cracks, ...job.floor.pipes].flatMap(({ line }) => line),
      ...job.floor.readings.flatMap(({ at }) => at ?? []),
    ].filter(finite),
  );
};
