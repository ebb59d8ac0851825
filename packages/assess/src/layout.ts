import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Job, Lift } from "@floorworthy/job";
import type { Layout, PlacedBase } from "./assessment.ts";

/** Angle of the column line from the plan's x-axis, rad; 0 with the columns across the bay. */
export const liftTurn = (job: Job): number => {
  if (!job.position) return 0;
  const { left, right } = job.position;
  return Math.atan2(right.y - left.y, right.x - left.x);
};

/** The one plan that screen, paper and calculation read. */
export const layoutOf = (job: Job): Layout => ({
  outline: job.bay.outline,
  bases: placedBases(job),
  zones: job.floor.zones.map(({ name, outline, thickness, state, kind }) => ({
    name,
    outline,
    thickness: thickness.known ? thickness.value : undefined,
    state,
    kind,
  })),
});

export const placedBases = (job: Job): PlacedBase[] => {
  const { position, lift } = job;
  if (!position) return [];
  const turn = liftTurn(job);
  return (["left", "right"] as const).map((side) => placedBase(lift, side, position[side], turn));
};

const placedBase = (lift: Lift, side: "left" | "right", centre: Point, turn: number): PlacedBase => {
  const place = (p: Point): Point => toPlan(p, side, centre, turn, lift.columnTurn.known ? lift.columnTurn.value : 0);
  const outline = (lift.base.outline ?? []).map(place);
  return {
    side,
    centre,
    outline: side === "left" ? outline : outline.toReversed(),
    anchors: lift.anchors.holes.map(({ id, at }) => ({ id: `${side === "left" ? "L" : "R"}${id}`, at: place(at) })),
  };
};

/** A point of a base's (u, v) axes in the plan: turned with its column, mirrored on the right, turned with the lift. */
const toPlan = (p: Point, side: "left" | "right", centre: Point, turn: number, columnTurn: number): Point => {
  const [u, v] = rotate(p.x, p.y, columnTurn);
  const [x, y] = rotate(side === "left" ? u : -u, v, turn);
  return { x: centre.x + x, y: centre.y + y };
};

const rotate = (x: number, y: number, angle: number): [number, number] => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];

/** Bounding box of a polygon. */
export const boxOf = (polygon: Polygon) => ({
  x0: Math.min(...polygon.map((p) => p.x)),
  y0: Math.min(...polygon.map((p) => p.y)),
  x1: Math.max(...polygon.map((p) => p.x)),
  y1: Math.max(...polygon.map((p) => p.y)),
});
