import type { Assessment } from "@floorworthy/assess";
import { anchoring } from "@floorworthy/assess/facts";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";

const place = "contractor's sheet";

/** What the sheet is for: concrete to pour, or a standing floor that stays. */
export type SheetMode = "pour" | "standing";

/** The kind of sheet this job may have, or why it may have none. A stop always refuses. */
export const sheetMode = (job: Job, { stops, outcome, reasons, missing, layout }: Assessment): SheetMode | Unable => {
  if (stops.length) return unable(place, stops.map(({ reason, next }) => `${reason} ${next}`.trim()).join(" "));
  const why = reasons.join(" ");
  switch (outcome) {
    case "refer":
    case "refuse":
    case "out-of-service":
      return unable(place, `No sheet is given for this floor. ${why}`);
    case "hold":
      return unable(
        place,
        `No sheet before the missing facts are known${missing.length ? `: ${missing.map((fact) => fact.what).join("; ")}` : ""}. ${why}`,
      );
    case "shift":
      return unable(place, `The lift has to move first; draw it at its new place, then ask for the sheet. ${why}`);
    case "lighter-lift":
      return unable(place, `This floor is not for this lift; choose the lighter one, then ask for the sheet. ${why}`);
    default: {
      const pours = job.floor.state === "to-be-poured" || layout.zones.some((zone) => zone.state === "proposed");
      if (pours) return "pour";
      return outcome === "pour"
        ? unable(
            place,
            `A new pad is needed but none is drawn; put its outline and thickness into the job, then ask for the sheet. ${why}`,
          )
        : "standing";
    }
  }
};

/** Papers of anchors and nuts are refused for a lift that has none. */
export const standsLoose = (name: string, { lift }: Job): Unable | undefined =>
  anchoring(lift) === "loose" ? unable(name, "This lift stands without anchors.") : undefined;
