import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { costOf, priceList } from "./bill.ts";
import { checkPad, type PadAnswer } from "./check-pad.ts";
import type { PadDesign, Reinforcement } from "./design.ts";
import { designAt, familiesFor, type PadFamily } from "./families.ts";
import { evaluatePad, shortBeforeSolving } from "./figures.ts";
import { freeAnchors } from "./free-anchors.ts";
import { type GridFound, type Judged, searchGrid } from "./grid-search.ts";
import { padLimits, shortfalls } from "./limits.ts";
import { type OldSlab, oldSlabOf } from "./old-slab.ts";
import { padParts } from "./outlines.ts";
import { type PadPlanQuantities, planQuantities, quantitiesAt } from "./quantities.ts";
import { padRefused, pipesMet } from "./refusal.ts";
import { newMemory, type PadMemory } from "./setting.ts";
import { tips } from "./tips.ts";

export interface SearchOptions {
  /** families searched of all, judgements so far within; may be called often */
  readonly tell?: (done: number, of: number) => void;
  readonly cancelled?: { readonly aborted: boolean };
}

/** The best of one shape and join. */
export interface FamilyBest {
  readonly answer: PadAnswer;
  readonly cost: number;
}

export interface CheapestPad {
  /** the one that is proposed: the cheapest that does not count on dowels */
  readonly best: PadAnswer;
  /** best of every other shape, cheapest first */
  readonly others: readonly PadAnswer[];
  /** shapes that were not tried or cannot do, with the reason */
  readonly leftOut: readonly string[];
  readonly proof: {
    readonly designs: number;
    readonly judged: number;
    /** plates solved on the way */
    readonly solved: number;
    readonly cheaperAndClosed: number;
    /** shapes of which the cheapest could not be proved */
    readonly unproved: number;
  };
}

/**
 * The cheapest design that meets the maker's page and the margins wished for, on the grid of buildable sizes.
 * Everything cheaper has been judged or closed (grid-search.ts).
 */
export const cheapestPad = (job: Job, { tell, cancelled }: SearchOptions = {}): CheapestPad | Unable => {
  const refused = padRefused(job);
  if (refused) return refused;
  const old = oldSlabOf(job);
  const { families, leftOut } = familiesFor(job, old);
  const memory = newMemory();
  const found: FamilyBest[] = [];
  const notes = [...leftOut];
  const proof = { designs: 0, judged: 0, solved: 0, cheaperAndClosed: 0, unproved: 0 };
  for (const [f, family] of families.entries()) {
    const one = bestOf(job, family, old, memory, (share) => tell?.(f + share, families.length), cancelled);
    if (one === "cancelled") return unable("pad", "Stopped before the search was done.");
    proof.designs += one.designs;
    proof.judged += one.judged;
    proof.cheaperAndClosed += one.closed;
    proof.unproved += one.unproved;
    if (!one.design) {
      notes.push(`${familyWords(family)}: ${one.why}`);
      continue;
    }
    const answer = checkPad(job, one.design, memory, "pad");
    if (!isUnable(answer)) found.push({ answer, cost: answer.bill.total });
  }
  tell?.(families.length, families.length);
  proof.solved = memory.plates.size;
  const ranked = found.toSorted((p, q) => p.cost - q.cost).map(({ answer }) => answer);
  const best = ranked.find(({ design }) => design.join !== "dowelled" || job.pad.join.known);
  if (!best) return unable("pad", noneWords(notes, ranked));
  const whole = checkPad(job, best.design, memory);
  return { best: isUnable(whole) ? best : whole, others: ranked.filter((one) => one !== best), leftOut: notes, proof };
};

const noneWords = (notes: readonly string[], dowelled: readonly PadAnswer[]): string =>
  [
    "No design of the grid meets the maker's page and the margins asked.",
    ...notes,
    ...(dowelled.length > 0 ? ["Only pads that count on their dowels would: an engineer should see those."] : []),
  ].join(" ");

export const familyWords = ({ shape, join }: Pick<PadFamily, "shape" | "join">): string => {
  const words = {
    "two-pads": "Two pads",
    "joined-circles": "Joined circles",
    strip: "One strip",
    "whole-bay": "The whole floor thicker",
  };
  const how = {
    "cast-with": "cast with the slab",
    dowelled: "dowelled",
    undercut: "with an undercut key",
    separate: "standing alone",
  };
  return `${words[shape]}, ${how[join]}`;
};

interface FamilySearch {
  readonly design: PadDesign | undefined;
  readonly why: string;
  readonly designs: number;
  readonly judged: number;
  readonly closed: number;
  readonly unproved: number;
}

const bestOf = (
  job: Job,
  family: PadFamily,
  old: OldSlab,
  memory: PadMemory,
  tell: (share: number) => void,
  cancelled: SearchOptions["cancelled"],
): FamilySearch | "cancelled" => {
  const size = family.a.length * family.b.length * family.depths.length;
  if (size === 0)
    return { design: undefined, why: "no size of it fits here.", designs: 0, judged: 0, closed: 0, unproved: 0 };
  const judge = judgeFor(job, family, old, memory);
  let best: { design: PadDesign; cost: number } | undefined;
  let [judged, closed, unproved] = [0, 0, 0];
  for (const [r, reinforcement] of family.reinforcements.entries()) {
    const search = searchGrid({
      counts: [family.a.length, family.b.length, family.depths.length],
      cost: costsOf(job, family, old, reinforcement, memory),
      judge: (i, j, k) => judge.at([i, j, k], reinforcement),
      audits: 2,
      ...(best ? { below: best.cost } : {}),
    });
    const result = run(search, (n) => tell((r + n / (n + 20)) / family.reinforcements.length), cancelled);
    if (result === "cancelled") return result;
    judged += result.judgements;
    closed += result.closed;
    if (result.way === "unproved") unproved++;
    if (result.best) best = { design: designAt(job, family, result.best.at, reinforcement), cost: result.best.cost };
    // steel and fibre mend nothing but collapse: where that never stood in the way they only cost
    if (best && judge.collapse() === "never") break;
  }
  return {
    design: best?.design,
    why: judge.why(),
    designs: size * family.reinforcements.length,
    judged,
    closed,
    unproved,
  };
};

const run = (
  search: Generator<number, GridFound>,
  tell: (n: number) => void,
  cancelled: SearchOptions["cancelled"],
): GridFound | "cancelled" => {
  for (let step = search.next(); ; step = search.next()) {
    if (step.done) return step.value;
    if (cancelled?.aborted) return "cancelled";
    tell(step.value);
  }
};

const costsOf = (job: Job, family: PadFamily, old: OldSlab, reinforcement: Reinforcement, memory: PadMemory) => {
  const prices = priceList(job);
  const dosage = reinforcement.kind === "fibre" ? reinforcement.dosage : 0;
  let at = "";
  let plan: PadPlanQuantities | undefined;
  let whole = false;
  let pipes: readonly string[] = [];
  return (i: number, j: number, k: number): number => {
    // pads longer across the lift's line than along it cost more and hold less
    if (family.shape === "two-pads" && family.b[j]! > family.a[i]!) return Number.POSITIVE_INFINITY;
    if (at !== `${i},${j}`) {
      at = `${i},${j}`;
      const deepest = designAt(job, family, [i, j, family.depths.length - 1], reinforcement);
      const parts = padParts(job, deepest);
      whole = !isUnable(parts) && parts.every(({ cut }) => cut === "whole");
      plan = isUnable(parts) ? undefined : planQuantities(job, parts);
      pipes =
        isUnable(parts) || family.join === "cast-with"
          ? []
          : pipesMet(
              job,
              parts.map(({ outline }) => outline),
              deepest.depth,
            );
    }
    if (!plan || pipes.length > 0) return Number.POSITIVE_INFINITY;
    const design = designAt(job, family, [i, j, k], reinforcement);
    if (whole && family.join === "separate" && tips(job, design, memory)) return Number.POSITIVE_INFINITY;
    return costOf(job, design, quantitiesAt(design, plan, old.thickness), prices, dosage);
  };
};

/** Judges designs of a family, and remembers what the fullest one fell short of. */
const judgeFor = (job: Job, family: PadFamily, old: OldSlab, memory: PadMemory) => {
  const limits = padLimits(job);
  let why = "every size of it is ruled out.";
  const largest = [family.a.length - 1, family.b.length - 1] as const;
  let collapse: "seen" | "never" = "never";
  const deeper = new Map<string, boolean>();
  /** whether even the largest plan of this depth fails before any plate is solved */
  const tooShallow = (k: number, reinforcement: Reinforcement): boolean => {
    const key = `${k}|${reinforcement.kind}`;
    const known = deeper.get(key);
    if (known !== undefined) return known;
    const design = designAt(job, family, [...largest, k], reinforcement);
    const parts = padParts(job, design);
    const short = isUnable(parts) ? undefined : shortBeforeSolving(job, design, parts, limits, memory);
    if (short === "stronger") collapse = "seen";
    const made = short !== undefined;
    deeper.set(key, made);
    return made;
  };
  const at = (point: readonly [number, number, number], reinforcement: Reinforcement): Judged => {
    const design = designAt(job, family, point, reinforcement);
    const parts = padParts(job, design);
    if (isUnable(parts)) return { meets: false, mendedBy: "other" };
    if (tooShallow(point[2], reinforcement)) return { meets: false, mendedBy: "deeper" };
    const last = point[0] === family.a.length - 1 && point[1] === family.b.length - 1;
    const early = shortBeforeSolving(job, design, parts, limits, memory);
    if (early) {
      if (last) why = `even at its largest it does not hold (${early} would be needed).`;
      if (early === "stronger") collapse = "seen";
      return { meets: false, mendedBy: early === "stronger" ? "deeper" : early };
    }
    const done = evaluatePad(job, design, parts, old, memory);
    if (isUnable(done)) {
      if (last) why = done.reason;
      return { meets: false, mendedBy: "larger" };
    }
    const short = shortfalls(done.figures, limits, freeAnchors(job, design, parts, memory));
    if (short.length === 0) return { meets: true };
    if (last) why = `even at its largest: ${short.join("; ")}.`;
    const onlyThin = short.length === 1 && done.figures.crackIn === "slab" && done.figures.crack < limits.crack;
    return { meets: false, mendedBy: onlyThin ? "shallower" : "larger" };
  };
  return { at, why: () => why, collapse: () => collapse };
};
