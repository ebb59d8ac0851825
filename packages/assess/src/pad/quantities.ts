import { polygonArea } from "@floorworthy/engine/geometry";
import { barWeight, outlineLength } from "@floorworthy/engine/orders";
import { type PlanArea, planArea, solidVolume } from "@floorworthy/engine/pads";
import { toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PadDesign } from "./design.ts";
import type { PadPart } from "./outlines.ts";

/** What one design takes, whole job. mm, mm², mm³, N. */
export interface PadQuantities {
  /** plan area at full depth */
  readonly area: number;
  /** round the full-depth outline */
  readonly perimeter: number;
  /** all the concrete in the forms: for a pad cast with the slab, what it takes beyond the slab */
  readonly concrete: number;
  /** the same with the slab above it */
  readonly gross: number;
  /** old slab to be broken out: area and volume */
  readonly brokenArea: number;
  readonly brokenVolume: number;
  /** soil dug out */
  readonly soil: number;
  readonly barWeight: number;
  /** concrete that takes fibre: a load is mixed as one */
  readonly fibreVolume: number;
  readonly dowels: number;
}

/** Crushed stone under a cut-out pad: common practice, no source. */
export const BASE_COURSE = toBase(4, "in");
/** dowels in a saw-cut face: #4 at 12 in, none within 6 in of a corner; common practice, no source */
export const DOWEL_SPACING = toBase(12, "in");
const FROM_CORNER = toBase(6, "in");

/** What does not change with the depth. */
export interface PadPlanQuantities {
  readonly area: number;
  readonly perimeter: number;
  readonly dowels: number;
  readonly bay: number;
  /** of each part: area when grown, and whether that is a polynomial */
  readonly parts: readonly { readonly grown: PlanArea; readonly formula: "polynomial" | "circles" }[];
}

export const planQuantities = (job: Job, parts: readonly PadPart[]): PadPlanQuantities => {
  const sum = (of: (part: PadPart) => number): number => parts.reduce((s, part) => s + of(part), 0);
  return {
    area: sum(({ outline, pad }) =>
      pad.plan.shape === "joined-circles" ? planArea(pad.plan, "mitred").at(0) : polygonArea(outline),
    ),
    perimeter: sum(({ outline }) => outlineLength(outline)),
    dowels: sum(({ outline }) => dowelCount(outline)),
    bay: job.bay.outline ? polygonArea(job.bay.outline) : 0,
    parts: parts.map(({ pad }) => ({
      grown: planArea(pad.plan, "mitred"),
      formula: pad.plan.shape === "joined-circles" ? "circles" : "polynomial",
    })),
  };
};

export const quantitiesOf = (job: Job, design: PadDesign, parts: readonly PadPart[], slab: number): PadQuantities =>
  quantitiesAt(design, planQuantities(job, parts), slab);

export const quantitiesAt = (design: PadDesign, plan: PadPlanQuantities, slab: number): PadQuantities => {
  const { area, perimeter, bay } = plan;
  const wholeBay = design.size.shape === "whole-bay";
  const castWith = design.join === "cast-with";
  let below = 0;
  for (const part of plan.parts)
    below += belowSlab(design, part, castWith && !wholeBay ? Math.min(slab, design.depth) : 0);
  const concrete = wholeBay ? area * Math.max(0, design.depth - slab) : below;
  return {
    area,
    perimeter,
    concrete,
    gross: wholeBay ? area * design.depth : castWith ? below + area * Math.min(slab, design.depth) : below,
    brokenArea: castWith ? 0 : area,
    brokenVolume: castWith ? 0 : area * slab,
    soil: castWith ? concrete : Math.max(0, concrete - area * slab) + area * BASE_COURSE,
    barWeight: barsOf(design, area),
    fibreVolume: design.reinforcement.kind === "fibre" ? (castWith ? bay * slab + concrete : concrete) : 0,
    dowels: design.join === "dowelled" ? plan.dowels : 0,
  };
};

/** The pad below the slab around it; a cut-out pad is all below. */
const belowSlab = (
  { join, depth, slope, key }: PadDesign,
  { grown, formula }: PadPlanQuantities["parts"][number],
  slab: number,
): number => {
  const height = Math.max(0, depth - slab);
  const spread = join === "cast-with" ? slope * height : 0;
  // the key lies below the old slab; the shaft through it is upright
  if (join === "undercut") return height * grown.at(key) - (grown.at(key) - grown.at(0)) * Math.min(height, KEYED_SLAB);
  if (spread === 0) return height * grown.at(0);
  if (formula === "circles") return solidVolume(grown, [{ height, below: 0, above: spread }]);
  return (height * (grown.at(0) + 4 * grown.at(spread / 2) + grown.at(spread))) / 6; // Simpson, exact for a square law
};

/** mm of old slab above a key when nobody measured */
const KEYED_SLAB = toBase(4, "in");

/** Two mats, both ways, laps and ends a tenth more. */
const barsOf = ({ reinforcement }: PadDesign, area: number): number =>
  reinforcement.kind === "bars" ? (1.1 * 4 * area * barWeight(reinforcement.size)) / reinforcement.spacing : 0;

const dowelCount = (outline: PadPart["outline"]): number =>
  outline.reduce((s, a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const free = Math.hypot(b.x - a.x, b.y - a.y) - 2 * FROM_CORNER;
    return s + (free < 0 ? 0 : Math.floor(free / DOWEL_SPACING + 1e-9) + 1);
  }, 0);
