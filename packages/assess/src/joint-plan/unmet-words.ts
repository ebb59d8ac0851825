import type { UnmetRule } from "@floorworthy/engine/joints";
import type { Job } from "@floorworthy/job";
import { tape } from "./tape.ts";

/** Where a panel lies, by its corner nearest the two walls. */
const place = ({ panel: { x0, y0 } }: UnmetRule, units: Job["units"]): string =>
  `its corner ${tape(x0, units)} from the left and ${tape(y0, units)} from the back wall`;

/** Which rule a panel does not keep, why, and what to do about it. */
export const unmetWords = (unmet: UnmetRule, spacing: number, aspect: number, units: Job["units"]): string => {
  const { rule, panel, because } = unmet;
  const size = `${tape(panel.x1 - panel.x0, units)} × ${tape(panel.y1 - panel.y0, units)}`;
  const why = because ? `, because ${because} leaves no place for a cut` : "";
  switch (rule) {
    case "spacing":
      return `The panel of ${size} (${place(unmet, units)}) stays over ${tape(spacing, units)}${why}: it may crack, so let its steel run through it to hold a crack closed.`;
    case "aspect":
      return `The panel of ${size} (${place(unmet, units)}) stays longer than ${aspect} times its width${why}: let steel run along its length.`;
    case "re-entrant corner":
      return `No joint can start from the inside corner of the panel of ${size} (${place(unmet, units)})${why}: two bars laid across that corner on the skew hold the crack closed.`;
    case "building column":
      return `No joint can reach a building column inside the panel of ${size} (${place(unmet, units)})${why}.`;
  }
};
