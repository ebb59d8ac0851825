import { polygonArea } from "@floorworthy/engine/geometry";
import { barWeight, outlineLength } from "@floorworthy/engine/orders";
import { type Layer, planArea, solidVolume } from "@floorworthy/engine/pads";
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

export const quantitiesOf = (job: Job, design: PadDesign, parts: readonly PadPart[], slab: number): PadQuantities => {
  const sum = (of: (part: PadPart) => number): number => parts.reduce((s, part) => s + of(part), 0);
  const area = sum(({ outline }) => polygonArea(outline));
  const perimeter = sum(({ outline }) => outlineLength(outline));
  const wholeBay = design.size.shape === "whole-bay";
  const castWith = design.join === "cast-with";
  const below = sum((part) => belowSlab(design, part));
  const gross = wholeBay ? area * design.depth : castWith ? below + area * Math.min(slab, design.depth) : below;
  const concrete = wholeBay ? area * Math.max(0, design.depth - slab) : below;
  const bay = job.bay.outline ? polygonArea(job.bay.outline) : 0;
  return {
    area,
    perimeter,
    concrete,
    gross,
    brokenArea: castWith ? 0 : area,
    brokenVolume: castWith ? 0 : area * slab,
    soil: castWith ? concrete : concrete - area * slab + area * BASE_COURSE,
    barWeight: barsOf(design, area),
    fibreVolume: design.reinforcement.kind === "fibre" ? (castWith ? bay * slab + concrete : concrete) : 0,
    dowels: design.join === "dowelled" ? sum(({ outline }) => dowelCount(outline)) : 0,
  };
};

/** The pad below the slab around it; a cut-out pad is all below. */
const belowSlab = ({ join, depth, slope, key }: PadDesign, { pad }: PadPart): number => {
  const height = Math.max(0, depth - pad.slab);
  const spread = join === "cast-with" ? slope * height : 0;
  const area = planArea(pad.plan, "mitred");
  if (join !== "undercut") return spread === 0 ? height * area.at(0) : solidVolume(area, [layer(height, 0, spread)]);
  // the key lies below the old slab; the shaft through it is upright
  return height * area.at(key) - (area.at(key) - area.at(0)) * Math.min(height, KEYED_SLAB);
};

/** mm of old slab above a key when nobody measured */
const KEYED_SLAB = toBase(4, "in");

const layer = (height: number, below: number, above: number): Layer => ({ height, below, above });

/** Two mats, both ways, laps and ends a tenth more. */
const barsOf = ({ reinforcement }: PadDesign, area: number): number =>
  reinforcement.kind === "bars" ? (1.1 * 4 * area * barWeight(reinforcement.size)) / reinforcement.spacing : 0;

const dowelCount = (outline: PadPart["outline"]): number =>
  outline.reduce((s, a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const free = Math.hypot(b.x - a.x, b.y - a.y) - 2 * FROM_CORNER;
    return s + (free < 0 ? 0 : Math.floor(free / DOWEL_SPACING + 1e-9) + 1);
  }, 0);
