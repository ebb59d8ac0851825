import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Job, Lift, Support } from "@floorworthy/job";
import type { Layout, PlacedBase } from "./assessment.ts";

/** Angle of the column line from the plan's x-axis, rad; 0 with the columns across the bay. */
export const liftTurn = (job: Job): number => {
  if (!job.position) return 0;
  const { left, right } = job.position;
  return Math.atan2(right.y - left.y, right.x - left.x);
};

/** Half-way between the two columns: where the supports of other lifts are measured from. */
export const liftOrigin = ({ position }: Job): Point | undefined =>
  position && { x: (position.left.x + position.right.x) / 2, y: (position.left.y + position.right.y) / 2 };

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

/** Two columns, or the supports of another kind of lift; a one-post lift without them stands at `left` and looks at `right`. */
export const placedBases = (job: Job): PlacedBase[] => {
  const { position, lift } = job;
  if (!position) return [];
  const turn = liftTurn(job);
  if (lift.kind !== "two-post") {
    const origin = liftOrigin(job)!;
    if (lift.supports.length > 0) return lift.supports.map((support) => placedSupport(lift, support, origin, turn));
    if (lift.kind === "one-post") return [{ ...placedBase(lift, "left", position.left, turn), side: "column" }];
  }
  return (["left", "right"] as const).map((side) => placedBase(lift, side, position[side], turn));
};

/** Every anchor by name, wherever the lift stands: L1 and R1 of two columns, or each post with the number of its hole. */
export const anchorNames = ({ lift }: Pick<Job, "lift">): string[] => {
  const { kind, supports, anchors } = lift;
  const bases =
    kind !== "two-post" && supports.length > 0
      ? supports.map(({ id }) => `${id} `)
      : kind === "one-post"
        ? ["L"]
        : ["L", "R"];
  return bases.flatMap((base) => anchors.holes.map(({ id }) => `${base}${id}`));
};

/** Angle of a base's own axes from the plan's x-axis, rad: the lift's turn and its column's, mirrored on the right. */
export const baseAxis = (job: Job, side: string): number => {
  const { columnTurn, supports, kind } = job.lift;
  const asDrawn = kind !== "two-post" && supports.length > 0;
  const own = columnTurn.known && !asDrawn ? columnTurn.value : 0;
  return liftTurn(job) + (side === "right" ? -own : own);
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

/** What a support stands on the floor with: its own outline in the lift's plan, or the base plate, u turned toward the middle. */
const placedSupport = (lift: Lift, { id, at, outline }: Support, origin: Point, turn: number): PlacedBase => {
  const [cx, cy] = rotate(at.x, at.y, turn);
  const centre = { x: origin.x + cx, y: origin.y + cy };
  const side = at.x > 0 ? "right" : "left";
  const place = (p: Point): Point => toPlan(p, side, centre, turn, 0);
  const own = (p: Point): Point => toPlan(p, "left", centre, turn, 0);
  const plate = (lift.base.outline ?? []).map(place);
  return {
    side: id,
    centre,
    outline: outline ? outline.map(own) : side === "left" ? plate : plate.toReversed(),
    anchors: lift.anchors.holes.map((hole) => ({ id: `${id} ${hole.id}`, at: place(hole.at) })),
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
