import type { Point, Polygon } from "@floorworthy/engine/geometry";
import {
  type Clear,
  feasiblePositions,
  type LiftFootprint,
  type Obstacle,
  smallestMove,
} from "@floorworthy/engine/placement";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job, Position, Quantity } from "@floorworthy/job";
import { barriersFor } from "./barriers.ts";
import { boxOf, placedBases } from "./layout.ts";

/** Where the lift may stand instead, with the least move of both columns, mm; or what keeps it from standing anywhere. */
export type Shift =
  | { readonly found: "place"; readonly dx: number; readonly dy: number; readonly to: Position }
  | { readonly found: "nowhere"; readonly why: string };

/** Left between the vehicle and a wall or a closed door; common practice, no source. */
const BUMPER = 6 * 25.4;
const VEHICLE_WIDTH = 80 * 25.4;

/**
 * The smallest move that keeps every distance of the maker's page, and of what is given `also`, and still lets the vehicle
 * in; undefined without a plan.
 */
export const smallestShift = (job: Job, also: readonly Obstacle[] = []): Shift | undefined => {
  const { position, bay, lift } = job;
  if (!position || !bay.outline || !lift.base.outline) return undefined;
  const wanted = { x: (position.left.x + position.right.x) / 2, y: (position.left.y + position.right.y) / 2 };
  const places = feasiblePositions(
    footprintOf(job, wanted),
    { outline: bay.outline, clear: { anchors: asked(lift.asks.edge), vehicle: BUMPER } },
    [...obstaclesOf(job), ...also],
    [{ mirror: "as-drawn", angle: 0 }],
  );
  if (isUnable(places)) return { found: "nowhere", why: places.reason };
  const move = smallestMove(wanted, places);
  if (isUnable(move)) return { found: "nowhere", why: move.reason };
  const { dx, dy } = move;
  const by = (p: Point): Point => ({ x: p.x + dx, y: p.y + dy });
  return { found: "place", dx, dy, to: { left: by(position.left), right: by(position.right) } };
};

const asked = (...facts: Quantity[]): number => {
  const first = facts.find((fact) => fact.known);
  return first?.known ? first.high : 0;
};

/** As it stands now, about the middle between the columns; the vehicle's centre of gravity on the column line. */
const footprintOf = (job: Job, origin: Point): LiftFootprint => {
  const bases = placedBases(job);
  const local = (p: Point): Point => ({ x: p.x - origin.x, y: p.y - origin.y });
  const plates = bases.map((base) => base.outline.map(local));
  const vehicle = vehicleOf(job);
  return {
    anchors: bases.flatMap((base) => base.anchors.map(({ at }) => local(at))),
    plates,
    body: rectangle(boxOf(plates.flat())),
    ...(vehicle ? { vehicle } : {}),
  };
};

const vehicleOf = ({ vehicles }: Job): Polygon | undefined => {
  const boxes = vehicles.flatMap(({ length, noseToCentre }) =>
    length.known && noseToCentre.known ? [{ nose: noseToCentre.high, tail: length.high - noseToCentre.low }] : [],
  );
  if (boxes.length === 0) return undefined;
  const nose = Math.max(...boxes.map((b) => b.nose));
  const tail = Math.max(...boxes.map((b) => b.tail));
  return rectangle({ x0: -VEHICLE_WIDTH / 2, y0: -nose, x1: VEHICLE_WIDTH / 2, y1: tail });
};

const rectangle = ({ x0, y0, x1, y1 }: ReturnType<typeof boxOf>): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

const obstaclesOf = (job: Job): Obstacle[] => {
  const { asks } = job.lift;
  const distance = { edge: asked(asks.edge), joint: asked(asks.joint, asks.edge), crack: asked(asks.crack, asks.edge) };
  const bases = placedBases(job);
  const lines = (bases[0] ? barriersFor(job, bases[0]) : []).filter((barrier) => barrier.distance !== "edge");
  const solid = (id: string, name: string, shape: Polygon, clear: Clear): Obstacle => ({ id, name, shape, clear });
  return [
    ...lines.map(({ name, a, b, distance: kind }, i) => ({
      id: `line-${i}`,
      name,
      shape: { a, b },
      clear: { anchors: distance[kind] },
    })),
    ...job.floor.pipes.flatMap((pipe) =>
      pipe.line.slice(1).map((b, i) => ({
        id: `pipe-${pipe.name}-${i}`,
        name: pipe.name,
        shape: { a: pipe.line[i]!, b },
        clear: { anchors: asked(pipe.clear), plates: asked(pipe.clear) },
      })),
    ),
    ...[...job.bay.posts, ...job.bay.obstacles].map(({ name, outline }) =>
      solid(`solid-${name}`, name, outline, { plates: 0, vehicle: 0 }),
    ),
    ...walkway(job),
  ];
};

/** The way along the back wall is kept free of the vehicle. */
const walkway = ({ bay }: Job): Obstacle[] => {
  if (!bay.walkway.known || !bay.outline) return [];
  const { x0, x1, y0 } = boxOf(bay.outline);
  return [
    {
      id: "walkway",
      name: "walkway at the back",
      shape: rectangle({ x0, x1, y0, y1: y0 + bay.walkway.high }),
      clear: { vehicle: 0 },
    },
  ];
};
