import type { Point } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import { poseOf, rotate } from "./footprint.ts";
import type { Place } from "./placing.ts";

/** The same job with its lift at another place; pads still to be poured under it move along. */
export const jobAt = (job: Job, { position }: Pick<Place, "position">): Job => {
  if (!job.position) return { ...job, position };
  const [from, to] = [poseOf(job.position), poseOf(position)];
  const move = (p: Point): Point => {
    const turned = rotate({ x: p.x - from.middle.x, y: p.y - from.middle.y }, to.angle - from.angle);
    return { x: to.middle.x + turned.x, y: to.middle.y + turned.y };
  };
  const zones = job.floor.zones.map((zone) =>
    zone.state === "proposed" && (zone.kind === "pad" || zone.kind === "strip")
      ? { ...zone, outline: zone.outline.map(move) }
      : zone,
  );
  return { ...job, position, floor: { ...job.floor, zones } };
};
