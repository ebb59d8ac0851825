import { type Unable, unable } from "../quantities/workings.ts";
import type { LiftFootprint, Turn } from "./lift-footprint.ts";
import type { Clear, Obstacle, Room } from "./obstacle.ts";

/** The first thing that keeps the question from having an answer, in words; undefined when there is none. */
export const inputFault = (
  footprint: LiftFootprint,
  room: Room,
  obstacles: readonly Obstacle[],
  turns: readonly Turn[],
  tolerance: number,
): Unable | undefined => {
  const fault = (reason: string): Unable => unable("placement", reason);
  if (!(tolerance > 0)) return fault("the tolerance of rounded corners must be more than 0");
  if (room.outline.length < 3) return fault("the room has no area: its outline needs three corners");
  const { anchors, plates, body, vehicle, path } = footprint;
  const driven = [...(vehicle ? [vehicle] : []), ...(path ? [path] : [])];
  if ([body, ...plates, ...driven].some((p) => p.length < 3))
    return fault("a base plate, the lift's body or the vehicle has no area: each outline needs three corners");
  const shapes = obstacles.map(({ shape }) => ("a" in shape ? [shape.a, shape.b] : shape));
  const empty = obstacles.find((_, i) => shapes[i]!.length === 0);
  if (empty) return fault(`${empty.name} has no shape`);
  const numbers = [anchors, body, room.outline, ...plates, ...driven, ...shapes].flat();
  if (numbers.some(({ x, y }) => !Number.isFinite(x + y)) || turns.some(({ angle }) => !Number.isFinite(angle)))
    return fault("a coordinate or an angle is not a number");
  const wrong = [{ name: "the room", clear: room.clear }, ...obstacles].find(({ clear }) => !sound(clear));
  return wrong && fault(`a clearance of ${wrong.name} is not a length of 0 or more`);
};

const sound = (clear: Clear): boolean =>
  Object.values(clear).every((v) => v === undefined || (Number.isFinite(v) && v >= 0));
