import type { BarSize } from "@floorworthy/engine/orders";
import { toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { UnitSystem } from "../facts/print.ts";
import { shown } from "../facts/print.ts";

export type PadShape = "two-pads" | "joined-circles" | "strip" | "whole-bay";
export type PadJoin = "cast-with" | "dowelled" | "undercut" | "separate";

/** Where the thick concrete lies about the columns, at its full depth. Lengths mm. */
export type PadSize =
  /** along the column line, and across it, each pad */
  | { readonly shape: "two-pads"; readonly along: number; readonly across: number }
  /** about each column, joined across the middle by a band `waist` wide */
  | { readonly shape: "joined-circles"; readonly radius: number; readonly waist: number }
  /** reaching `beyond` each column, `across` wide */
  | { readonly shape: "strip"; readonly beyond: number; readonly across: number }
  | { readonly shape: "whole-bay" };

export type Reinforcement =
  | { readonly kind: "none" }
  /** both ways, top and bottom; mm */
  | { readonly kind: "bars"; readonly size: BarSize; readonly spacing: number }
  /** kg/m³, and the residual strength ratio Re3 it is counted with, % */
  | { readonly kind: "fibre"; readonly dosage: number; readonly residual: number };

/** One pad design for one job. Base units. */
export interface PadDesign {
  readonly size: PadSize;
  readonly join: PadJoin;
  /** from the top of the floor, mm */
  readonly depth: number;
  /** sides of a pad cast with the slab spread upward by this run for each unit of height; 0 upright */
  readonly slope: number;
  /** how far an undercut key reaches beneath the old slab, mm */
  readonly key: number;
  readonly reinforcement: Reinforcement;
  /** compressive strength, MPa */
  readonly strength: number;
}

/** `#4` at 12 in, `#5` under lifts of 15,000 lb and more: common practice, no source. */
export const usualBars = (job: Job): Reinforcement => ({
  kind: "bars",
  size: job.lift.rated.known && job.lift.rated.value >= toBase(15000, "lb") ? "#5" : "#4",
  spacing: toBase(12, "in"),
});

/** 5 lb/yd³ of coarse synthetic fibre counted with Re3 = 30 %: from memory; the maker's own beam tests are better. */
export const usualFibre: Reinforcement = { kind: "fibre", dosage: toBase(5, "lb/yd³"), residual: 30 };

export const noReinforcement: Reinforcement = { kind: "none" };

/** Concrete a pad is poured with: the strength ordered, else 4,000 psi (30 MPa), and never under what the maker asks. */
export const padStrength = (job: Job): number => {
  const asked = job.lift.asks.strength.known ? job.lift.asks.strength.high : 0;
  const { specified } = job.floor.strength;
  if (job.pour?.strength.known) return job.pour.strength.low;
  if (job.floor.state === "to-be-poured" && specified.known) return specified.low;
  return Math.max(asked, job.units === "si" ? 30 : toBase(4000, "psi"));
};

const joinWords: Readonly<Record<PadJoin, string>> = {
  "cast-with": "cast with the slab",
  dowelled: "cut out and dowelled",
  undercut: "cut out with an undercut key",
  separate: "cut out, standing alone",
};

/** e.g. "two pads 72 in × 72 in × 12 in, cut out, standing alone, plain". */
export const designWords = (design: PadDesign, units: UnitSystem): string =>
  `${sizeWords(design, units)}, ${joinWords[design.join]}, ${reinforcementWords(design.reinforcement, units)}`;

export const sizeWords = ({ size, depth }: PadDesign, units: UnitSystem): string => {
  const length = (mm: number): string => shown(mm, "length", units);
  switch (size.shape) {
    case "two-pads":
      return `two pads ${length(size.along)} × ${length(size.across)} × ${length(depth)}`;
    case "joined-circles":
      return `circles of ${length(size.radius)} about the columns, joined ${length(size.waist)} wide, ${length(depth)} deep`;
    case "strip":
      return `one strip ${length(size.across)} wide, ${length(size.beyond)} beyond each column, ${length(depth)} deep`;
    case "whole-bay":
      return `the whole floor ${length(depth)} thick`;
  }
};

export const reinforcementWords = (given: Reinforcement, units: UnitSystem): string => {
  if (given.kind === "none") return "plain";
  if (given.kind === "bars")
    return `${given.size} bars at ${shown(given.spacing, "length", units)} both ways, top and bottom`;
  const dose =
    units === "si" ? `${given.dosage.toFixed(1)} kg/m³` : `${(given.dosage / toBase(1, "lb/yd³")).toFixed(1)} lb/yd³`;
  return `${dose} of coarse fibre`;
};
