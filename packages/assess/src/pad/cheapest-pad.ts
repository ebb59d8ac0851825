import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { costOf, priceList } from "./bill.ts";
import { checkPad, type PadAnswer } from "./check-pad.ts";
import type { PadDesign, Reinforcement } from "./design.ts";
import { designAt, familiesFor, type PadFamily } from "./families.ts";
import { evaluatePad } from "./figures.ts";
import { freeAnchors } from "./free-anchors.ts";
import { type GridFound, type Judged, searchGrid } from "./grid-search.ts";
import { padLimits, shortfalls } from "./limits.ts";
import { type OldSlab, oldSlabOf } from "./old-slab.ts";
import { type PadPart, padParts } from "./outlines.ts";
import { quantitiesOf } from "./quantities.ts";
import { padRefused, pipesMet } from "./refusal.ts";
import { newMemory, type PadMemory } from "./setting.ts";

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
    readonly cheaperAndClosed: number;
    readonly oneByOne: number;
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
  const proof = { designs: 0, judged: 0, cheaperAndClosed: 0, oneByOne: 0 };
  for (const [f, family] of families.entries()) {
    const one = bestOf(job, family, old, memory, (share) => tell?.(f + share, families.length), cancelled);
    if (one === "cancelled") return unable("pad", "Stopped before the search was done.");
    proof.designs += one.designs;
    proof.judged += one.judged;
    proof.cheaperAndClosed += one.closed;
    proof.oneByOne += one.oneByOne;
    if (!one.design) {
      notes.push(`${familyWords(family)}: ${one.why}`);
      continue;
    }
    const answer = checkPad(job, one.design, memory);
    if (!isUnable(answer)) found.push({ answer, cost: answer.bill.total });
  }
  tell?.(families.length, families.length);
  const ranked = found.toSorted((p, q) => p.cost - q.cost).map(({ answer }) => answer);
  const best = ranked.find(({ design }) => design.join !== "dowelled" || job.pad.join.known);
  if (!best) return unable("pad", noneWords(notes, ranked));
  return { best, others: ranked.filter((one) => one !== best), leftOut: notes, proof };
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
  readonly oneByOne: number;
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
    return { design: undefined, why: "no size of it fits here.", designs: 0, judged: 0, closed: 0, oneByOne: 0 };
  const judge = judgeFor(job, family, old, memory);
  let best: { design: PadDesign; cost: number } | undefined;
  let [judged, closed, oneByOne] = [0, 0, 0];
  for (const reinforcement of family.reinforcements) {
    const search = searchGrid({
      counts: [family.a.length, family.b.length, family.depths.length],
      cost: costsOf(job, family, old, reinforcement),
      judge: (i, j, k) => judge.at([i, j, k], reinforcement),
      audits: 2,
      ...(best ? { below: best.cost } : {}),
    });
    const result = run(search, (n) => tell(n / (n + 20)), cancelled);
    if (result === "cancelled") return result;
    judged += result.judgements;
    closed += result.closed;
    if (result.way === "one by one") oneByOne++;
    if (result.best) best = { design: designAt(job, family, result.best.at, reinforcement), cost: result.best.cost };
  }
  return {
    design: best?.design,
    why: judge.why(),
    designs: size * family.reinforcements.length,
    judged,
    closed,
    oneByOne,
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

const costsOf = (job: Job, family: PadFamily, old: OldSlab, reinforcement: Reinforcement) => {
  const prices = priceList(job);
  let [at, parts]: [string, readonly PadPart[] | Unable] = ["", []];
  return (i: number, j: number, k: number): number => {
    const design = designAt(job, family, [i, j, k], reinforcement);
    if (at !== `${i},${j}`) [at, parts] = [`${i},${j}`, padParts(job, design)];
    if (isUnable(parts)) return Number.POSITIVE_INFINITY;
    if (
      design.join !== "cast-with" &&
      pipesMet(
        job,
        parts.map(({ outline }) => outline),
        design.depth,
      ).length > 0
    )
      return Number.POSITIVE_INFINITY;
    const sized = parts.map((part) => ({ ...part, pad: { ...part.pad, thickness: design.depth } }));
    return costOf(job, design, quantitiesOf(job, design, sized, old.thickness), prices);
  };
};

/** Judges designs of a family, and remembers what the fullest one fell short of. */
const judgeFor = (job: Job, family: PadFamily, old: OldSlab, memory: PadMemory) => {
  const limits = padLimits(job);
  let why = "every size of it is ruled out.";
  const at = (point: readonly [number, number, number], reinforcement: Reinforcement): Judged => {
    const design = designAt(job, family, point, reinforcement);
    const parts = padParts(job, design);
    if (isUnable(parts)) return { meets: false, mendedBy: "other" };
    const done = evaluatePad(job, design, parts, old, memory);
    const last = point[0] === family.a.length - 1 && point[1] === family.b.length - 1;
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
  return { at, why: () => why };
};
