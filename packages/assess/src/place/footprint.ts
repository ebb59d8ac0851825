import type { Point, Polygon, Rect } from "@floorworthy/engine/geometry";
import type { LiftFootprint } from "@floorworthy/engine/placement";
import type { Job, Lift, Position, Vehicle } from "@floorworthy/job";
import { boxOf, placedBases } from "../layout.ts";
import { practice } from "./practice.ts";

/** Middle of the lift and the angle of its column line from the plan's x-axis. */
export interface Pose {
  readonly middle: Point;
  readonly angle: number;
}

export const poseOf = ({ left, right }: Position): Pose => ({
  middle: { x: (left.x + right.x) / 2, y: (left.y + right.y) / 2 },
  angle: Math.atan2(right.y - left.y, right.x - left.x),
});

/** The lift as it stands at its pose, about its middle, with its longest vehicle and the way it is driven in. */
export const footprintOf = (
  job: Job,
  position: Position,
  wayIn: "driven-in" | "backed-in" | "not-looked-at" | "none",
): LiftFootprint => {
  const pose = poseOf(position);
  const { plates, anchors } = standing(job, position, pose);
  const box = boxOf(plates.flat());
  const half = job.lift.overallWidth.known ? job.lift.overallWidth.high / 2 : 0;
  const line = [-half, half].map((u) => rotate({ x: u, y: 0 }, pose.angle));
  const vehicle = vehicleBox(job.vehicles);
  const turn = (p: Point): Point => rotate(p, pose.angle);
  return {
    anchors,
    plates,
    body: rectangle(boxOf([...rectangle(box), ...line])),
    ...(vehicle ? { vehicle: rectangle(vehicle).map(turn) } : {}),
    ...(vehicle && wayIn === "driven-in" ? { path: rectangle({ ...vehicle, y1: farOut(job) }).map(turn) } : {}),
    ...(vehicle && wayIn === "backed-in" ? { path: rectangle({ ...vehicle, y0: -farOut(job) }).map(turn) } : {}),
  };
};

const standing = (job: Job, position: Position, { middle }: Pose) => {
  const local = (p: Point): Point => ({ x: p.x - middle.x, y: p.y - middle.y });
  const bases = placedBases({ ...job, position });
  return {
    anchors: bases.flatMap((base) => base.anchors.map(({ at }) => local(at))),
    plates: bases.flatMap((base) => (base.outline.length >= 3 ? [base.outline.map(local)] : [])),
  };
};

/** What of the lift's own shape is not known, in words; undefined when it can be placed. */
export const shapeMissing = (lift: Lift): string | undefined => {
  if (lift.supports.length > 0)
    return lift.supports.some((s) => (s.outline?.length ?? 0) >= 3) || lift.base.outline
      ? undefined
      : "what of the lift stands on the floor";
  return lift.base.outline ? undefined : "the base plate";
};

/** Nose at −y, tail at +y of an unturned lift; the centre of gravity on the column line. Undefined without lengths. */
export const vehicleBox = (vehicles: readonly Vehicle[]): Rect | undefined => {
  const boxes = vehicles.flatMap(({ length, noseToCentre, width }) => {
    if (!length.known) return [];
    const nose = noseToCentre.known ? noseToCentre.high : practice.centreTo * length.high;
    const tail = length.high - (noseToCentre.known ? noseToCentre.low : practice.centreFrom * length.high);
    return [{ nose, tail, half: (width.known ? width.high : practice.vehicleWidth) / 2 }];
  });
  if (boxes.length === 0) return undefined;
  const half = Math.max(...boxes.map((b) => b.half));
  return {
    x0: -half,
    x1: half,
    y0: -Math.max(...boxes.map((b) => b.nose)),
    y1: Math.max(...boxes.map((b) => b.tail)),
  };
};

const farOut = ({ bay }: Job): number => {
  const box = boxOf(bay.outline ?? [{ x: 0, y: 0 }]);
  return 2 * Math.hypot(box.x1 - box.x0, box.y1 - box.y0) + 1000;
};

export const rotate = ({ x, y }: Point, angle: number): Point => {
  const [c, s] = [neat(Math.cos(angle)), neat(Math.sin(angle))];
  return { x: c * x - s * y, y: s * x + c * y };
};

const neat = (v: number): number => (Math.abs(v - Math.round(v)) < 1e-12 ? Math.round(v) : v);

export const rectangle = ({ x0, y0, x1, y1 }: Rect): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];
