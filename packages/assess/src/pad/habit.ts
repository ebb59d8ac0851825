import { polygonArea } from "@floorworthy/engine/geometry";
import { isUnable, type Term, toBase, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { term } from "../facts/print.ts";
import { checkPad, type PadAnswer } from "./check-pad.ts";
import { noReinforcement, type PadDesign, type PadSize, padStrength } from "./design.ts";
import { stepsOf } from "./families.ts";
import { evaluatePad, type PadFigures } from "./figures.ts";
import { oldSlabOf } from "./old-slab.ts";
import { padParts } from "./outlines.ts";
import { quantitiesOf } from "./quantities.ts";
import { newMemory, type PadMemory } from "./setting.ts";

/**
 * The trade's habit for this lift: out about 3 ft round each column, 2 in deeper than the maker asks. Circles joined across
 * the middle where it is dug and cast with the slab, squares where it is sawn. Common practice, no source.
 */
export const habitDesign = (job: Job): PadDesign => {
  const reach = toBase(3, "ft");
  const asked = job.lift.asks.thickness.known ? job.lift.asks.thickness.high : 0;
  const castWith = job.floor.state === "to-be-poured";
  const size: PadSize = castWith
    ? { shape: "joined-circles", radius: reach, waist: reach }
    : { shape: "two-pads", along: 2 * reach, across: 2 * reach };
  const slab = castWith && job.floor.thickness.known ? job.floor.thickness.value : 0;
  return {
    size,
    join: castWith ? "cast-with" : "separate",
    depth: Math.max(asked + toBase(2, "in"), slab),
    slope: castWith ? 1 : 0,
    key: 0,
    reinforcement: noReinforcement,
    strength: padStrength(job),
  };
};

export const checkHabit = (job: Job, memory: PadMemory = newMemory()): PadAnswer | Unable =>
  checkPad(job, habitDesign(job), memory);

/** One depth of the same plan. */
export interface DepthRow {
  readonly depth: Term;
  readonly concrete: Term;
  /** over the maker's depth */
  readonly concreteRatio: number;
  /** what the mechanics say; or why they cannot */
  readonly figures: PadFigures | Unable;
}

/** The same plan from the maker's depth on, inch by inch (25 mm): what two inches buy. */
export const depthRows = (
  job: Job,
  design: PadDesign,
  rows = 9,
  memory: PadMemory = newMemory(),
): DepthRow[] | Unable => {
  const old = oldSlabOf(job);
  const step = job.units === "si" ? 25 : toBase(1, "in");
  const asked = job.lift.asks.thickness.known ? job.lift.asks.thickness.high : design.depth;
  const first = Math.max(asked, design.join === "cast-with" ? old.thickness : 0);
  const out: DepthRow[] = [];
  let atFirst = 0;
  for (let i = 0; i < rows; i++) {
    const one: PadDesign = { ...design, depth: roundUp(first, stepsOf(job).depth) + i * step };
    const parts = padParts(job, one);
    if (isUnable(parts)) return parts;
    const { gross } = quantitiesOf(job, one, parts, old.thickness);
    const volume =
      one.join === "cast-with" ? gross : parts.reduce((s, { outline }) => s + polygonArea(outline), 0) * one.depth;
    if (i === 0) atFirst = volume;
    const done = evaluatePad(job, one, parts, old, memory);
    out.push({
      depth: term("T", "depth", one.depth, "length", job.units),
      concrete: term("V", "concrete with the slab above", volume, "volume", job.units),
      concreteRatio: volume / atFirst,
      figures: isUnable(done) ? done : done.figures,
    });
  }
  return out;
};

const roundUp = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;
