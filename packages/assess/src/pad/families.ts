import { toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { boxOf, placedBases } from "../layout.ts";
import { coldJointAsked } from "./cold-joint-asked.ts";
import {
  noReinforcement,
  type PadDesign,
  type PadJoin,
  type PadShape,
  type PadSize,
  padStrength,
  type Reinforcement,
  usualBars,
  usualFibre,
} from "./design.ts";
import { dowelsRefused } from "./dowelled-floor.ts";
import type { OldSlab } from "./old-slab.ts";

const inch = (n: number): number => toBase(n, "in");

/** Designs of one shape and join, on a grid of sizes a person can build. */
export interface PadFamily {
  readonly shape: PadShape;
  readonly join: PadJoin;
  /** one size in plan, the other, depth; mm, rising */
  readonly a: readonly number[];
  readonly b: readonly number[];
  readonly depths: readonly number[];
  readonly reinforcements: readonly Reinforcement[];
}

/** Concrete beside the base plate: a foot to a cold joint, half a foot to a slope. Common practice, no source. */
const BESIDE = { cut: inch(12), cast: inch(6) } as const;

/** How sizes go: 2 in and 1/2 in, or 50 mm and 10 mm, unless the person wants other steps. */
export const stepsOf = ({ pad, units }: Job): { plan: number; depth: number } => ({
  plan: pad.planStep.known ? pad.planStep.value : units === "si" ? 50 : inch(2),
  depth: pad.depthStep.known ? pad.depthStep.value : units === "si" ? 10 : inch(0.5),
});

export const familiesFor = (job: Job, old: OldSlab): { families: PadFamily[]; leftOut: string[] } => {
  const leftOut: string[] = [];
  const { shape, join } = job.pad;
  const wanted = (s: PadShape, j: PadJoin): boolean =>
    (!shape.known || shape.value === s) && (!join.known || join.value === j);
  const list: (readonly [PadShape, PadJoin])[] =
    job.floor.state === "to-be-poured"
      ? [
          ["two-pads", "cast-with"],
          ["joined-circles", "cast-with"],
          ["strip", "cast-with"],
          ["whole-bay", "cast-with"],
        ]
      : [
          ["two-pads", "separate"],
          ["strip", "separate"],
          ["two-pads", "dowelled"],
          ["two-pads", "undercut"],
        ];
  const kept = list.filter(([s, j]) => wanted(s, j) && (j !== "undercut" || join.known));
  if (kept.length === 0)
    leftOut.push(
      job.floor.state === "to-be-poured"
        ? "Into a floor still to be poured nothing is cut: pads are cast with it."
        : "Into a standing floor pads are sawn: two rectangles or one strip, dowelled, keyed or standing alone.",
    );
  const refused = job.floor.state === "standing" ? dowelsRefused(job, old.thickness) : undefined;
  const families = kept.filter(([, j]) => {
    if (j !== "dowelled" || !refused) return true;
    leftOut.push(`No dowels: ${refused}.`);
    return false;
  });
  return { families: families.flatMap(([s, j]) => familyOf(job, s, j, old)), leftOut };
};

const familyOf = (job: Job, shape: PadShape, join: PadJoin, old: OldSlab): PadFamily[] => {
  const steps = stepsOf(job);
  const base = placedBases(job)[0];
  if (!base || base.outline.length === 0 || (shape === "whole-bay" && !job.bay.outline)) return [];
  const box = boxOf(base.outline);
  const { effectiveEmbedment: hef } = job.lift.anchors.product;
  const reach = Math.max(coldJointAsked(job), hef.known ? 1.5 * hef.high : 0);
  const holes = base.anchors.map(({ at }) => at);
  // half sizes: the plate with concrete beside it, and each anchor with its distance where the edge is a cold joint
  const beside = join === "cast-with" ? BESIDE.cast : BESIDE.cut;
  const half = (axis: "x" | "y"): number => {
    const [c, lo, hi] = axis === "x" ? [base.centre.x, box.x0, box.x1] : [base.centre.y, box.y0, box.y1];
    const far = Math.max(...holes.map((p) => Math.abs(p[axis] - c)));
    return Math.max(hi - c + beside, c - lo + beside, join === "cast-with" ? 0 : far + reach);
  };
  const turned =
    job.position &&
    Math.abs(job.position.right.y - job.position.left.y) > Math.abs(job.position.right.x - job.position.left.x);
  const [u, v] = turned ? [half("y"), half("x")] : [half("x"), half("y")];
  const spacing = job.position
    ? Math.hypot(job.position.right.x - job.position.left.x, job.position.right.y - job.position.left.y)
    : 0;
  const widest = (most: number): number => Math.min(most, spacing - inch(12));
  const [a, b]: [number[], number[]] =
    shape === "two-pads"
      ? [range(2 * u, widest(inch(96)), steps.plan), range(2 * v, inch(96), steps.plan)]
      : shape === "joined-circles"
        ? [range(Math.hypot(u, v), widest(inch(120)) / 2, steps.plan), range(inch(24), inch(72), steps.plan)]
        : shape === "strip"
          ? [range(u, inch(48), steps.plan), range(2 * v, inch(96), steps.plan)]
          : [[0], [0]];
  return [{ shape, join, a, b, depths: depthsFor(job, old, steps.depth), reinforcements: reinforcementsFor(job) }];
};

/** Multiples of the step from the least to the most. */
const range = (least: number, most: number, step: number): number[] => {
  const first = Math.ceil(least / step - 1e-9);
  const last = Math.floor(most / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step);
};

const depthsFor = (job: Job, old: OldSlab, step: number): number[] => {
  const { leastDepth, mostDepth } = job.pad;
  const asked = job.lift.asks.thickness.known ? job.lift.asks.thickness.high : inch(4);
  const slab = job.floor.state === "to-be-poured" ? old.thickness : 0;
  const least = Math.max(asked, slab, leastDepth.known ? leastDepth.value : 0);
  return range(least, mostDepth.known ? mostDepth.value : Math.max(inch(18), asked + inch(8)), step);
};

/** Cheapest first. The maker's own wish for steel rules out what does not meet it. */
const reinforcementsFor = (job: Job): Reinforcement[] => {
  const all = [noReinforcement, usualBars(job), usualFibre];
  const asked = job.lift.asks.reinforcement;
  const { reinforcement } = job.pad;
  return all.filter(({ kind }) => {
    if (reinforcement.known) return kind === reinforcement.value;
    if (!asked.known || asked.value === "none") return true;
    return asked.value === "fibre" ? kind === "fibre" : kind === "bars";
  });
};

export const designAt = (
  job: Job,
  { shape, join, a, b, depths }: PadFamily,
  [i, j, k]: readonly [number, number, number],
  reinforcement: Reinforcement,
): PadDesign => ({
  size: sizeAt(shape, a[i]!, b[j]!),
  join,
  depth: depths[k]!,
  slope: join === "cast-with" && shape !== "whole-bay" ? 1 : 0,
  key: join === "undercut" ? inch(5) : 0,
  reinforcement,
  strength: padStrength(job),
});

const sizeAt = (shape: PadShape, a: number, b: number): PadSize => {
  if (shape === "two-pads") return { shape, along: a, across: b };
  if (shape === "joined-circles") return { shape, radius: a, waist: b };
  return shape === "strip" ? { shape, beyond: a, across: b } : { shape };
};
