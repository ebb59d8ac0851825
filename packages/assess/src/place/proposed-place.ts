import { distance, type Point } from "@floorworthy/engine/geometry";
import { deepestPlace, nearestPlace } from "@floorworthy/engine/placement";
import type { Job, Position } from "@floorworthy/job";
import type { Constraint } from "./constraints.ts";
import type { Pose } from "./footprint.ts";
import { moveWords } from "./move-words.ts";
import type { PlaceMove, Stand, Way } from "./placing.ts";
import { practicalMark } from "./practical-mark.ts";
import type { SolvedWay } from "./solved-way.ts";
import { placeAt } from "./stands.ts";

export const moveOf = (job: Job, position: Position, pose: Pose, stand: Stand, middle: Point): PlaceMove => {
  const [dx, dy] = [middle.x - pose.middle.x, middle.y - pose.middle.y];
  return {
    ...placeAt(position, pose, stand, middle),
    dx,
    dy,
    distance: Math.hypot(dx, dy),
    words: moveWords(dx, dy, job.units),
  };
};

/** The place with most room in the area nearest to the wanted place, on a whole step from there where the room allows it. */
export const roomiestOf = (job: Job, way: Way, pose: Pose, moveTo: (p: Point) => PlaceMove): PlaceMove | undefined => {
  const own = way.regions[0];
  if (!own) return undefined;
  const { at, room } = own.roomiest;
  const step = job.units === "si" ? 10 : 12.7;
  const whole = (v: number, from: number): number => from + Math.round((v - from) / step) * step;
  return moveTo(room > step ? { x: whole(at.x, pose.middle.x), y: whole(at.y, pose.middle.y) } : at);
};

export const proposedOf = (
  job: Job,
  { placement, stand }: SolvedWay,
  pose: Pose,
  position: Position,
  nearest: Point,
  constraints: readonly Constraint[],
): Point => {
  if (distance(nearest, pose.middle) < 1e-9) return pose.middle;
  const left = placeAt(position, pose, stand, nearest).position.left;
  const practices = new Set(constraints.filter(({ standing }) => standing === "practice").map(({ id }) => id));
  const mark = practicalMark({
    placement,
    nearest,
    wanted: pose.middle,
    toLeft: { x: left.x - nearest.x, y: left.y - nearest.y },
    units: job.units,
    makers: ({ id, part }) => !practices.has(id) && (part === "anchors" || part === "plates"),
  });
  if (mark) return mark;
  const own = placement.regions.toSorted(
    (a, b) => distance(nearestPlace(nearest, a), nearest) - distance(nearestPlace(nearest, b), nearest),
  )[0];
  return (own && deepestPlace(own, 0.1)?.at) ?? nearest;
};
