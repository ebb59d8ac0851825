import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PadDesign } from "./design.ts";
import { padParts } from "./outlines.ts";
import { type PadMemory, settingFor, settingKey } from "./setting.ts";
import { withDesign } from "./with-design.ts";

const UNIT_WEIGHT = 23.56e-6;
const FACTOR = 1.5;

/**
 * Whether a pad with its column in the middle tips over with a factor of 1.5: the same statics as the full check, in one
 * line, so that pads nobody would consider need not be judged.
 */
export const tips = (job: Job, design: PadDesign, memory: PadMemory): boolean => {
  const { size, depth } = design;
  if (size.shape !== "two-pads" || !job.position || job.position.left.y !== job.position.right.y) return false;
  const setting = settingOnce(job, design, memory);
  if (!setting) return false;
  const weight = UNIT_WEIGHT * size.along * size.across * depth;
  return setting.counted.some(({ reaction: r }) => {
    const N = r.P + weight;
    return (
      FACTOR * Math.abs(r.My + r.Vx * depth) > N * (size.along / 2) * (1 + 1e-9) ||
      FACTOR * Math.abs(r.Mx + r.Vy * depth) > N * (size.across / 2) * (1 + 1e-9)
    );
  });
};

const settingOnce = (job: Job, design: PadDesign, memory: PadMemory) => {
  const key = settingKey(design);
  let setting = memory.settings.get(key);
  if (!setting) {
    const parts = padParts(job, design);
    if (isUnable(parts)) return undefined;
    setting = settingFor(withDesign(job, design, parts), memory, key);
  }
  return isUnable(setting) ? undefined : setting;
};
