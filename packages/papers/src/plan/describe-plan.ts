import { type Assessment, baseName } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { boundsOf } from "../drawing/hatch.ts";
import { printFeet, printLength } from "../print/measure.ts";
import { nearestLine } from "./bases.ts";
import { floorOutline } from "./extents.ts";
import { sizeOf } from "./zones.ts";

/** The plan in words, for people who cannot see it. */
export const describePlan = (job: Job, assessment: Assessment): string => {
  const { units } = job;
  const unit = units === "si" ? " mm" : "";
  const floor = floorOutline(job, assessment);
  const b = floor && boundsOf(floor.outline);
  const { bases, zones } = assessment.layout;
  return [
    b
      ? `Plan of the bay from above, ${printFeet(b.x1 - b.x0, units)}${unit} wide and ${printFeet(b.y1 - b.y0, units)}${unit} deep.`
      : "Plan of the bay; its outline is not known.",
    ...bases.map((base) => {
      const reach = nearestLine(base, job.floor);
      return `The centre of the ${baseName(base.side)} is ${printFeet(base.centre.x, units)}${unit} from the left wall and ${printFeet(base.centre.y, units)}${unit} from the back wall${reach ? `, its nearest anchor ${printLength(reach.distance, units)} from a ${reach.what}` : ""}.`;
    }),
    ...zones
      .filter((z) => z.kind !== "slab")
      .map(
        (z) =>
          `${z.name}${z.state === "proposed" ? ", to be poured" : ""}: ${sizeOf(z.outline, units)}${z.thickness === undefined ? "" : `, ${printLength(z.thickness, units)} thick`}.`,
      ),
    `${job.floor.joints.length} joints and ${job.floor.cracks.length} cracks are shown.`,
  ].join(" ");
};
