import { type Candidate, type FieldName, fieldNames, ruleOf, saysTheSame } from "../candidates/index.ts";

/** What would be written on a line of the sheet, and everything the manual says for it. */
export interface Proposal {
  readonly field: FieldName;
  /** absent when no side is safer and the manual contradicts itself, or when all there is is doubtful */
  readonly taken?: Candidate;
  /** the candidate taken first */
  readonly all: readonly Candidate[];
}

const rank = { sure: 0, likely: 1, doubtful: 2 } as const;

/**
 * For one model: its own value before the one for all models; of two that disagree the more demanding; where neither
 * asks more (a torque, a diameter) none is taken and the question stays open.
 */
export const proposalsFor = (candidates: readonly Candidate[], model: string | undefined): readonly Proposal[] =>
  fieldNames.flatMap((field) => {
    const fitting = candidates.filter((c) => c.field === field && (c.model === undefined || c.model === model));
    if (fitting.length === 0) return [];
    const forModel = fitting.filter((c) => c.model === model && model !== undefined);
    const own = fitting.filter(
      (c) => forModel.includes(c) || forModel.some(({ conflicts }) => conflicts.includes(c.id)),
    );
    const unchanged = (forModel.length > 0 ? own : fitting).filter(
      ({ remarks }) => !remarks.some(({ code }) => code === "changed-by-note"),
    );
    const trusted = unchanged.filter(({ confidence }) => confidence !== "doubtful");
    const taken = choose(field, trusted);
    const rest = fitting.filter((c) => c !== taken).sort((a, b) => rank[a.confidence] - rank[b.confidence]);
    return [taken ? { field, taken, all: [taken, ...rest] } : { field, all: rest }];
  });

const choose = (field: FieldName, trusted: readonly Candidate[]): Candidate | undefined => {
  const best = [...trusted].sort((a, b) => rank[a.confidence] - rank[b.confidence])[0];
  if (!best) return undefined;
  if (trusted.every((other) => saysTheSame(best, other))) return best;
  const demanding = ruleOf(field)?.demanding ?? "neither";
  if (demanding === "neither") return undefined;
  const size = (c: Candidate) =>
    c.found.kind === "number" ? (demanding === "higher" ? c.found.high : -c.found.low) : 0;
  return [...trusted].sort((a, b) => size(b) - size(a))[0];
};
