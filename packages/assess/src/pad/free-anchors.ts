import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PadDesign } from "./design.ts";
import type { PadPart } from "./outlines.ts";
import { anchorMarginFor, type PadMemory, settingFor, settingKey } from "./setting.ts";
import { withDesign } from "./with-design.ts";

/** Margin of the anchors in concrete of this depth that goes on without end: what no pad can better. */
export const freeAnchors = (job: Job, design: PadDesign, parts: readonly PadPart[], memory: PadMemory): number => {
  const whole: PadDesign = { ...design, join: "cast-with" };
  const changed = withDesign(job, whole, parts);
  const setting = settingFor(changed, memory, settingKey(design));
  return isUnable(setting) ? 0 : anchorMarginFor(changed, setting, memory, `free|${settingKey(design)}`).margin;
};
