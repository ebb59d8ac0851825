import { breakoutOutlines, stressField } from "@floorworthy/assess/margin";
import type { Point } from "@floorworthy/engine/geometry";
import { fromBase, isUnable, toBase, type Unit } from "@floorworthy/engine/quantities";
import { ticksOf } from "../pictures/scale.ts";
import { contourLines } from "./contours.ts";
import type { Units } from "./messages.ts";
import { withJob } from "./with-job.ts";

/** What would come out of the concrete with the anchors, seen from above. */
export const bodies = (text: string, units: Units) => withJob(text, units, breakoutOutlines);

/** Lines of equal value over the slab, at round figures of the units shown. */
export interface SlabLines {
  readonly what: "stress" | "pressure";
  readonly name: string;
  readonly caseName: string;
  readonly unit: Unit;
  readonly lines: readonly { readonly level: number; readonly paths: readonly (readonly Point[])[] }[];
  /** the line of what may be asked; empty where it is nowhere reached */
  readonly over: readonly (readonly Point[])[];
  readonly allowed: number;
  readonly peak: { readonly value: number; readonly at: Point; readonly face: "bottom" | "top" | undefined };
}

const unitsOf = {
  stress: { "inch-pound": "psi", si: "MPa" },
  pressure: { "inch-pound": "psf", si: "kPa" },
} as const;

/** Tension in the slab, or pressure under it, in the case that stresses it most. */
export const slabLines = (text: string, units: Units, what: SlabLines["what"]) =>
  withJob(text, units, (job): SlabLines | ReturnType<typeof stressField> => {
    const field = stressField(job);
    if (isUnable(field)) return field;
    const { name, caseName, rect, nx, ny } = field;
    const unit = unitsOf[what][units];
    const shown = (value: number) => fromBase(value, unit);
    const peak = what === "stress" ? field.peak.stress : { ...field.peak.pressure, face: undefined };
    const allowed = field.allowed[what];
    const grid = { rect, nx, ny, values: field[what] };
    const levels = ticksOf([0, shown(peak.value)]).filter((level) => level > 0);
    return {
      what,
      name,
      caseName,
      unit,
      lines: levels.map((level) => ({ level, paths: contourLines(grid, toBase(level, unit)) })),
      over: contourLines(grid, allowed),
      allowed: shown(allowed),
      peak: { value: shown(peak.value), at: peak.at, face: peak.face },
    };
  }) as { readonly ok: true; readonly value: SlabLines } | { readonly ok: false; readonly why: string };
