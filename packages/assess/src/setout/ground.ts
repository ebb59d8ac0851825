import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { anchoring } from "../facts/anchoring.ts";

/** Marks may be struck while concrete hardens or a fact is looked up; holes may not be drilled. */
export type Drilling = "may-drill" | "marks-only";

export interface SettingGround {
  readonly drilling: Drilling;
  /** what comes before the first hole */
  readonly before: readonly string[];
}

const place = "set-out";

/**
 * Whether this job may be set out at all. Refused under every stop, where the lift has to move or the concrete is not there,
 * and while nobody has the anchor's own sheet.
 */
export const settingGround = (job: Job, assessment: Assessment): SettingGround | Unable => {
  const { stops, outcome, sentence, reasons, conditions } = assessment;
  if (stops.length > 0) return unable(place, stops.map(({ reason, next }) => `${reason} ${next}`.trim()).join(" "));
  const { sheet, kind } = job.lift.anchors.product;
  if (kind.known && kind.value === "cast-in")
    return unable(
      place,
      "Cast-in anchors are not drilled: they are held by the template while the concrete is placed.",
    );
  if (anchoring(job.lift) === "loose")
    return unable(
      place,
      "This lift stands without anchors: nothing is drilled. Mark the places of its feet on the floor.",
    );
  if (!(sheet.known && sheet.value === "in-hand"))
    return unable(
      place,
      `${sheet.known ? "The anchor's own sheet is missing." : "Nobody has said that the anchor's own sheet is in hand."} Hole, depth, embedment and torque are read from it, never from a picture or a habit: get the sheet of the very anchors in the box.`,
    );
  if (!job.position || assessment.layout.bases.every((base) => base.anchors.length === 0))
    return unable(place, "The place of the columns or the hole pattern of the base plate is not known.");
  switch (outcome) {
    case "accept":
    case "accept-if":
      return { drilling: "may-drill", before: outcome === "accept-if" ? conditions : [] };
    case "wait":
    case "hold":
      return { drilling: "marks-only", before: [sentence, ...(outcome === "wait" ? conditions : reasons)] };
    case "shift":
      return unable(place, `The lift has to move first; give its new place, then set it out. ${sentence}`);
    case "pour":
      return unable(place, `There is no concrete to set out on yet. ${sentence}`);
    default:
      return unable(place, `This lift is not set out on this floor. ${sentence}`);
  }
};
