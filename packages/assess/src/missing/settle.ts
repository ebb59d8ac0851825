import type { Job } from "@floorworthy/job";
import type { Outcome, Settling } from "../assessment.ts";
import type { Question } from "./question.ts";

/** Dollars that stand for a class when sets are compared; common practice, no source. */
const weight = { free: 0, small: 100, test: 1000, engineer: 3000 } as const;

/** Sets are searched whole up to this many open questions beside those that are needed anyway. */
const MOST = 6;

/**
 * The cheapest set of questions whose good answers leave nothing that could still turn the outcome: with the set at its
 * best, the rest at its worst gives what the rest at its best gives. By cost, then by count.
 *
 * Method: a question that alone turns the best outcome is in every such set (worse answers never help); where those do not
 * do, the rest is searched by cost.
 */
export const settlingSet = (
  job: Job,
  open: readonly Question[],
  outcomeOf: (job: Job) => Outcome,
): Settling | undefined => {
  if (open.length === 0) return undefined;
  const answered = (worst: readonly Question[]): Job =>
    open.reduce((j, q) => (worst.includes(q) ? q.worst(j) : q.best(j)), job);
  const allBest = outcomeOf(answered([]));
  const settles = (set: readonly Question[]): boolean =>
    outcomeOf(answered(open.filter((q) => !set.includes(q)))) === allBest;
  const set = settles([]) ? [] : cheapest(open, (q) => outcomeOf(answered([q])) !== allBest, settles);
  const atWorst = outcomeOf(set.reduce((j, q) => q.worst(j), job));
  const atBest = outcomeOf(set.reduce((j, q) => q.best(j), job));
  return {
    facts: set.map(({ id }) => id),
    outcomeWorst: atWorst,
    outcomeBest: atBest,
    sentence: sentenceFor(set, atWorst, atBest),
  };
};

const cheapest = (
  open: readonly Question[],
  isNeeded: (question: Question) => boolean,
  settles: (set: readonly Question[]) => boolean,
): readonly Question[] => {
  const needed = open.filter(isNeeded);
  const rest = open.filter((q) => !needed.includes(q));
  if (rest.length > MOST) return settles(needed) ? needed : open;
  const sets = subsets(rest).toSorted((a, b) => costOf(a) - costOf(b) || a.length - b.length);
  const found = sets.find((extra) => settles([...needed, ...extra]));
  const chosen = [...needed, ...(found ?? rest)];
  return open.filter((q) => chosen.includes(q));
};

const subsets = (questions: readonly Question[]): Question[][] =>
  Array.from({ length: 2 ** questions.length }, (_, bits) => questions.filter((_, i) => (bits >> i) & 1));

const costOf = (set: readonly Question[]): number => set.reduce((sum, q) => sum + weight[q.costClass], 0);

const sentenceFor = (set: readonly Question[], worst: Outcome, best: Outcome): string => {
  if (set.length === 0) return `No answer to an open question turns it: ${best}.`;
  const whats = set.map(({ what }) => what);
  const list = whats.length === 1 ? whats[0]! : `${whats.slice(0, -1).join(", ")} and ${whats.at(-1)}`;
  return `Cheapest to settle it: ${list}. Then at worst ${worst}, at best ${best}.`;
};
