import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import type { Drawing } from "../drawing/drawing.ts";
import { printLength } from "../print/measure.ts";
import { cutOf } from "./cut.ts";
import { sectionGround } from "./section-ground.ts";

/** Section through the pad or slab under a column as a drawing of its own. */
export const padSection = (
  job: Job,
  assessment: Assessment,
  { width = 120, height = 60 }: { readonly width?: number; readonly height?: number } = {},
): Drawing => {
  const ground = sectionGround(job, assessment, { x0: 1, y0: 1, x1: width - 1, y1: height - 1 });
  return {
    title: `Section: ${job.title}`,
    description: describeSection(job, assessment),
    width,
    height,
    items: ground ? [ground] : [],
  };
};

export const describeSection = (job: Job, assessment: Assessment): string => {
  const cut = cutOf(job, assessment);
  if (!cut) return "No section: neither a pad nor a column base is known.";
  const slab = cut.slab === undefined ? "of unknown thickness" : `${printLength(cut.slab, job.units)} thick`;
  return cut.pad
    ? `Section through ${cut.name}: ${printLength(cut.pad.width, job.units)} wide, ${cut.pad.thickness === undefined ? "thickness not known" : `${printLength(cut.pad.thickness, job.units)} thick`}, beside a slab ${slab}.`
    : `Section through the slab under a column: slab ${slab}.`;
};
